/**
 * Proposes chords for a bare melody. Start at {@link org.mantice.harmony.ChordProposal}. Depends on
 * {@code org.mantice.tune} alone.
 */
package org.mantice.harmony;
