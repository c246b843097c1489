package org.mantice.app.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.mantice.pattern.Accompaniment.Hand;
import org.mantice.pattern.BassPattern;
import org.mantice.pattern.Figure;
import org.mantice.pattern.PatternUse;
import org.mantice.pattern.Stroke;
import org.mantice.performance.PatternSection;
import org.mantice.performance.Performance;

/** Patterns of the left hand in plain words. */
public final class PatternText {
    private PatternText() {}

    /** What the left hand plays where and who chose it, on one line; empty where nothing is there to be played. */
    public static String of(Performance performance) {
        if (performance.bass().isEmpty()
                && performance.harmony().stream().allMatch(span -> span.chord().isEmpty())) return "";
        List<PatternSection> sections = new ArrayList<>();
        for (PatternSection section : PatternSection.of(performance)) {
            PatternSection last = sections.isEmpty() ? null : sections.get(sections.size() - 1);
            if (last == null || !last.use().equals(section.use())) sections.add(section);
        }
        if (sections.size() == 1) return "left hand: " + words(sections.get(0).use());
        return "left hand: "
                + sections.stream()
                        .map(section -> "from measure " + number(performance, section.firstMeasure()) + " of pass "
                                + section.pass() + " " + words(section.use()))
                        .collect(Collectors.joining("; "));
    }

    private static String number(Performance performance, int played) {
        return performance
                .tune()
                .measure(performance.measures().get(played).written())
                .number();
    }

    private static String words(PatternUse use) {
        String part =
                switch (use.hand()) {
                    case FULL -> "";
                    case BASS_ONLY -> ", bass only";
                    case CHORDS_ONLY -> ", chords only";
                    case SILENT -> ", silent";
                };
        if (use.hand() == Hand.SILENT) return "silent";
        String name = use.pattern().name(Locale.ENGLISH).toLowerCase(Locale.ENGLISH);
        return switch (use.why()) {
            case WRITTEN -> "as the bass staff is written" + part;
            case CHOSEN -> name + part;
            case DANCE -> name + part + " (assumed from the dance)";
            case METER -> name + part + " (assumed from the meter)";
        };
    }

    /** Every pattern with its name, meters, tempos and strokes. */
    public static String list(List<BassPattern> patterns) {
        StringBuilder text = new StringBuilder(
                "B bass, F fifth, T third, R step of a run, C chord, H both; > stressed, ... on every unit after it\n");
        for (BassPattern pattern : patterns) {
            text.append(pattern.id())
                    .append(": ")
                    .append(pattern.name(Locale.ENGLISH))
                    .append("\n  in ")
                    .append(String.join(", ", pattern.fit().meters()));
            if (!pattern.fit().usualFor().isEmpty())
                text.append("; usual in ")
                        .append(String.join(", ", pattern.fit().usualFor()));
            if (!pattern.fit().dances().isEmpty())
                text.append("; for ").append(String.join(", ", pattern.fit().dances()));
            if (pattern.fit().fromBeatsPerMinute() > 0)
                text.append("; from ")
                        .append(pattern.fit().fromBeatsPerMinute())
                        .append(" beats a minute");
            if (pattern.fit().belowBeatsPerMinute() <= 1_000)
                text.append("; below ")
                        .append(pattern.fit().belowBeatsPerMinute())
                        .append(" beats a minute");
            text.append("\n  ").append(strokes(pattern.figures().plain()));
            pattern.figures().beforeChange().ifPresent(figure -> text.append("; before another bass ")
                    .append(strokes(figure)));
            text.append('\n');
        }
        return text.toString();
    }

    private static String strokes(Figure figure) {
        return figure.strokes().stream().map(PatternText::stroke).collect(Collectors.joining(" "));
    }

    private static String stroke(Stroke stroke) {
        String letter = stroke.part() == Stroke.Part.BOTH
                ? "H"
                : stroke.bass()
                        .map(bass -> switch (bass) {
                            case ROOT, TURN -> "B";
                            case FIFTH -> "F";
                            case THIRD -> "T";
                            case RUN -> "R";
                        })
                        .orElse("C");
        return letter + stroke.at() + (stroke.stressed() ? ">" : "") + (stroke.onward() ? "..." : "");
    }
}
