package org.mantice.app.model;

import org.mantice.app.sheet.Spot;

/**
 * What the player points at.
 *
 * @param offer index among the answer's offers
 */
public record Selection(int offer, Spot spot) {}
