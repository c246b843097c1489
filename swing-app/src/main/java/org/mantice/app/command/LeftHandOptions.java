package org.mantice.app.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.mantice.file.PatternFile;
import org.mantice.pattern.Accompaniment;
import org.mantice.pattern.BassPattern;
import org.mantice.tune.Tune;
import picocli.CommandLine.Option;

/** Which patterns the left hand plays where. */
final class LeftHandOptions {
    @Option(
            names = "--pattern",
            paramLabel = "ID[@FROM-TO][/PASS]",
            description =
                    "a pattern of the left hand, in all measures or some, in every pass or one; of several the last "
                            + "holds; may be repeated; the verb patterns lists them")
    private List<String> patterns = new ArrayList<>();

    @Option(
            names = "--left-hand",
            paramLabel = "PART[@FROM-TO][/PASS]",
            description = "what of the pattern is played: full, bass-only, chords-only, silent; may be repeated")
    private List<String> hands = new ArrayList<>();

    @Option(
            names = "--pattern-file",
            paramLabel = "FILE",
            description = "more patterns, *.patterns.json; may be repeated")
    private List<Path> files = new ArrayList<>();

    /** The patterns there are, nothing chosen. */
    Accompaniment known() {
        List<BassPattern> own = new ArrayList<>();
        for (Path file : files) own.addAll(PatternFile.read(file).patterns());
        return new Accompaniment(own, List.of());
    }

    /** @throws IllegalArgumentException if a choice is wrong for every tune */
    void check() {
        Accompaniment known = known();
        for (String words : patterns) PatternWords.checkPattern(words, known);
        for (String words : hands) PatternWords.checkHand(words);
    }

    /** @throws IllegalArgumentException if a choice is wrong for this tune */
    Accompaniment chosen(Tune tune) {
        Accompaniment known = known();
        Accompaniment chosen = known;
        for (String words : patterns) chosen = chosen.with(PatternWords.patternIn(words, known, tune));
        for (String words : hands) chosen = chosen.with(PatternWords.handIn(words, tune));
        return chosen;
    }
}
