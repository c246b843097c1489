package org.mantice.layer.lefthand;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.mantice.instrument.BassButton;
import org.mantice.instrument.BassRow;
import org.mantice.instrument.BassSound;
import org.mantice.performance.HarmonySpan;
import org.mantice.performance.Performance;
import org.mantice.plan.LeftHandPlan;
import org.mantice.tune.BassChordType;
import org.mantice.tune.BassMarks;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.NoteName;
import org.mantice.tune.Pitch;
import org.mantice.tune.Step;

/** How a button is written: note, letter and marks. */
final class BassSigns {
    /** From a chord's root on the line of fifths to the middle of its tones: from minor third (-3) to major third (4). */
    private static final int ABOVE_ROOT = 1;
    /** From a major key's tonic to the middle of its scale, F to B in C. */
    private static final int ABOVE_TONIC = 2;

    private static final int SHARPEST = new NoteName(Step.B, 1).fifths();
    private static final int FLATTEST = new NoteName(Step.F, -1).fifths();

    private final Performance performance;
    private final BassSound sound;
    private final Map<Integer, List<HarmonySpan>> harmony = new HashMap<>();

    BassSigns(Performance performance, BassSound sound) {
        this.performance = performance;
        this.sound = sound;
        for (HarmonySpan span : performance.harmony()) harmony.merge(span.measure(), List.of(span), BassSigns::joined);
    }

    private static List<HarmonySpan> joined(List<HarmonySpan> before, List<HarmonySpan> more) {
        return Stream.concat(before.stream(), more.stream()).toList();
    }

    /** The button's own note in the layout's octave, spelled by the chord that holds there, else by the key. */
    Pitch pitch(BassButton button, LeftHandPlan.Event press) {
        int lowest = button.row().isChord() ? sound.lowestChordMidi() : sound.lowestBassMidi();
        int pitchClass = button.noteName().pitchClass();
        int midi = lowest + Math.floorMod(pitchClass - lowest, 12);
        NoteName name = spelled(pitchClass, middle(press));
        int octave = Math.floorDiv(midi - name.step().semitone() - name.alter(), 12) - 1;
        return new Pitch(name, octave);
    }

    /** The place on the line of fifths near which the notes at a press are spelled. */
    private int middle(LeftHandPlan.Event press) {
        Optional<ChordSymbol> chord = chordAt(press.measure(), press.onset());
        if (chord.isPresent() && !chord.get().isSilent())
            return chord.get().root().fifths() + ABOVE_ROOT;
        int written = performance.measures().get(press.measure()).written();
        return performance.tune().measure(written).key().fifths() + ABOVE_TONIC;
    }

    private Optional<ChordSymbol> chordAt(int measure, MusicalTime onset) {
        Optional<ChordSymbol> chord = Optional.empty();
        for (HarmonySpan span : harmony.getOrDefault(measure, List.of()))
            if (!onset.isBefore(span.start())) chord = span.chord();
        return chord;
    }

    /** The nearest name with at most one sharp or flat; of two equally near the flat one. */
    private static NoteName spelled(int pitchClass, int middle) {
        int best = Integer.MAX_VALUE;
        for (int fifths = FLATTEST; fifths <= SHARPEST; fifths++)
            if (Math.floorMod(7 * fifths, 12) == pitchClass
                    && (best == Integer.MAX_VALUE || Math.abs(fifths - middle) < Math.abs(best - middle)))
                best = fifths;
        return NoteName.ofFifths(best);
    }

    static Optional<BassChordType> letter(BassButton button) {
        return switch (button.row()) {
            case COUNTERBASS, BASS -> Optional.empty();
            case MAJOR -> Optional.of(BassChordType.MAJOR);
            case MINOR -> Optional.of(BassChordType.MINOR);
            case SEVENTH -> Optional.of(BassChordType.SEVENTH);
            case DIMINISHED -> Optional.of(BassChordType.DIMINISHED);
        };
    }

    static BassMarks marks(BassButton button, int finger) {
        return new BassMarks(button.row() == BassRow.COUNTERBASS, OptionalInt.of(finger));
    }
}
