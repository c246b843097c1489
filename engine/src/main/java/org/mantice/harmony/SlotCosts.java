package org.mantice.harmony;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.mantice.tune.Key;

/** What a chord costs in a slot, whatever stands before and after it. */
final class SlotCosts {
    /** Semitones of a major scale. */
    private static final List<Integer> SCALE = List.of(0, 2, 4, 5, 7, 9, 11);

    private final Slot slot;
    private final HarmonyTable table;
    private final int tonic;

    SlotCosts(Slot slot) {
        this.slot = slot;
        this.table = Vocabulary.of(slot.key().mode()).table();
        this.tonic = slot.key().tonic().pitchClass();
    }

    /** The facts of a chord, those of cost 0 too. */
    Map<HarmonyReason, Long> facts(Harmony chord) {
        Map<HarmonyReason, Long> facts = new EnumMap<>(HarmonyReason.class);
        facts.put(HarmonyReason.KIND_OF_CHORD, table.own(chord.role()));
        facts.put(HarmonyReason.MELODY, melody(chord));
        facts.put(HarmonyReason.LEAPS, leaps(chord));
        facts.put(HarmonyReason.LOWEST_NOTE, lowest(chord));
        facts.put(HarmonyReason.REST_OF_MEASURE, rest(chord));
        facts.put(HarmonyReason.NOTES_AROUND, around(chord));
        facts.put(HarmonyReason.CADENCE, table.cadence(slot.cadence(), chord.role()));
        facts.put(HarmonyReason.STRAIN, table.strain(slot.strain(), chord.role()));
        return facts;
    }

    long sum(Harmony chord) {
        long sum = 0;
        for (long cost : facts(chord).values()) sum = Math.addExact(sum, cost);
        return sum;
    }

    private long melody(Harmony chord) {
        long sum = 0;
        for (int note = 0; note < 12; note++) {
            int above = Math.floorMod(note - tonic, 12);
            for (int accent = 0; accent < 3; accent++)
                for (boolean byStep : new boolean[] {false, true}) {
                    long permille = slot.melody().sounding(note, accent, byStep);
                    if (permille == 0) continue;
                    ToneUse use = ToneUse.of(chord.noteOf(above), isInKey(note), byStep);
                    long cost = table.tone(use, accent) + table.degree(accent, above, chord.role());
                    sum = Math.addExact(sum, Math.multiplyExact(permille, cost));
                }
        }
        return sum / 1000;
    }

    private boolean isInKey(int note) {
        Key key = slot.key();
        return SCALE.contains(Math.floorMod(note - 7 * key.fifths(), 12));
    }

    private long leaps(Harmony chord) {
        long sum = 0;
        for (SlotMelody.Leap leap : slot.melody().leaps())
            sum += table.leap(isIn(chord, leap.from()) && isIn(chord, leap.to()));
        return sum;
    }

    private boolean isIn(Harmony chord, int note) {
        return noteOf(chord, note) >= 0;
    }

    private int noteOf(Harmony chord, int note) {
        return chord.noteOf(Math.floorMod(note - tonic, 12));
    }

    private long lowest(Harmony chord) {
        long sum = 0;
        for (int note : slot.melody().lowestStruck()) sum += table.lowest(noteOf(chord, note));
        return sum;
    }

    private long around(Harmony chord) {
        long sum = 0;
        for (int note = 0; note < 12; note++) {
            int above = Math.floorMod(note - tonic, 12);
            int part = chord.noteOf(above);
            for (NotesAround.Place place : NotesAround.Place.values()) {
                long permille = slot.around().at(place, note);
                if (permille == 0) continue;
                long cost = table.around(place, above, chord.role()) + table.beside(place, part);
                sum = Math.addExact(sum, Math.multiplyExact(permille, cost));
            }
        }
        return sum / 1000;
    }

    private long rest(Harmony chord) {
        long sum = 0;
        for (int note = 0; note < 12; note++) {
            long half = slot.melody().restOfHalf(note);
            long measure = slot.melody().restOfMeasure(note);
            if (half == 0 && measure == 0) continue;
            int part = noteOf(chord, note);
            sum += half * table.restOfHalf(part) + measure * table.restOfMeasure(part);
        }
        return sum / 1000;
    }
}
