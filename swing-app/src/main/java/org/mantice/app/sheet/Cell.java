package org.mantice.app.sheet;

import java.util.OptionalInt;

/**
 * One measure on the sheet.
 *
 * @param written index of the written measure
 * @param played index of the played measure whose decisions are shown under it; empty where it is not played in what
 *     is shown
 */
public record Cell(int written, OptionalInt played) {}
