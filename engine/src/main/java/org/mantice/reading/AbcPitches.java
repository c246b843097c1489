package org.mantice.reading;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.mantice.reading.abc.AbcElement.Note;
import org.mantice.reading.abc.AbcKey;
import org.mantice.tune.ChordKind;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.Key;
import org.mantice.tune.Pitch;
import org.mantice.tune.Step;

/** From letters to sounding pitches: key, accidentals of the measure, octaves, transposition. */
final class AbcPitches {
    /** How far an accidental reaches up to the next bar line (ABC 2.1, section 11.3). */
    enum Reach {
        NOTE,
        OCTAVE,
        PITCH
    }

    private final Map<Step, Integer> alters = new EnumMap<>(Step.class);
    private final Map<String, Integer> inMeasure = new HashMap<>();
    private Key written = Key.C_MAJOR;
    private int octaves;
    private int semitones;
    private Reach reach = Reach.PITCH;

    /** @return whether there was a key in it */
    boolean take(AbcKey key) {
        key.signature().ifPresent(signature -> {
            written = signature;
            alters.clear();
            alters.putAll(key.alters());
        });
        return key.signature().isPresent();
    }

    void octaves(int number) {
        octaves = Math.max(-6, Math.min(6, number));
    }

    /** @param number -48 to 48 */
    void semitones(int number) {
        semitones = Math.max(-48, Math.min(48, number));
    }

    void reach(Reach other) {
        reach = other;
    }

    private Transposition transposition() {
        return Transposition.of(Transposition.diatonicOf(semitones), semitones, 0)
                .keeping(written);
    }

    Key key() {
        return transposition().of(written);
    }

    ChordSymbol sounding(ChordSymbol symbol) {
        if (semitones == 0 || symbol.kind() == ChordKind.NONE) return symbol;
        Transposition by = transposition();
        return new ChordSymbol(
                by.of(symbol.root()),
                symbol.kind(),
                symbol.degrees(),
                symbol.bass().map(by::of),
                symbol.text());
    }

    void startMeasure() {
        inMeasure.clear();
    }

    /** @param before the item before, whose tie carries its accidental over a bar line; empty if there is none */
    AbcItem.Tone tone(Note note, Optional<AbcItem> before) {
        int octave = note.octave() + octaves;
        int alter = alter(note, octave, before);
        Pitch plain = Pitch.of(note.step(), alter, octave);
        Pitch sounding = transposition().of(plain);
        boolean playable = sounding.midi() >= 0 && sounding.midi() <= 127;
        AbcItem.Tone tone =
                new AbcItem.Tone(note.step(), alter, octave, playable ? Optional.of(sounding) : Optional.empty());
        if (!playable) tone.findings.add(Finding.of(SkippedWhat.UNREADABLE_PITCH, plain.toString()));
        note.microtone().ifPresent(sign -> tone.findings.add(Finding.of(SkippedWhat.PITCH_ROUNDED, sign)));
        return tone;
    }

    private int alter(Note note, int octave, Optional<AbcItem> before) {
        String place = reach == Reach.OCTAVE
                ? note.step().name() + octave
                : note.step().name();
        if (note.microtone().isPresent())
            return remembered(place, rounded(note.microtone().get()));
        if (note.accidental().isPresent())
            return remembered(place, note.accidental().getAsInt());
        Integer known = inMeasure.get(place);
        if (known != null) return known;
        return before.stream()
                .flatMap(item -> item.tones.stream())
                .filter(tone -> tone.tie && tone.step == note.step() && tone.octave == octave)
                .map(tone -> tone.alter)
                .findFirst()
                .orElse(alters.getOrDefault(note.step(), 0));
    }

    private int remembered(String place, int alter) {
        if (reach != Reach.NOTE) inMeasure.put(place, alter);
        return alter;
    }

    /** As "^3/2" or "_/"; halves go up. */
    private static int rounded(String sign) {
        String[] parts = sign.substring(1).split("/", -1);
        BigDecimal count = number(parts[0], 1);
        BigDecimal unit = parts.length > 1 ? number(parts[1], 2) : BigDecimal.ONE;
        if (unit.signum() == 0) return 0;
        int size = count.divide(unit, 3, RoundingMode.HALF_UP)
                .setScale(0, RoundingMode.HALF_UP)
                .min(BigDecimal.valueOf(2))
                .intValue();
        return sign.startsWith("^") ? size : -size;
    }

    private static BigDecimal number(String digits, int otherwise) {
        return digits.isEmpty() ? BigDecimal.valueOf(otherwise) : new BigDecimal(digits);
    }
}
