/**
 * What a player changes in a written tune: chords, phrases, barlines, tempo, key. Edits are values, kept in the order in
 * which they were made; the tune's file stays as it is. Start at {@link org.mantice.editing.Edits}. Depends on {@code
 * org.mantice.tune}, on the spelling of chords in {@code org.mantice.reading}, on {@code org.mantice.harmony} for
 * proposals and on {@code org.mantice.performance} for the order of play.
 */
package org.mantice.editing;
