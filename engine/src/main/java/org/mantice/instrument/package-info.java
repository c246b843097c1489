/**
 * The accordion: treble keyboard, register switches and reed banks, Stradella bass, bellows. Immutable profiles; start
 * at {@link org.mantice.instrument.Accordion}. Depends on {@code org.mantice.tune} for names of notes and loudness.
 */
package org.mantice.instrument;
