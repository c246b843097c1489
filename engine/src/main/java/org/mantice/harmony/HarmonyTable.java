package org.mantice.harmony;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Costs in millipoints, read from a text beside this class that tells what they are and where they come from. They are
 * estimates: weights of a conditional random field (Lafferty, McCallum and Pereira 2001) trained with a margin of one
 * point a wrong beat (Gimpel and Smith 2010), a cost of 1,000 being one natural logarithm of a chance; fitted on folk
 * tunes with chords (by L-BFGS, half the squares of the weights times 2 as a penalty, times 4 in minor keys), none of
 * them among those that the proposal is measured on.
 */
final class HarmonyTable {
    static final HarmonyTable MAJOR = read("major.txt");
    static final HarmonyTable MINOR = read("minor.txt");

    private final List<String> chords = new ArrayList<>();
    private final List<String> roles = new ArrayList<>();
    private final Map<String, long[]> numbers = new HashMap<>();

    private HarmonyTable() {}

    private static HarmonyTable read(String name) {
        HarmonyTable table = new HarmonyTable();
        try (InputStream in = HarmonyTable.class.getResourceAsStream(name);
                BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) table.take(line);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return table;
    }

    private void take(String line) {
        if (line.isBlank() || line.startsWith("#")) return;
        String[] words = line.trim().split("\\s+");
        if (words[0].equals("chord")) {
            chords.add(
                    words[1] + " " + words[2] + " " + words[3] + " " + words[1] + (words.length > 4 ? " applied" : ""));
            roles.add(words[1]);
            return;
        }
        long[] row = new long[words.length - 1];
        for (int i = 0; i < row.length; i++) row[i] = Long.parseLong(words[i + 1]);
        numbers.merge(words[0], row, HarmonyTable::joined);
    }

    private static long[] joined(long[] before, long[] after) {
        long[] both = Arrays.copyOf(before, before.length + after.length);
        System.arraycopy(after, 0, both, before.length, after.length);
        return both;
    }

    /** Each as degree, semitones, kind, role and, for dominants, the word "applied". */
    List<String> chords() {
        return List.copyOf(chords);
    }

    int role(String degree) {
        int role = roles.indexOf(degree);
        if (role < 0) throw new IllegalArgumentException("degree is " + degree + "; allowed: " + roles);
        return role;
    }

    private long number(String section, int index) {
        return Objects.requireNonNull(numbers.get(section))[index];
    }

    long own(int role) {
        return number("own", role);
    }

    long first(int role) {
        return number("first", role);
    }

    /** From one chord to another: two tables, one for the beginning of a measure, one for inside. */
    long move(boolean inside, int from, int to) {
        return number(inside ? "move-inside" : "move-at-start", from * roles.size() + to);
    }

    long change(Slot slot) {
        return number("change", slot.beatPlace())
                + number("change-cadence", slot.cadence().ordinal())
                + (slot.begins() ? 0 : number("change-held", 0));
    }

    long tone(ToneUse use, int accent) {
        return number("tone", 3 * use.ordinal() + accent);
    }

    /** A note with a chord, by the note's accent, 0 to 2, and its semitones above the tonic. */
    long degree(int accent, int aboveTonic, int role) {
        return number("degree", (12 * accent + aboveTonic) * roles.size() + role);
    }

    long leap(boolean within) {
        return number("leap", within ? 0 : 1);
    }

    long lowest(int noteOfChord) {
        return number("lowest", noteOfChord == 0 ? 0 : noteOfChord > 0 ? 1 : 2);
    }

    long restOfMeasure(int noteOfChord) {
        return number("rest-of-measure", noteOfChord < 0 ? 4 : noteOfChord);
    }

    long restOfHalf(int noteOfChord) {
        return number("rest-of-half", noteOfChord < 0 ? 4 : noteOfChord);
    }

    /** A note around the slot with a chord, by the note's semitones above the tonic. */
    long around(NotesAround.Place place, int aboveTonic, int role) {
        return number("around", (12 * place.ordinal() + aboveTonic) * roles.size() + role);
    }

    /** A note of the beat before or after, by which note of the chord it is; 0 for other places. */
    long beside(NotesAround.Place place, int noteOfChord) {
        int part = noteOfChord < 0 ? 4 : noteOfChord;
        return switch (place) {
            case BEAT_BEFORE -> number("beat-before", part);
            case BEAT_AFTER -> number("beat-after", part);
            case MEASURE_BEFORE, MEASURE, MEASURE_AFTER, TUNE -> 0;
        };
    }

    long cadence(Slot.Cadence place, int role) {
        return number("cadence", place.ordinal() * roles.size() + role);
    }

    long strain(int place, int role) {
        return number("strain", place * roles.size() + role);
    }
}
