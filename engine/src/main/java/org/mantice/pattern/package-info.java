/**
 * Accompaniment patterns of the left hand as data: what is struck where in a measure, for which meters, tempos and
 * dances, and which one is played where. Start at {@link org.mantice.pattern.BassPatterns} and
 * {@link org.mantice.pattern.PatternChooser}. Knows no buttons and no performance.
 */
package org.mantice.pattern;
