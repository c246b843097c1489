package org.mantice.reading.midi;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.mantice.tune.ChordKind;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.Key;
import org.mantice.tune.Mode;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.NoteName;

/**
 * Recognises chord symbols in the notes of an accompaniment. Bars are parted into stretches of beats with one chord each;
 * the cheapest parting of the whole tune is found exactly by dynamic programming. A stretch pays for notes outside its
 * chord, tones of the chord that are missing, a bass other than the root, a beginning inside the bar and another chord
 * than before ({@link ChordTemplate}; all prices are estimates). Time is linear in notes and beats.
 */
public final class ChordFinder {
    private static final int LONGEST = 16;
    private static final long STRETCH_PRICE = 300;
    private static final long CHANGE_PRICE = 400;
    private static final long INSIDE_PRICE = 400;
    private static final long HALF_PRICE = 100;
    private static final List<ChordTemplate> CHORDS = ChordTemplate.all();

    private final Bars bars;
    private final Grid grid;
    private final Key key;
    private final int scale;
    private final int beats;
    private final long[][] weights;
    private final int[] lowest;

    private ChordFinder(Bars bars, Grid grid, Key key, int beats) {
        this.bars = bars;
        this.grid = grid;
        this.key = key;
        this.scale = scale(key);
        this.beats = beats;
        this.weights = new long[beats][12];
        this.lowest = new int[beats];
        Arrays.fill(lowest, 128);
    }

    /**
     * Chords in order, no two equal neighbours; "no chord" where a whole bar or more is silent between them.
     *
     * @param notes of the accompaniment
     * @param division ticks a quarter note
     * @param key names roots
     */
    public static List<FoundChord> find(Bars bars, Grid grid, List<MidiNote> notes, int division, Key key) {
        List<Sounding> sounding =
                notes.stream().map(note -> sounding(note, grid, division)).toList();
        long end = sounding.stream().mapToLong(Sounding::end).max().orElse(0);
        int beats = 0;
        while (beats < grid.beats().size()
                && Grid.fineOf(grid.beats().get(beats).start()) < end) beats++;
        if (beats == 0) return List.of();
        ChordFinder finder = new ChordFinder(bars, grid, key, beats);
        sounding.forEach(finder::add);
        return finder.named(finder.best());
    }

    private static Sounding sounding(MidiNote note, Grid grid, int division) {
        long start = Grid.fineOf(grid.onsetOfOthers(Grid.moment(note.start(), division)));
        long end = grid.written(Grid.moment(note.end(), division));
        return new Sounding(note.pitch(), start, Math.max(end, start + Grid.FINE / 16));
    }

    private void add(Sounding note) {
        for (int i = beatAt(note.start()); i < beats; i++) {
            Beat beat = grid.beats().get(i);
            long start = Grid.fineOf(beat.start());
            long length = Grid.fineOf(beat.length());
            if (start >= note.end()) return;
            long overlap = Math.min(note.end(), start + length) - Math.max(note.start(), start);
            if (note.start() < start && overlap * 8 < length) continue;
            weights[i][note.pitch() % 12] += overlap;
            lowest[i] = Math.min(lowest[i], note.pitch());
        }
    }

