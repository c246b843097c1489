package org.mantice.writing;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.mantice.tune.Articulation;
import org.mantice.tune.Barlines;
import org.mantice.tune.BassChordType;
import org.mantice.tune.BassEvent;
import org.mantice.tune.BassMarks;
import org.mantice.tune.BellowsEffect;
import org.mantice.tune.ChordDegree;
import org.mantice.tune.ChordKind;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.EventMarks;
import org.mantice.tune.GraceGroup;
import org.mantice.tune.Key;
import org.mantice.tune.Loudness;
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
import org.mantice.tune.Tempo;
import org.mantice.tune.Tune;

/**
 * Tunes without musical sense that use every part of the tune model, and every value of its closed choices in the long
 * run. The same seed gives the same tune.
 */
final class RandomTunes {
    private static final String[] TEXTS = {
        "Ar-dle",
        "d'un <Bräu> & \"so\"",
        "cresc.",
        "D.C.",
        "N.C.",
        "Fine",
        "M",
        "waltz",
        "7",
        "ça \uD83E\uDE97",
        "a\tb",
        "Coda",
        "Dm"
    };

    private final Random random;
    private final boolean bass;
    /** Number of the tuplets in a measure, beside triplets. */
    private int odd = 5;

    private RandomTunes(long seed) {
        random = new Random(seed);
        bass = random.nextInt(3) == 0;
    }

    static Tune tune(long seed) {
        return new RandomTunes(seed).tune();
    }

    private Tune tune() {
        List<Measure> measures = new ArrayList<>();
        Key key = key();
        Meter meter = meter();
        int size = 1 + random.nextInt(7);
        for (int i = 0; i < size; i++) {
            if (one(4)) key = key();
            if (one(4)) meter = meter();
            measures.add(measure(i, key, meter));
        }
        String title = one(4) ? "" : "Tune of " + text().replace('\t', ' ');
        return new Tune(title, one(2) ? Optional.empty() : Optional.of(one(2) ? "waltz" : "odd dance"), measures);
    }

    private Measure measure(int index, Key key, Meter meter) {
        odd = 3 + 2 * random.nextInt(6);
        MusicalTime length = one(3) ? length().plus(length()) : meter.length();
        List<MelodyEvent> melody = melody(length);
        if (index == 0 && melody.stream().allMatch(MelodyEvent::isRest))
            melody = List.of(MelodyEvent.note(MusicalTime.ZERO, length, Pitch.of(Step.A, 0, 4)));
        List<BassEvent> events = bass ? bass(length) : List.of();
        if (bass && index == 0)
            events =
                    List.of(new BassEvent(MusicalTime.ZERO, length, List.of(Pitch.of(Step.C, 0, 3)), Optional.empty()));
        String number = one(8) ? "X" + index : one(9) ? "" : String.valueOf(index + 1);
        return new Measure(
                number, length, meter, key, one(4), melody, chords(length), events, marks(length), barlines());
    }

    private List<MelodyEvent> melody(MusicalTime length) {
        List<MelodyEvent> events = new ArrayList<>();
        MusicalTime at = MusicalTime.ZERO;
        if (one(12)) return List.of(new MelodyEvent(at, length, List.of(), GraceGroup.NONE, GraceGroup.NONE, marks()));
        while (at.isBefore(length)) {
            MusicalTime duration = length().min(length.minus(at));
            if (!one(8)) events.add(new MelodyEvent(at, duration, notes(one(5) ? 0 : 1), graces(), graces(), marks()));
            at = at.plus(duration);
        }
        return events;
    }

    private List<MelodyNote> notes(int least) {
        TreeMap<Integer, MelodyNote> byKey = new TreeMap<>();
        int count = least == 0 ? 0 : 1 + (one(3) ? random.nextInt(4) : 0);
        for (int i = 0; i < count; i++) {
            List<Integer> fingers = new ArrayList<>();
            while (one(3)) fingers.add(1 + random.nextInt(5));
            Pitch pitch = pitch();
            byKey.put(pitch.midi(), new MelodyNote(pitch, one(4), one(4), fingers));
        }
        return List.copyOf(byKey.values());
    }

    private Pitch pitch() {
        return Pitch.of(any(Step.values()), random.nextInt(5) - 2, 1 + random.nextInt(7));
    }

    private GraceGroup graces() {
        List<List<MelodyNote>> groups = new ArrayList<>();
        while (one(6)) groups.add(notes(1));
        return new GraceGroup(groups);
    }

    private EventMarks marks() {
        if (one(2)) return EventMarks.NONE;
        Set<Articulation> articulations = EnumSet.noneOf(Articulation.class);
        while (one(2)) articulations.add(any(Articulation.values()));
        List<Lyric> lyrics = new ArrayList<>();
        while (one(3)) lyrics.add(new Lyric(lyrics.size() + 1, text(), one(2)));
        return new EventMarks(
                random.nextInt(3),
                random.nextInt(3),
                articulations,
                one(4),
                one(4),
                lyrics,
                one(4) ? Optional.of(any(BellowsEffect.values())) : Optional.empty());
    }

