package org.mantice.bench;

import java.util.Random;
import java.util.StringJoiner;
import org.mantice.tune.Tune;
import org.mantice.tune.Tunes;

/** An invented reel of so many measures in 4/4: quarters and eighths, a double note or a rest now and then. */
final class DanceTune {
    private static final String[] SCALE = {"D4", "E4", "F#4", "G4", "A4", "B4", "C5", "D5", "E5", "F#5", "G5", "A5"};
    private static final String[] CHORDS = {"G", "C", "D7", "Em", "Am", "D", "A7", "Bm", "G/B", "F#dim"};

    private final Random random;
    private int step = 3;

    private DanceTune(long seed) {
        random = new Random(seed);
    }

    static Tune of(int measures, long seed) {
        DanceTune tune = new DanceTune(seed);
        StringJoiner text = new StringJoiner(" | ");
        for (int measure = 0; measure < measures; measure++)
            text.add((measure % 8 == 0 && measure > 0 ? "@double " : "") + tune.measure());
        return Tunes.in("4/4")
                .title("The Reel of the Long Table")
                .key(1)
                .melody(text.toString())
                .tune();
    }

    private String measure() {
        StringJoiner events = new StringJoiner(", ");
        for (int beat = 0; beat < 4; beat++) {
            String chord = beat == 0 || beat == 2 && random.nextInt(3) == 0
                    ? "\"" + CHORDS[random.nextInt(CHORDS.length)] + "\" "
                    : "";
            if (random.nextInt(5) < 3) {
                events.add(chord + note() + " e");
                events.add(note() + " e");
            } else events.add(chord + (random.nextInt(12) == 0 ? "R" : note()) + " q");
        }
        return events.toString();
    }

    private String note() {
        step = Math.max(0, Math.min(SCALE.length - 1, step + random.nextInt(5) - 2));
        return random.nextInt(15) == 0 && step >= 2 ? SCALE[step - 2] + "+" + SCALE[step] : SCALE[step];
    }
}
