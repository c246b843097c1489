/**
 * The accordion: treble keyboard, register switches and reed banks, Stradella bass, bellows. Immutable profiles; start
 * at {@link org.mantice.instrument.Accordion}, for ready-made ones at {@link org.mantice.instrument.AccordionPresets},
 * for the buttons of a chord symbol at {@link org.mantice.instrument.ChordButtons}. Depends on {@code org.mantice.tune}
 * for names of notes, chords and loudness.
 */
package org.mantice.instrument;
