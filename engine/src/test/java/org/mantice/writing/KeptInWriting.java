package org.mantice.writing;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.mantice.tune.ChordKind;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.EventMarks;
import org.mantice.tune.Lyric;
import org.mantice.tune.Mark;
import org.mantice.tune.Measure;
import org.mantice.tune.MelodyEvent;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.NoteName;
import org.mantice.tune.PlacedChord;
import org.mantice.tune.Step;
import org.mantice.tune.Tempo;
import org.mantice.tune.Tune;

/** A tune less the few things that {@link MusicXmlWriter} says it does not keep. */
public final class KeptInWriting {
    private KeptInWriting() {}

    public static Tune of(Tune tune) {
        boolean bass = tune.hasBassStaff();
        return new Tune(
                line(tune.title()),
                tune.dance(),
                tune.measures().stream().map(measure -> measure(measure, bass)).toList());
    }

    private static Measure measure(Measure measure, boolean bass) {
        List<Mark> marks = new ArrayList<>();
        measure.marks().forEach(mark -> mark(mark).ifPresent(marks::add));
        return new Measure(
                line(measure.number()),
                measure.length(),
                measure.meter(),
                measure.key(),
                measure.pickup(),
                measure.melody().stream().map(KeptInWriting::event).toList(),
                measure.chords().stream().map(KeptInWriting::chord).toList(),
                bass ? measure.bass() : List.of(),
                marks,
                measure.barlines());
    }

    private static MelodyEvent event(MelodyEvent event) {
        EventMarks marks = event.marks();
        List<Lyric> lyrics = marks.lyrics().stream()
                .map(lyric -> new Lyric(lyric.verse(), text(lyric.text()), lyric.endsWord()))
                .filter(lyric -> !lyric.text().isEmpty())
                .toList();
        return new MelodyEvent(
                event.offset(),
                event.duration(),
                event.notes(),
                event.graces(),
                event.after(),
                new EventMarks(
                        marks.slurStarts(),
                        marks.slurStops(),
                        marks.articulations(),
                        marks.breathAfter(),
                        marks.fermata(),
                        lyrics,
                        marks.bellowsEffect()));
    }

    private static PlacedChord chord(PlacedChord placed) {
        return new PlacedChord(
                placed.offset(),
                symbol(placed.symbol()),
                placed.alternate().map(KeptInWriting::symbol),
                placed.optional(),
                placed.proposed());
    }

    private static ChordSymbol symbol(ChordSymbol chord) {
        NoteName root = chord.kind() == ChordKind.NONE ? new NoteName(Step.C, 0) : chord.root();
        return new ChordSymbol(root, chord.kind(), chord.degrees(), chord.bass(), text(chord.text()));
    }

    private static Optional<Mark> mark(Mark mark) {
        if (mark instanceof Mark.Words words)
            return Optional.of(text(words.text()))
                    .filter(text -> !text.isEmpty())
                    .map(text -> new Mark.Words(words.offset(), text));
        if (mark instanceof Mark.Rehearsal letter)
            return Optional.of(text(letter.text()))
                    .filter(text -> !text.isEmpty())
                    .map(text -> new Mark.Rehearsal(letter.offset(), text));
        if (mark instanceof Mark.TempoChange change)
            return Optional.of(new Mark.TempoChange(change.offset(), tempo(change.tempo())));
        if (mark instanceof Mark.Registration dots && !dots.high() && !dots.low() && dots.middle() == 0)
            return Optional.empty();
        return Optional.of(mark);
    }

    private static Tempo tempo(Tempo tempo) {
        if (!NoteValue.plain(tempo.beat()).isEmpty()) return tempo;
        MusicalTime quarters = tempo.beat().dividedBy(MusicalTime.QUARTER).times(tempo.milliBeatsPerMinute());
        long milli = java.math.BigDecimal.valueOf(quarters.numerator())
                .divide(java.math.BigDecimal.valueOf(quarters.denominator()), 0, RoundingMode.HALF_UP)
                .longValueExact();
        return new Tempo(MusicalTime.QUARTER, (int) Math.max(5_000, Math.min(1_000_000, milli)));
    }

    private static String line(String text) {
        return text(text).replaceAll("[\\s\\p{Cntrl}]+", " ");
    }

    /** XML 1.0, production Char; then without white space at either end. */
    private static String text(String text) {
        return text.codePoints()
                .filter(c -> c == '\t'
                        || c == '\n'
                        || c == '\r'
                        || c >= 0x20 && c <= 0xD7FF
                        || c >= 0xE000 && c <= 0xFFFD
                        || c >= 0x10000)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString()
                .strip();
    }
}