    private int beatAt(long moment) {
        int low = 0;
        int high = beats - 1;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (Grid.fineOf(grid.beats().get(middle).start()) <= moment) low = middle;
            else high = middle - 1;
        }
        return low;
    }

    private static int scale(Key key) {
        int scale = 0;
        for (int fifths = key.fifths() - 1; fifths <= key.fifths() + 5; fifths++)
            scale |= 1 << NoteName.ofFifths(fifths).pitchClass();
        if (key.mode() == Mode.MINOR)
            scale |= 1 << NoteName.ofFifths(key.fifths() + 8).pitchClass();
        return scale;
    }

    /** The chord of every beat, as an index. */
    private int[] best() {
        int count = CHORDS.size();
        long[][] cost = new long[beats + 1][];
        int[][] back = new int[beats + 1][count];
        cost[0] = new long[count];
        for (int end = 1; end <= beats; end++) {
            cost[end] = new long[count];
            Arrays.fill(cost[end], Long.MAX_VALUE);
            long[] pooled = new long[12];
            int bar = grid.beats().get(end - 1).bar();
            for (int start = end - 1; start >= Math.max(0, end - LONGEST); start--) {
                if (grid.beats().get(start).bar() != bar) break;
                for (int i = 0; i < 12; i++) pooled[i] += weights[start][i];
                extend(cost, back, pooled, start, end);
            }
            if (end > LONGEST) cost[end - LONGEST - 1] = new long[0];
        }
        int[] chords = new int[beats];
        int chord = cheapest(cost[beats]);
        for (int end = beats; end > 0; ) {
            int from = back[end][chord];
            int start = end - from / count;
            for (int i = start; i < end; i++) chords[i] = chord;
            chord = from % count;
            end = start;
        }
        return chords;
    }

    private void extend(long[][] cost, int[][] back, long[] pooled, int start, int end) {
        int count = CHORDS.size();
        int before = cheapest(cost[start]);
        long total = 0;
        for (long weight : pooled) total += weight;
        int bass = bass(start, end);
        long begin = STRETCH_PRICE + placePrice(start);
        for (int chord = 0; chord < count; chord++) {
            long stay = cost[start][chord];
            long change = cost[start][before] + (start == 0 ? 0 : CHANGE_PRICE);
            long sum = Math.min(stay, change) + begin;
            if (sum >= cost[end][chord]) continue;
            if (total > 0) sum += CHORDS.get(chord).price(pooled, total, end - start, bass, scale);
            if (sum >= cost[end][chord]) continue;
            cost[end][chord] = sum;
            back[end][chord] = (end - start) * count + (stay <= change ? chord : before);
        }
    }

    private static int cheapest(long[] cost) {
        int best = 0;
        for (int i = 1; i < cost.length; i++) if (cost[i] < cost[best]) best = i;
        return best;
    }

    private int bass(int start, int end) {
        for (int i = start; i < end; i++) if (lowest[i] < 128) return lowest[i] % 12;
        return 0;
    }

    private long placePrice(int beat) {
        Beat at = grid.beats().get(beat);
        Bar bar = bars.bars().get(at.bar());
        MusicalTime into = at.start().minus(bar.start());
        if (into.isZero()) return 0;
        return into.times(2).equals(bar.length()) ? HALF_PRICE : INSIDE_PRICE;
    }

    private List<FoundChord> named(int[] chords) {
        boolean[] silent = silentBars();
        List<FoundChord> found = new ArrayList<>();
        int last = -2;
        for (int i = 0; i < beats; i++) {
            boolean quiet = silent[grid.beats().get(i).bar()];
            boolean begun = last != -2;
            int chord = quiet ? -1 : chords[i];
            if (chord == last || !begun && lowest[i] == 128) continue;
            ChordSymbol symbol = quiet ? ChordSymbol.of(NoteName.ofFifths(0), ChordKind.NONE) : symbol(chords, i);
            found.add(new FoundChord(grid.beats().get(i).start(), symbol));
            last = chord;
        }
        return found;
    }

    private boolean[] silentBars() {
        boolean[] silent = new boolean[bars.bars().size()];
        Arrays.fill(silent, true);
        for (int i = 0; i < beats; i++)
            if (lowest[i] < 128) silent[grid.beats().get(i).bar()] = false;
        return silent;
    }

    /** With a slash where another tone of the chord is the bass as long as the chord lasts. */
    private ChordSymbol symbol(int[] chords, int from) {
        ChordTemplate chord = CHORDS.get(chords[from]);
        int bass = -1;
        boolean steady = true;
        for (int i = from; i < beats && chords[i] == chords[from]; i++) {
            if (lowest[i] == 128) continue;
            if (bass == -1) bass = lowest[i] % 12;
            steady &= bass == lowest[i] % 12;
        }
        boolean slash = steady && bass != -1 && bass != chord.root() && (chord.tones() >> bass & 1) == 1;
        NoteName root = Spelling.name(chord.root(), key);
        return new ChordSymbol(
                root, chord.kind(), List.of(), slash ? Optional.of(Spelling.name(bass, key)) : Optional.empty(), "");
    }
}
