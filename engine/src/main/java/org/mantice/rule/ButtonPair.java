package org.mantice.rule;

/**
 * Two moments of the left hand after each other.
 *
 * @param availableMillis from release to the next onset
 */
public record ButtonPair(ButtonMoment from, ButtonMoment to, long availableMillis) implements LeftHandStep {}