    private List<PlacedChord> chords(MusicalTime length) {
        List<PlacedChord> chords = new ArrayList<>();
        while (!one(3)) {
            MusicalTime offset = one(3) ? MusicalTime.ZERO : part(length);
            Optional<ChordSymbol> alternate = one(3) ? Optional.of(chord()) : Optional.empty();
            chords.add(new PlacedChord(offset, chord(), alternate, one(4), one(4)));
        }
        return chords;
    }

    private ChordSymbol chord() {
        ChordKind kind = any(ChordKind.values());
        NoteName root = kind == ChordKind.NONE ? new NoteName(Step.C, 0) : name();
        List<ChordDegree> degrees = new ArrayList<>();
        while (one(3))
            degrees.add(
                    new ChordDegree(1 + random.nextInt(13), random.nextInt(5) - 2, any(ChordDegree.Change.values())));
        String text = one(2) ? "" : one(2) ? kind.suffix() : text();
        return new ChordSymbol(root, kind, degrees, one(3) ? Optional.of(name()) : Optional.empty(), text);
    }

    private NoteName name() {
        return new NoteName(any(Step.values()), random.nextInt(5) - 2);
    }

    private List<BassEvent> bass(MusicalTime length) {
        List<BassEvent> events = new ArrayList<>();
        while (!one(5)) {
            MusicalTime at =
                    one(2) && !events.isEmpty() ? events.get(events.size() - 1).offset() : part(length);
            Set<Pitch> pitches = new TreeSet<>();
            while (one(2)) pitches.add(pitch());
            Optional<BassChordType> letter =
                    one(2) || pitches.isEmpty() ? Optional.empty() : Optional.of(any(BassChordType.values()));
            events.add(new BassEvent(
                    at,
                    length().min(length.minus(at)),
                    List.copyOf(pitches),
                    letter,
                    !pitches.isEmpty() && one(4),
                    marks(pitches, letter)));
        }
        return events;
    }

    private BassMarks marks(Set<Pitch> pitches, Optional<BassChordType> letter) {
        boolean single = pitches.size() == 1 && letter.isEmpty();
        OptionalInt finger = pitches.isEmpty() || one(2) ? OptionalInt.empty() : OptionalInt.of(1 + random.nextInt(5));
        return new BassMarks(single && one(3), finger);
    }

    private List<Mark> marks(MusicalTime length) {
        List<Mark> marks = new ArrayList<>();
        while (!one(3)) {
            MusicalTime at = one(3) ? MusicalTime.ZERO : one(4) ? length : part(length);
            marks.add(
                    switch (random.nextInt(8)) {
                        case 0 -> new Mark.Dynamic(at, any(Loudness.values()));
                        case 1 -> new Mark.HairpinStart(at, one(2));
                        case 2 -> new Mark.HairpinEnd(at);
                        case 3 ->
                            new Mark.TempoChange(
                                    at,
                                    new Tempo(
                                            MusicalTime.of(1 + random.nextInt(15), 16),
                                            5_000 + random.nextInt(995_001)));
                        case 4 -> new Mark.Rehearsal(at, text());
                        case 5 -> new Mark.Words(at, text());
                        case 6 -> new Mark.PhraseStart(at);
                        default -> new Mark.Registration(at, one(2), 1 + random.nextInt(3), one(2));
                    });
        }
        return marks;
    }

    private Barlines barlines() {
        if (one(2)) return Barlines.PLAIN;
        Optional<Integer> repeat = one(3) ? Optional.of(2 + random.nextInt(99)) : Optional.empty();
        List<Integer> ending = new ArrayList<>();
        while (one(3)) ending.add(1 + random.nextInt(100));
        return new Barlines(
                one(4),
                repeat,
                repeat.isPresent() && one(2),
                ending,
                one(4),
                one(4),
                one(4),
                one(3) ? Optional.of(any(Barlines.Jump.values())) : Optional.empty(),
                one(4),
                one(4),
                one(3));
    }

    private Key key() {
        return new Key(random.nextInt(15) - 7, any(Mode.values()));
    }

    private Meter meter() {
        if (one(8)) return Meter.FREE;
        List<Integer> groups = new ArrayList<>(List.of(1 + random.nextInt(6)));
        while (one(3)) groups.add(1 + random.nextInt(4));
        return new Meter(groups, 1 << random.nextInt(7));
    }

    /** Plain, dotted, tied, in tuplets of all kinds, very short and very long. */
    private MusicalTime length() {
        if (one(40)) return MusicalTime.of(1 + random.nextInt(40), 1);
        if (one(40)) return MusicalTime.of(1, 2048);
        if (one(4)) return MusicalTime.of(1 + random.nextInt(30), one(2) ? 12 : 4L * odd);
        return MusicalTime.of(1 + random.nextInt(one(4) ? 17 : 4), 1L << 2 + random.nextInt(3));
    }

    private MusicalTime part(MusicalTime length) {
        return length.times(MusicalTime.of(random.nextInt(12), 12));
    }

    private String text() {
        return any(TEXTS);
    }

    private boolean one(int of) {
        return random.nextInt(of) == 0;
    }

    private <T> T any(T[] values) {
        return values[random.nextInt(values.length)];
    }
}
