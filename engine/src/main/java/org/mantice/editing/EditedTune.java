package org.mantice.editing;

import java.util.List;
import org.mantice.harmony.ProposedChord;
import org.mantice.tune.PlacedChord;
import org.mantice.tune.Tune;

/**
 * A tune after edits.
 *
 * @param tune with its proposed chords marked as such
 * @param proposals of the last proposal what still stands as proposed, with its reasons, in the order of the written music
 */
public record EditedTune(Tune tune, List<ProposedChord> proposals) {
    public EditedTune {
        proposals = List.copyOf(proposals);
    }

    /** A tune before any edit. */
    public static EditedTune unedited(Tune tune) {
        return new EditedTune(tune, List.of());
    }

    /** The same with another tune; proposals that are not in it any more are forgotten. */
    EditedTune with(Tune changed) {
        return new EditedTune(changed, standing(changed, proposals));
    }

    static List<ProposedChord> standing(Tune tune, List<ProposedChord> proposals) {
        return proposals.stream().filter(chord -> stands(tune, chord)).toList();
    }

    private static boolean stands(Tune tune, ProposedChord chord) {
        return tune.measure(chord.place().measure())
                .chords()
                .contains(new PlacedChord(chord.place().offset(), chord.symbol(), true));
    }
}
