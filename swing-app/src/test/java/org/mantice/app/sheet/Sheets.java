package org.mantice.app.sheet;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.mantice.examples.ExampleFiles;
import org.mantice.instrument.AccordionPresets;
import org.mantice.performance.Performance;
import org.mantice.performance.Performer;
import org.mantice.reading.TuneReader;
import org.mantice.tune.Barlines;
import org.mantice.tune.BassEvent;
import org.mantice.tune.ChordKind;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.EventMarks;
import org.mantice.tune.GraceGroup;
import org.mantice.tune.Key;
import org.mantice.tune.Lyric;
import org.mantice.tune.Mark;
import org.mantice.tune.Measure;
import org.mantice.tune.MelodyEvent;
import org.mantice.tune.MelodyNote;
import org.mantice.tune.Meter;
import org.mantice.tune.Mode;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.NoteName;
import org.mantice.tune.Pitch;
import org.mantice.tune.PlacedChord;
import org.mantice.tune.Step;
import org.mantice.tune.Tune;

/** Sheets to test: the shipped examples, and tunes of our own invention. */
final class Sheets {
    private Sheets() {}

    static List<Path> examples() {
        try (Stream<Path> files = Files.list(ExampleFiles.folder("tunes"))) {
            return files.sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static SheetContent bare(Path file, Reading reading) {
        return bare(new TuneReader().read(file).tune(), reading);
    }

    /** The bare staff of a tune. */
    static SheetContent bare(Tune tune, Reading reading) {
        Performance performance = Performer.perform(tune);
        return new SheetContent(
                performance,
                AccordionPresets.all().get(0),
                reading.cells(performance),
                List.of(),
                Set.of(),
                Pointing.NOWHERE);
    }

    static SheetContent bare(Measure... measures) {
        return bare(new Tune("", Optional.empty(), List.of(measures)), new Reading.AsWritten());
    }

    static Measure measure(Meter meter, Key key, MelodyEvent... events) {
        return new Measure(
                "1",
                meter.length(),
                meter,
                key,
                false,
                List.of(events),
                List.of(),
                List.of(),
                List.of(),
                Barlines.PLAIN);
    }

    static MusicalTime time(long numerator, long denominator) {
        return MusicalTime.of(numerator, denominator);
    }

    /** Every length, chord, lyric and key that there can be, in a fixed order for a seed. */
    static Tune random(long seed, int measures) {
        Random random = new Random(seed);
        List<Measure> list = new ArrayList<>();
        Meter meter = Meter.of(4, 4);
        Key key = Key.C_MAJOR;
        for (int i = 0; i < measures; i++) {
            if (random.nextInt(6) == 0)
                meter = List.of(Meter.of(3, 4), Meter.of(6, 8), Meter.of(5, 8), new Meter(List.of(3, 2), 8), Meter.FREE)
                        .get(random.nextInt(5));
            if (random.nextInt(6) == 0) key = new Key(random.nextInt(15) - 7, Mode.MAJOR);
            list.add(measure(random, i, meter, key));
        }
        return new Tune("Invented " + seed, Optional.empty(), list);
    }

    private static PlacedChord placed(Random random, MusicalTime at) {
        Optional<ChordSymbol> alternate = random.nextInt(3) == 0 ? Optional.of(chord(random)) : Optional.empty();
        return new PlacedChord(at, chord(random), alternate, random.nextInt(4) == 0, false);
    }

    private static Measure measure(Random random, int number, Meter meter, Key key) {
        List<MelodyEvent> melody = new ArrayList<>();
        List<PlacedChord> chords = new ArrayList<>();
        List<BassEvent> bass = new ArrayList<>();
        MusicalTime length = meter.length();
        for (MusicalTime at = MusicalTime.ZERO; at.isBefore(length); ) {
            MusicalTime duration = time(
                            1 + random.nextInt(6), List.of(4, 8, 8, 12, 16, 32).get(random.nextInt(6)))
                    .min(length.minus(at));
            melody.add(event(random, at, duration));
            if (random.nextInt(4) == 0) chords.add(placed(random, at));
            if (random.nextInt(4) == 0)
                bass.add(new BassEvent(at, duration, List.of(Pitch.of(Step.C, 0, 3)), Optional.empty()));
            at = at.plus(duration);
        }
        List<Mark> marks = random.nextInt(5) > 0 ? List.of() : List.of(new Mark.Words(MusicalTime.ZERO, "gently"));
        return new Measure(
                Integer.toString(number + 1), length, meter, key, false, melody, chords, bass, marks, Barlines.PLAIN);
    }

    private static ChordSymbol chord(Random random) {
        return ChordSymbol.of(
                new NoteName(Step.values()[random.nextInt(7)], random.nextInt(3) - 1),
                ChordKind.values()[random.nextInt(ChordKind.values().length)]);
    }

    private static MelodyEvent event(Random random, MusicalTime at, MusicalTime duration) {
        List<MelodyNote> notes = new ArrayList<>();
        int count = random.nextInt(8) == 0 ? 0 : random.nextInt(5) == 0 ? 3 : 1;
        for (int i = 0; i < count; i++) notes.add(MelodyNote.of(pitch(random)));
        GraceGroup graces = random.nextInt(8) > 0 || count == 0
                ? GraceGroup.NONE
                : new GraceGroup(List.of(List.of(MelodyNote.of(pitch(random)))));
        List<Lyric> lyrics = random.nextInt(3) > 0
                ? List.of()
                : List.of(new Lyric(1, "syll".repeat(1 + random.nextInt(2)), random.nextBoolean()));
        EventMarks marks = new EventMarks(0, 0, Set.of(), false, false, lyrics, Optional.empty());
        return new MelodyEvent(at, duration, notes, graces, GraceGroup.NONE, marks);
    }

    private static Pitch pitch(Random random) {
        return Pitch.of(Step.values()[random.nextInt(7)], random.nextInt(5) - 2, 4 + random.nextInt(2));
    }
}
