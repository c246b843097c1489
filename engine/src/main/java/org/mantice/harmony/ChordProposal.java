package org.mantice.harmony;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.mantice.tune.Measure;
import org.mantice.tune.PlacedChord;
import org.mantice.tune.Tune;

/**
 * Chords for a melody: those of the lowest cost of all sequences that a chord for every beat can make, chosen from the
 * key's triads, its dominants and those of its degrees, and its common borrowed chords.
 *
 * <p>The search is exact dynamic programming over beats, in time linear in their number. A dominant takes its seventh
 * afterwards, where the next chord's root lies a fifth below; that costs nothing. Chords repeated at the same
 * passage come from a second search: it pays for each beat that differs from what the first one gave the first such
 * passage. The weights are estimates, fitted as {@link HarmonyTable} tells. A pickup at the beginning gets no chord. A
 * major key, or one of no mode, is read as its relative minor where the melody ends on that key's note.
 *
 * <p>Same tune, same proposal: of equal costs the chord wins that stands first in the key's list.
 *
 * @param chords in the order of the written music; empty for a tune without notes
 */
public record ChordProposal(List<ProposedChord> chords) {
    public ChordProposal {
        chords = List.copyOf(chords);
    }

    /** Chord symbols that the tune already has are not looked at. */
    public static ChordProposal of(Tune tune) {
        if (!tune.hasNotes()) return new ChordProposal(List.of());
        List<Slot> slots = new SlotGrid(tune).slots();
        HarmonySearch search = new HarmonySearch(slots);
        List<Optional<Harmony>> earlier = Passages.earlier(tune, slots, search.best(List.of()));
        return new ChordProposal(search.explained(search.best(earlier), earlier));
    }

    /** The sum of the chords' costs; only differences between proposals for one tune mean something. */
    public long costMillipoints() {
        long sum = 0;
        for (ProposedChord chord : chords) sum = Math.addExact(sum, chord.costMillipoints());
        return sum;
    }

    /**
     * The tune with these chords, marked as proposed, in place of those it had.
     *
     * @throws IllegalArgumentException if a chord lies behind the last measure
     */
    public Tune in(Tune tune) {
        List<List<PlacedChord>> placed = new ArrayList<>();
        for (int i = 0; i < tune.measures().size(); i++) placed.add(new ArrayList<>());
        for (ProposedChord chord : chords) {
            if (chord.place().measure() >= placed.size())
                throw new IllegalArgumentException(
                        "a chord stands in measure " + chord.place().measure() + "; allowed: below " + placed.size());
            placed.get(chord.place().measure())
                    .add(new PlacedChord(chord.place().offset(), chord.symbol(), true));
        }
        List<Measure> measures = new ArrayList<>();
        for (int i = 0; i < placed.size(); i++) measures.add(tune.measure(i).withChords(placed.get(i)));
        return new Tune(tune.title(), tune.dance(), measures);
    }
}
