package org.mantice.app.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.mantice.examples.ExampleFiles;
import org.mantice.tune.Barlines;
import org.mantice.tune.EventMarks;
import org.mantice.tune.GraceGroup;
import org.mantice.tune.Key;
import org.mantice.tune.Loudness;
import org.mantice.tune.Mark;
import org.mantice.tune.Measure;
import org.mantice.tune.MelodyEvent;
import org.mantice.tune.MelodyNote;
import org.mantice.tune.Meter;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Pitch;
import org.mantice.tune.Step;

/** Slurs, hairpins, endings and signs of the order of play, by cells. */
class SheetSpansTest {
    private static final Path LANTERNS = ExampleFiles.folder("tunes").resolve("lanterns-at-the-weir.musicxml");

    private static SheetSpans spans(Measure... measures) {
        return new SheetSpans(new SheetMeasures(Sheets.bare(measures)));
    }

    private static MelodyEvent slurred(int quarter, int starts, int stops) {
        return new MelodyEvent(
                Sheets.time(quarter, 4),
                MusicalTime.QUARTER,
                List.of(MelodyNote.of(Pitch.of(Step.A, 0, 4))),
                GraceGroup.NONE,
                GraceGroup.NONE,
                new EventMarks(starts, stops, Set.of(), false, false, List.of(), Optional.empty()));
    }

    private static Measure two(MelodyEvent first, MelodyEvent second, Mark... marks) {
        return new Measure(
                "1",
                Sheets.time(1, 2),
                Meter.of(2, 4),
                Key.C_MAJOR,
                false,
                List.of(first, second),
                List.of(),
                List.of(),
                List.of(marks),
                Barlines.PLAIN);
    }

    @Test
    void slursNestAndFollowEachOtherOnOneNote() {
        SheetSpans spans = spans(
                two(slurred(0, 1, 0), slurred(1, 1, 0)),
                two(slurred(0, 0, 1), slurred(1, 1, 1)),
                two(slurred(0, 0, 0), slurred(1, 0, 1)));

        assertThat(spans.slurs())
                .containsExactly(
                        new SheetSpans.Slur(0, 1, 1, 0, false, false),
                        new SheetSpans.Slur(0, 0, 1, 1, false, false),
                        new SheetSpans.Slur(1, 1, 2, 1, false, false));
    }

    @Test
    void slurThatNothingEndsGoesOnAndOneThatNothingStartedComesFromBefore() {
        SheetSpans spans = spans(two(slurred(0, 0, 0), slurred(1, 0, 1)), two(slurred(0, 0, 0), slurred(1, 1, 0)));

        assertThat(spans.slurs())
                .containsExactly(
                        new SheetSpans.Slur(0, 0, 0, 1, true, false), new SheetSpans.Slur(1, 1, 1, 1, false, true));
    }

    @Test
    void hairpinThatEndsWithTheNextMeasureEndsAtTheBarlineAndADynamicEndsOne() {
        MelodyEvent first = slurred(0, 0, 0);
        MelodyEvent second = slurred(1, 0, 0);
        SheetSpans spans = spans(
                two(first, second, new Mark.HairpinStart(MusicalTime.ZERO, true)),
                two(
                        first,
                        second,
                        new Mark.HairpinEnd(MusicalTime.ZERO),
                        new Mark.HairpinStart(MusicalTime.ZERO, false),
                        new Mark.Dynamic(MusicalTime.QUARTER, Loudness.P)));

        assertThat(spans.hairpins())
                .containsExactly(
                        new SheetSpans.Hairpin(0, MusicalTime.ZERO, 0, Sheets.time(1, 2), true),
                        new SheetSpans.Hairpin(1, MusicalTime.ZERO, 1, MusicalTime.QUARTER, false));
    }

    @Test
    void endingsReachToTheirStopsAndThoseBeforeARepeatAreClosed() {
        SheetSpans spans = new SheetSpans(new SheetMeasures(Sheets.bare(LANTERNS, new Reading.AsWritten())));

        assertThat(spans.endings())
                .extracting(SheetSpans.Ending::numbers, SheetSpans.Ending::closed)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(List.of(1), true),
                        org.assertj.core.groups.Tuple.tuple(List.of(2), false));
        for (SheetSpans.Ending ending : spans.endings())
            assertThat(ending.toCell() - ending.fromCell()).isEqualTo(1);
    }

    @Test
    void measuresInOrderOfPlayShowNoRepeatsOrJumps() {
        SheetMeasures written = new SheetMeasures(Sheets.bare(LANTERNS, new Reading.AsWritten()));
        SheetMeasures played = new SheetMeasures(Sheets.bare(LANTERNS, new Reading.AsPlayed()));

        List<Barlines> shown = new ArrayList<>();
        for (int i = 0; i < played.count(); i++) shown.add(played.barlines(i));

        assertThat(written.isUnrolled()).isFalse();
        assertThat(written.barlines(1).repeatStart()).isTrue();
        assertThat(played.isUnrolled()).isTrue();
        assertThat(shown)
                .noneMatch(barlines -> barlines.repeatStart()
                        || barlines.repeatEnd().isPresent()
                        || !barlines.endingStart().isEmpty()
                        || barlines.jump().isPresent());
    }

    @Test
    void newKeyAndMeterOnTheNextLineAreWarnedOfAtTheEndOfTheLine() {
        Pitch pitch = Pitch.of(Step.A, 0, 4);
        MelodyEvent note = MelodyEvent.note(MusicalTime.ZERO, MusicalTime.QUARTER, pitch);
        SheetMeasures sheet = new SheetMeasures(Sheets.bare(
                Sheets.measure(Meter.of(1, 4), Key.C_MAJOR, note),
                Sheets.measure(Meter.of(2, 8), new Key(2, org.mantice.tune.Mode.MAJOR), note),
                Sheets.measure(Meter.of(2, 8), Key.C_MAJOR, note)));

        assertThat(sheet.warning(0).signs())
                .extracting(Opening.Sign::glyph)
                .containsExactly(
                        Glyph.ACCIDENTAL_SHARP, Glyph.ACCIDENTAL_SHARP, Glyph.meterFigure(2), Glyph.meterFigure(8));
        assertThat(sheet.warning(1).signs())
                .extracting(Opening.Sign::glyph)
                .containsExactly(Glyph.ACCIDENTAL_NATURAL, Glyph.ACCIDENTAL_NATURAL);
        assertThat(sheet.warning(2).signs()).isEmpty();
    }
}
