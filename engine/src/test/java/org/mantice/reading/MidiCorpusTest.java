package org.mantice.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MidiEvent;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Track;
import org.junit.jupiter.api.Test;
import org.mantice.performance.HarmonySpan;
import org.mantice.performance.Performance;
import org.mantice.performance.Performer;
import org.mantice.performance.PlayedMeasure;
import org.mantice.performance.SettingsBuilder;
import org.mantice.performance.TrebleMoment;
import org.mantice.reading.midi.MidiFile;
import org.mantice.reading.midi.MidiMeta;
import org.mantice.reading.midi.MidiNote;
import org.mantice.reading.midi.MidiRefusal;
import org.mantice.reading.midi.MidiTrack;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.Meter;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tune;

/** MIDI against the ABC of the same tunes, which others turned into MIDI; the files state no tempo, so 120 quarters. */
class MidiCorpusTest {
    private static final double MS_PER_QUARTER = 500;

    /** What is struck at one place of a measure; measures count from 0, which may be a pickup. */
    private record Struck(int measure, MusicalTime offset, List<Integer> pitches) {}

    private static List<String> agreed() throws IOException {
        List<String> names =
                Files.readAllLines(Corpus.folder("abc-nottingham").resolve("agreed-playorder.txt")).stream()
                        .filter(name -> !name.isBlank())
                        .sorted()
                        .toList();
        List<String> chosen = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) if (Corpus.isWhole() || i % 10 == 0) chosen.add(names.get(i));
        return chosen;
    }

    private static Path midi(String name) {
        return Corpus.folder("midi-nottingham").resolve(name + ".mid");
    }

    private static Tune abc(String name) {
        return new TuneReader()
                .read(Corpus.folder("abc-nottingham").resolve(name + ".abc"))
                .tune();
    }

    private static Tune read(byte[] bytes) {
        return new TuneReader().read("tune.mid", bytes, ReadOptions.DEFAULT).tune();
    }

    private static Performance play(Tune tune) {
        return Performer.perform(tune, SettingsBuilder.of(tune).timesThrough(1).build());
    }

    private static List<Integer> pitches(TrebleMoment moment) {
        return List.copyOf(new TreeSet<>(moment.notes().stream()
                .filter(note -> !note.held())
                .map(note -> note.midi())
                .toList()));
    }

    /** Two broken measures that fill one together count as one. */
    private static List<Struck> struck(Tune tune) {
        Performance played = play(tune);
        Map<Integer, Integer> numbers = new HashMap<>();
        Map<Integer, MusicalTime> begun = new HashMap<>();
        int number = -1;
        MusicalTime filled = MusicalTime.ZERO;
        for (PlayedMeasure measure : played.measures()) {
            MusicalTime full = played.meterOf(measure).length();
            boolean goesOn = number >= 0 && filled.plus(measure.length()).compareTo(full) <= 0;
            if (!goesOn) {
                number++;
                filled = number == 0 ? full.minus(measure.length()) : MusicalTime.ZERO;
            }
            numbers.put(measure.index(), number);
            begun.put(measure.index(), measure.start().minus(filled));
            filled = filled.plus(measure.length());
        }
        List<Struck> all = new ArrayList<>();
        for (TrebleMoment moment : played.treble()) {
            List<Integer> pitches = pitches(moment);
            if (pitches.isEmpty() || moment.graceIndex() != 0) continue;
            MusicalTime offset = moment.onset().minus(begun.get(moment.measure()));
            all.add(new Struck(numbers.get(moment.measure()), offset, pitches));
        }
        return all;
    }

    @Test
    void notesAreThoseThatTheJdksOwnReaderFinds() throws IOException, InvalidMidiDataException, MidiRefusal {
        for (Corpus.Numbered file : Corpus.files("midi-nottingham", ".mid")) {
            List<String> theirs = new ArrayList<>();
            for (Track track : MidiSystem.getSequence(file.path().toFile()).getTracks()) {
                List<String> notes = new ArrayList<>();
                for (int i = 0; i < track.size(); i++) {
                    MidiEvent event = track.get(i);
                    if (event.getMessage() instanceof ShortMessage message
                            && message.getCommand() == ShortMessage.NOTE_ON
                            && message.getData2() > 0)
                        notes.add(event.getTick() + " " + message.getChannel() + " " + message.getData1());
                }
                notes.sort(null);
                theirs.addAll(notes);
            }

            List<String> ours = new ArrayList<>();
            for (MidiTrack track : MidiFile.parse(Files.readAllBytes(file.path()), 500, 200_000)
                    .tracks())
                ours.addAll(track.notes().stream()
                        .map(note -> note.start() + " " + (note.channel() - 1) + " " + note.pitch())
                        .sorted()
                        .toList());

            assertThat(ours).as("file %d", file.index()).isEqualTo(theirs);
        }
    }

    @Test
    void measureBeatAndPitchAreThoseOfTheAbcInNineteenOfTwentyTunes() throws IOException {
        List<String> names = agreed();
        List<String> other = new ArrayList<>();

        for (String name : names) {
            List<Struck> ours = struck(new TuneReader().read(midi(name)).tune());
            if (!ours.equals(struck(abc(name)))) other.add(name);
        }

        assertThat(other.size() * 20)
                .as("%d of %d are different: %s", other.size(), names.size(), other)
                .isLessThanOrEqualTo(names.size());
    }

    @Test
    void playedByHandNearlyAllNotesAreOnTheRightTwelfthOfABeat() throws IOException, MidiRefusal {
        long right = 0;
        long all = 0;
        long unguided = 0;
        List<String> worst = new ArrayList<>();
        int seed = 0;
        for (String name : agreed()) {
            byte[] bytes = Files.readAllBytes(midi(name));
            List<String> expected = twelfths(read(bytes));
            MidiFile file = MidiFile.parse(bytes, 500, 200_000);
            byte[] played = byHand(file, seed++);
            List<String> found = new ArrayList<>(twelfths(read(played)));
            long met = expected.stream().filter(found::remove).count();
            if (met * 50 < expected.size() * 49L) worst.add(name + " " + met + "/" + expected.size());
            right += met;
            all += expected.size();
            unguided += stayed(file, MidiFile.parse(played, 500, 200_000));
        }

        assertThat(right * 100)
                .as("%d of %d onsets on the right twelfth; tunes below 98 %%: %s", right, all, worst)
                .isGreaterThanOrEqualTo(all * 98);
        assertThat(unguided * 2)
                .as("notes that the written beats alone would put right")
                .isLessThan(all);
    }

    /** Notes of the first track that lie within half a twelfth of a quarter of where they are written. */
    private static long stayed(MidiFile written, MidiFile played) {
        Map<Integer, List<Long>> byPitch = new HashMap<>();
        for (MidiNote note : written.tracks().get(0).notes())
            byPitch.computeIfAbsent(note.pitch(), pitch -> new ArrayList<>()).add(note.start());
        long stayed = 0;
        for (MidiNote note : played.tracks().get(0).notes()) {
            long start = byPitch.get(note.pitch()).remove(0);
            if (Math.abs(note.start() - start) * 24 < written.division()) stayed++;
        }
        return stayed;
    }

    /** Pitches with their place in twelfths of the beat, from the first barline after a pickup. */
    private static List<String> twelfths(Tune tune) {
        Performance played = play(tune);
        MusicalTime pickup = tune.measure(0).pickup() ? tune.measure(0).length() : MusicalTime.ZERO;
        List<String> all = new ArrayList<>();
        for (TrebleMoment moment : played.treble()) {
            MusicalTime twelfth = played.meterOf(played.measures().get(moment.measure()))
                    .beat()
                    .dividedBy(12);
            MusicalTime place = moment.onset().minus(pickup).plus(MusicalTime.of(1000, 1));
            long index = place.plus(twelfth.dividedBy(2)).countOf(twelfth);
            for (int pitch : pitches(moment)) all.add(index + " " + pitch);
        }
        return all;
    }

    /** Every beginning and end up to 15 ms early or late; pace up to 3 % off, steady in one half, wandering in the other. */
    private static byte[] byHand(MidiFile file, int seed) {
        Random random = new Random(seed);
        double drift = 0.03 * (2 * random.nextDouble() - 1);
        double period = 20_000 + 40_000 * random.nextDouble();
        double phase = 2 * Math.PI * random.nextDouble();
        double msPerTick = MS_PER_QUARTER / file.division();
        List<MidiBytes.Track> tracks = new ArrayList<>();
        for (MidiTrack track : file.tracks()) {
            MidiBytes.Track written = new MidiBytes.Track();
            for (MidiMeta meta : track.metas()) {
                if (meta instanceof MidiMeta.TimeSignature meter)
                    written.meter(meter.tick(), meter.beats(), Integer.numberOfTrailingZeros(meter.unit()));
                if (meta instanceof MidiMeta.KeySignature key) written.key(key.tick(), key.fifths(), key.minor());
            }
            for (MidiNote note : track.notes()) {
                long[] ends = new long[2];
                for (int i = 0; i < 2; i++) {
                    double ms = (i == 0 ? note.start() : note.end()) * msPerTick;
                    double wander = 0.03
                            * period
                            / (2 * Math.PI)
                            * (Math.sin(2 * Math.PI * ms / period + phase) - Math.sin(phase));
                    double played = ms + (seed % 2 == 0 ? drift * ms : wander) + 30 * random.nextDouble() - 15;
                    ends[i] = Math.max(0, Math.round(played / msPerTick));
                }
                written.note(note.channel(), note.pitch(), ends[0], Math.max(ends[0] + 1, ends[1]));
            }
            tracks.add(written);
        }
        return MidiBytes.file(1, file.division(), tracks.toArray(MidiBytes.Track[]::new));
    }

    @Test
    void rootsOfChordsPlayedAsBassAndChordAreFound() throws IOException {
        long right = 0;
        long all = 0;
        List<String> wrong = new ArrayList<>();
        for (String name : agreed()) {
            Tune tune = abc(name);
            if (!tune.hasChords()) continue;
            Performance written = play(tune);
            Performance found = play(read(bassAndChord(written)));
            MusicalTime shift =
                    found.treble().get(0).onset().minus(written.treble().get(0).onset());
            for (HarmonySpan span : written.harmony()) {
                Meter meter = written.meterOf(written.measures().get(span.measure()));
                for (MusicalTime at = span.start(); at.isBefore(span.end()); at = at.plus(meter.beat())) {
                    Optional<ChordSymbol> expected = span.chord().filter(chord -> !chord.isSilent());
                    if (expected.isEmpty()) continue;
                    int root = rootAt(found, at.plus(shift));
                    all++;
                    if (root == expected.get().root().pitchClass()) right++;
                    else
                        wrong.add(name + " " + span.place().measure() + "+"
                                + span.place().offset() + " " + span.end().minus(span.start()) + " " + expected.get()
                                + " " + root);
                }
            }
        }

        assertThat(all).isPositive();
        assertThat(right * 100)
                .as(
                        "%d of %d roots; wrong: %s",
                        right, all, wrong.stream().limit(10).toList())
                .isGreaterThanOrEqualTo(all * 95);
    }

    private static int rootAt(Performance played, MusicalTime at) {
        return played.harmony().stream()
                .filter(span -> span.start().compareTo(at) <= 0 && at.isBefore(span.end()))
                .flatMap(span -> span.chord().stream())
                .mapToInt(chord -> chord.root().pitchClass())
                .findFirst()
                .orElse(-1);
    }

    /** The melody, and as a beginner's left hand: a bass on the first beat of a chord, its fifth on every other one after. */
    private static byte[] bassAndChord(Performance played) {
        int division = 480;
        MidiBytes.Track melody = new MidiBytes.Track().name("Melody");
        MidiBytes.Track left = new MidiBytes.Track().name("Accompaniment");
        PlayedMeasure first = played.measures().get(0);
        MusicalTime lead = played.meterOf(first).length().minus(first.length()).max(MusicalTime.ZERO);
        Meter last = Meter.FREE;
        for (PlayedMeasure measure : played.measures()) {
            Meter meter = played.meterOf(measure);
            long tick = measure.index() == 0 ? 0 : ticks(measure.start().plus(lead), division);
            if (!meter.equals(last)) melody.meter(tick, meter.beats(), Integer.numberOfTrailingZeros(meter.unit()));
            last = meter;
        }
        melody.key(0, played.tune().measure(0).key().fifths(), false);
        for (TrebleMoment moment : played.treble())
            for (var note : moment.notes())
                if (!note.held()) {
                    long start = ticks(moment.onset().plus(lead), division);
                    melody.note(
                            1,
                            note.midi(),
                            start,
                            Math.max(
                                    start + 20,
                                    ticks(moment.onset().plus(moment.duration()).plus(lead), division)));
                }
        for (HarmonySpan span : played.harmony())
            span.chord().filter(chord -> !chord.isSilent()).ifPresent(chord -> {
                Meter meter = played.meterOf(played.measures().get(span.measure()));
                MusicalTime step = meter.isCompound()
                        ? meter.beat().dividedBy(3)
                        : meter.beat().min(MusicalTime.QUARTER);
                boolean halves = meter.length().isMultipleOf(step.times(2));
                int index = 0;
                for (MusicalTime at = span.start(); at.isBefore(span.end()); at = at.plus(step)) {
                    long start = ticks(at.plus(lead), division);
                    long end = start + ticks(step, division) * 3 / 4;
                    int every = meter.isCompound() ? 3 : halves ? 2 : meter.beats();
                    if (index % every == 0) {
                        int bass = chord.bass().orElse(chord.root()).pitchClass();
                        boolean fifth = index / every % 2 == 1 && chord.bass().isEmpty();
                        int alternate = chord.root().pitchClass()
                                + chord.kind().intervals().stream()
                                        .filter(i -> i >= 6 && i <= 8)
                                        .findFirst()
                                        .orElse(0);
                        left.note(2, 36 + (fifth ? alternate % 12 : bass), start, end);
                    } else if (!meter.isCompound() || index % every == 2)
                        for (int tone : chord.pitchClasses()) left.note(2, 48 + tone, start, end);
                    index++;
                }
            });
        return MidiBytes.file(1, division, melody, left);
    }

    private static long ticks(MusicalTime time, int division) {
        return time.times(4L * division).countOf(MusicalTime.WHOLE);
    }
}
