package org.mantice.layer.lefthand;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.mantice.pattern.Accompaniment;
import org.mantice.performance.BassMoment;
import org.mantice.performance.ChordsPlayed;
import org.mantice.performance.HarmonySpan;
import org.mantice.performance.Pass;
import org.mantice.performance.Performance;
import org.mantice.performance.PlayedMeasure;
import org.mantice.performance.PlayedNote;
import org.mantice.performance.Punctuation;
import org.mantice.performance.Settings;
import org.mantice.performance.TrebleMoment;
import org.mantice.tune.Articulation;
import org.mantice.tune.Barlines;
import org.mantice.tune.BassChordType;
import org.mantice.tune.BassEvent;
import org.mantice.tune.ChordKind;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.Key;
import org.mantice.tune.Loudness;
import org.mantice.tune.Measure;
import org.mantice.tune.MelodyEvent;
import org.mantice.tune.Meter;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.NoteName;
import org.mantice.tune.Pitch;
import org.mantice.tune.PlacedChord;
import org.mantice.tune.Step;
import org.mantice.tune.Tempo;
import org.mantice.tune.Tune;
import org.mantice.tune.WrittenPlace;

/**
 * A played tune from a line of chord symbols, one long melody note a measure. Chords of a measure share it evenly, or
 * stand at a place ({@code G@1/2}); {@code %} repeats no symbol; {@code (C} is a pickup of one beat. A written bass
 * ({@code bass}) is a line of signs of one step each: {@code C2} a note, {@code CM} a chord button, {@code -} silence.
 */
final class PlayedTune {
    private final Meter meter;
    private final Tempo tempo;
    private final List<Measure> written = new ArrayList<>();

    private PlayedTune(Meter meter, Tempo tempo) {
        this.meter = meter;
        this.tempo = tempo;
    }

    static Performance of(Meter meter, Tempo tempo, int passes, String chords) {
        PlayedTune made = new PlayedTune(meter, tempo);
        for (String measure : chords.split("\\|")) made.add(measure.trim(), List.of());
        return made.performance(passes);
    }

    /** With patterns that are asked for. */
    static Performance of(Meter meter, Tempo tempo, int passes, String chords, Accompaniment asked) {
        return asking(of(meter, tempo, passes, chords), asked);
    }

    /** The same with patterns that are asked for. */
    static Performance asking(Performance plain, Accompaniment asked) {
        return new Performance(
                plain.tune(),
                plain.settings().withLeftHand(asked),
                plain.passes(),
                plain.measures(),
                plain.treble(),
                plain.harmony(),
                plain.bass(),
                plain.endMicros());
    }

    /** Over a written bass staff: measures of signs, each a step long. */
    static Performance bass(Meter meter, Tempo tempo, int passes, MusicalTime step, String staff) {
        PlayedTune made = new PlayedTune(meter, tempo);
        for (String measure : staff.split("\\|")) {
            List<BassEvent> events = new ArrayList<>();
            String[] signs = measure.trim().split("\\s+");
            for (int i = 0; i < signs.length; i++)
                if (!signs[i].equals("-")) events.add(event(step.times(i), step, signs[i]));
            made.add("", events);
        }
        return made.performance(passes);
    }

    private static BassEvent event(MusicalTime offset, MusicalTime step, String sign) {
        NoteName note = note(sign);
        String rest = sign.substring(note.toString().length());
        Optional<BassChordType> letter = Arrays.stream(BassChordType.values())
                .filter(type -> type.letter().equals(rest))
                .findFirst();
        int octave = letter.isPresent() ? 3 : 2;
        return new BassEvent(offset, step, List.of(new Pitch(note, octave)), letter);
    }

    private void add(String chords, List<BassEvent> bass) {
        boolean pickup = chords.startsWith("(");
        MusicalTime length = pickup ? meter.beat() : meter.length();
        List<PlacedChord> placed = new ArrayList<>();
        String[] symbols = chords.replace("(", "").trim().split("\\s+");
        for (int i = 0; i < symbols.length; i++) {
            if (symbols[i].isEmpty() || symbols[i].equals("%")) continue;
            String[] parts = symbols[i].split("@");
            MusicalTime offset = length.times(i).dividedBy(symbols.length);
            if (parts.length > 1) {
                String[] fraction = parts[1].split("/");
                offset = MusicalTime.of(Long.parseLong(fraction[0]), Long.parseLong(fraction[1]));
            }
            placed.add(new PlacedChord(offset, chord(parts[0])));
        }
        MelodyEvent melody = MelodyEvent.note(MusicalTime.ZERO, length, Pitch.of(Step.C, 0, 5));
        written.add(new Measure(
                Integer.toString(written.size() + 1),
                length,
                meter,
                Key.C_MAJOR,
                pickup,
                List.of(melody),
                placed,
                bass,
                List.of(),
                Barlines.PLAIN));
    }

