package org.mantice.app.command;

import java.util.List;
import java.util.stream.Collectors;
import org.mantice.editing.Edits;
import org.mantice.editing.TuneEdit;
import org.mantice.editing.TuneEditException;
import org.mantice.tune.Measure;
import org.mantice.tune.PlacedChord;
import org.mantice.tune.Tune;
import picocli.CommandLine.Option;

/** Proposes chords, on request, for tunes that have neither chord symbols nor a written bass. */
final class Proposing {
    @Option(
            names = "--propose-chords",
            description = "where a tune has neither chord symbols nor a bass, takes chords proposed for its melody; "
                    + "plan files say so")
    private boolean wanted;

    /**
     * A tune to work on.
     *
     * @param edits what was done to it, as plan files keep it; empty if it is as it was read
     */
    record Proposed(Tune tune, List<TuneEdit> edits) {
        Proposed {
            edits = List.copyOf(edits);
        }

        /** One line for people; empty if nothing was proposed. */
        String words() {
            if (edits.isEmpty()) return "";
            List<String> measures = tune.measures().stream()
                    .filter(measure -> !measure.chords().isEmpty())
                    .map(Proposed::words)
                    .toList();
            return "proposed: chord symbols, because the tune has none (" + String.join(", ", measures) + ")";
        }

        private static String words(Measure measure) {
            return measure.number() + " "
                    + measure.chords().stream()
                            .map(PlacedChord::symbol)
                            .map(Object::toString)
                            .collect(Collectors.joining(" "));
        }
    }

    /** A melody for which nothing can be proposed stays as it is. */
    Proposed of(Tune tune) {
        if (!wanted || tune.measures().stream().anyMatch(Proposing::hasHarmony)) return new Proposed(tune, List.of());
        try {
            List<TuneEdit> edits = List.of(new TuneEdit.ProposeChords());
            return new Proposed(Edits.apply(tune, edits).tune(), edits);
        } catch (TuneEditException e) {
            return new Proposed(tune, List.of());
        }
    }

    private static boolean hasHarmony(Measure measure) {
        return !measure.chords().isEmpty() || !measure.bass().isEmpty();
    }
}
