package org.mantice.instrument;

/**
 * An instrument profile.
 *
 * @param id lower case letters, digits and hyphens
 * @param name for people
 */
public record Accordion(String id, String name, TrebleKeyboard treble, StradellaBass bass, Bellows bellows) {}