    static ChordSymbol chord(String symbol) {
        if (symbol.equals("N.C.")) return ChordSymbol.of(new NoteName(Step.C, 0), ChordKind.NONE);
        NoteName root = note(symbol);
        String rest = symbol.substring(root.toString().length());
        String[] parts = rest.split("/");
        ChordKind kind = Arrays.stream(ChordKind.values())
                .filter(one -> one.suffix().equals(parts[0]))
                .min(Comparator.naturalOrder())
                .orElseThrow(() -> new IllegalArgumentException("chord is " + symbol));
        Optional<NoteName> bass = parts.length > 1 ? Optional.of(note(parts[1])) : Optional.empty();
        return new ChordSymbol(root, kind, List.of(), bass, parts[0]);
    }

    private static NoteName note(String text) {
        int alter = 0;
        int at = 1;
        while (at < text.length() && (text.charAt(at) == '#' || text.charAt(at) == 'b'))
            alter += text.charAt(at++) == '#' ? 1 : -1;
        return new NoteName(Step.valueOf(text.substring(0, 1)), alter);
    }

    private Performance performance(int passes) {
        Tune tune = new Tune("", Optional.empty(), written);
        List<Pass> played = new ArrayList<>();
        List<PlayedMeasure> measures = new ArrayList<>();
        List<TrebleMoment> treble = new ArrayList<>();
        List<HarmonySpan> harmony = new ArrayList<>();
        List<BassMoment> bass = new ArrayList<>();
        MusicalTime now = MusicalTime.ZERO;
        for (int pass = 1; pass <= passes; pass++) {
            Optional<ChordSymbol> chord = Optional.empty();
            played.add(new Pass(pass, pass, measures.size(), measures.size() + written.size() - 1));
            for (int w = 0; w < written.size(); w++) {
                Measure measure = written.get(w);
                int index = measures.size();
                measures.add(new PlayedMeasure(index, pass, w, pass, now, measure.length(), micros(now)));
                treble.add(moment(treble.size(), index, w, now, measure.length()));
                MusicalTime from = MusicalTime.ZERO;
                for (PlacedChord next : measure.chords()) {
                    if (next.offset().isPositive())
                        harmony.add(span(harmony.size(), index, w, now, from, next.offset(), chord));
                    from = next.offset();
                    chord = Optional.of(next.symbol());
                }
                harmony.add(span(harmony.size(), index, w, now, from, measure.length(), chord));
                for (BassEvent event : measure.bass()) bass.add(bassMoment(bass.size(), index, w, now, event));
                now = now.plus(measure.length());
            }
        }
        Settings settings =
                new Settings(tempo, false, passes, false, Loudness.MF, true, 0, ChordsPlayed.USUAL, Accompaniment.NONE);
        return new Performance(tune, settings, played, measures, treble, harmony, bass, micros(now));
    }

    private TrebleMoment moment(int index, int measure, int writtenMeasure, MusicalTime now, MusicalTime length) {
        return new TrebleMoment(
                index,
                measure,
                new WrittenPlace(writtenMeasure, MusicalTime.ZERO),
                0,
                now,
                length,
                micros(now),
                micros(now.plus(length)),
                List.of(new PlayedNote(72, false, List.of())),
                EnumSet.noneOf(Articulation.class),
                false,
                false,
                false,
                false,
                Punctuation.NONE,
                400);
    }

    private HarmonySpan span(
            int index,
            int measure,
            int w,
            MusicalTime now,
            MusicalTime from,
            MusicalTime to,
            Optional<ChordSymbol> chord) {
        return new HarmonySpan(
                index,
                measure,
                new WrittenPlace(w, from),
                now.plus(from),
                now.plus(to),
                micros(now.plus(from)),
                micros(now.plus(to)),
                chord);
    }

    private BassMoment bassMoment(int index, int measure, int w, MusicalTime now, BassEvent event) {
        MusicalTime onset = now.plus(event.offset());
        return new BassMoment(
                index,
                measure,
                new WrittenPlace(w, event.offset()),
                onset,
                event.duration(),
                micros(onset),
                micros(onset.plus(event.duration())),
                event.pitches(),
                event.chord(),
                event.marks());
    }

    private long micros(MusicalTime time) {
        return time.times(tempo.microsPerWholeNote()).countOf(MusicalTime.of(1, 1));
    }
}
