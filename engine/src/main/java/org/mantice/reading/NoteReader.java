package org.mantice.reading;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.NoteName;
import org.mantice.tune.Pitch;
import org.mantice.tune.Step;

/** Reads one note element. */
final class NoteReader {
    private final PartState state;
    private final int run;
    private final List<Finding> findings;

    NoteReader(PartState state, int run, List<Finding> findings) {
        this.state = state;
        this.run = run;
        this.findings = findings;
    }

    ScoreNote read(XmlNode node, MusicalTime onset, MusicalTime duration) {
        int staff = MeasureReader.staffOf(node);
        Optional<Pitch> pitch = node.child("pitch").flatMap(this::pitch).map(state.transposition(staff)::of);
        if (pitch.isPresent() && (pitch.get().midi() < 0 || pitch.get().midi() > 127)) pitch = unreadable(pitch.get());
        if (!node.attribute("time-only").isEmpty()) findings.add(Finding.of(SkippedWhat.ONLY_IN_PASS, "a note"));
        NotationsReader notations = new NotationsReader(onset, findings);
        NoteMarks marks = notations.read(node);
        return new ScoreNote(
                onset,
                duration,
                run,
                voice(node),
                staff,
                kind(node),
                node.has("chord"),
                node.has("cue"),
                pitch,
                isTied(node, "start"),
                isTied(node, "stop"),
                notations.fingers(),
                marks,
                findings);
    }

    private Optional<Pitch> unreadable(Pitch pitch) {
        findings.add(Finding.of(SkippedWhat.UNREADABLE_PITCH, pitch.toString()));
        return Optional.empty();
    }

    /** A file without voices gives each backup a voice of its own. */
    private String voice(XmlNode node) {
        String voice = node.text("voice");
        return voice.isEmpty() ? String.valueOf(run + 1) : voice;
    }

    private ScoreNote.Kind kind(XmlNode node) {
        if (node.has("rest")) {
            boolean whole = !state.verbatim
                    && node.child("rest")
                            .filter(rest -> rest.attribute("measure").equals("yes"))
                            .isPresent();
            return whole ? ScoreNote.Kind.MEASURE_REST : ScoreNote.Kind.REST;
        }
        Optional<XmlNode> grace = node.child("grace");
        if (grace.isPresent())
            return grace.get().attribute("steal-time-previous").isEmpty()
                    ? ScoreNote.Kind.GRACE
                    : ScoreNote.Kind.GRACE_AFTER;
        return node.has("unpitched") ? ScoreNote.Kind.UNPITCHED : ScoreNote.Kind.NOTE;
    }

    /** The sounding tie counts; where a file has none, the printed one does. */
    private static boolean isTied(XmlNode node, String type) {
        if (node.has("tie"))
            return node.children("tie").anyMatch(tie -> tie.attribute("type").equals(type));
        return node.children("notations")
                .flatMap(notations -> notations.children("tied"))
                .anyMatch(tied -> tied.attribute("type").equals(type)
                        || tied.attribute("type").equals("continue"));
    }

    private Optional<Pitch> pitch(XmlNode node) {
        String shown = node.text("step") + node.text("alter") + node.text("octave");
        Optional<Step> step = step(node.text("step"));
        int octave = Numbers.integer(node.text("octave"), 99);
        Optional<BigDecimal> alter =
                node.text("alter").isEmpty() ? Optional.of(BigDecimal.ZERO) : Numbers.decimal(node.text("alter"));
        if (step.isEmpty()
                || octave < -1
                || octave > 10
                || alter.isEmpty()
                || alter.get().abs().intValue() > 6) {
            findings.add(Finding.of(SkippedWhat.UNREADABLE_PITCH, shown));
            return Optional.empty();
        }
        // A quarter tone goes to the note it alters, so that the tune stays in its key.
        int semitones = alter.get().setScale(0, RoundingMode.HALF_DOWN).intValueExact();
        if (alter.get().compareTo(BigDecimal.valueOf(semitones)) != 0)
            findings.add(Finding.of(SkippedWhat.PITCH_ROUNDED, node.text("alter")));
        return Optional.of(pitch(step.get(), semitones, octave));
    }

    private static Pitch pitch(Step step, int alter, int octave) {
        if (Math.abs(alter) <= 2) return Pitch.of(step, alter, octave);
        NoteName name = NoteName.ofFifths(new NoteName(step, 0).fifths() + 7 * alter);
        return Transposition.spelled(name, Pitch.of(step, 0, octave).midi() + alter);
    }

    static Optional<Step> step(String letter) {
        for (Step step : Step.values()) if (step.name().equalsIgnoreCase(letter)) return Optional.of(step);
        return Optional.empty();
    }

    /** A note name from elements such as root-step and root-alter; empty where there is no readable step. */
    static Optional<NoteName> name(XmlNode node, String prefix, List<Finding> findings) {
        Optional<Step> step = step(node.text(prefix + "-step"));
        if (step.isEmpty()) return Optional.empty();
        BigDecimal alter = Numbers.decimal(node.text(prefix + "-alter")).orElse(BigDecimal.ZERO);
        int semitones = alter.min(BigDecimal.TEN)
                .max(BigDecimal.TEN.negate())
                .setScale(0, RoundingMode.HALF_DOWN)
                .intValueExact();
        if (alter.compareTo(BigDecimal.valueOf(semitones)) != 0)
            findings.add(Finding.of(SkippedWhat.PITCH_ROUNDED, alter.toPlainString()));
        return Optional.of(NoteName.ofFifths(new NoteName(step.get(), 0).fifths() + 7 * semitones));
    }

    static List<String> slurNumbers(List<XmlNode> slurs, String type) {
        List<String> numbers = new ArrayList<>();
        for (XmlNode slur : slurs)
            if (slur.attribute("type").equals(type))
                numbers.add(slur.attribute("number").isEmpty() ? "1" : slur.attribute("number"));
        return numbers;
    }
}
