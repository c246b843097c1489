package org.mantice.performance;

import java.util.Optional;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.PlacedChord;

/**
 * Which chords are played where the music leaves a choice: two written at one place, or one in brackets.
 *
 * @param optional whether chords in brackets are played; where they are left out, the chord before goes on, and nothing
 *     is heard of an alternate beside them
 */
public record ChordsPlayed(Alternates alternates, boolean optional) {
    /** When the second of two chords at one place takes the place of the first. */
    public enum Alternates {
        /** The first pass plays the first, every later pass the second; common practice, no source. */
        LATER_PASSES,
        NEVER,
        ALWAYS
    }

    /** Alternates on later passes; chords in brackets are played (common practice, no source). */
    public static final ChordsPlayed USUAL = new ChordsPlayed(Alternates.LATER_PASSES, true);

    /**
     * What a pass plays of a chord: itself or its alternate, then without a choice any more; empty if it is left out.
     *
     * @param pass from 1
     */
    public Optional<PlacedChord> inPass(PlacedChord chord, int pass) {
        if (!plays(chord)) return Optional.empty();
        Optional<ChordSymbol> other = usesAlternates(pass) ? chord.alternate() : Optional.empty();
        return Optional.of(new PlacedChord(
                chord.offset(), other.orElse(chord.symbol()), Optional.empty(), chord.optional(), chord.proposed()));
    }

    /** Whether a chord is played in any pass. */
    boolean plays(PlacedChord chord) {
        return optional || !chord.optional();
    }

    /** @param pass from 1 */
    boolean usesAlternates(int pass) {
        return switch (alternates) {
            case LATER_PASSES -> pass > 1;
            case NEVER -> false;
            case ALWAYS -> true;
        };
    }
}
