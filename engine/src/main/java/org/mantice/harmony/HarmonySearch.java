package org.mantice.harmony;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.mantice.tune.WrittenPlace;

/**
 * Finds the cheapest sequence of chords, one a slot, by dynamic programming over slots (Viterbi 1967; Bellman 1957): time
 * slots × chords², memory slots × chords.
 */
final class HarmonySearch {
    /**
     * For a beat with another chord than the same passage had before: an estimate, high enough that what follows the
     * passage seldom changes its chords. With earlier weights 500 to 4,000 moved the agreement on a part of the training
     * tunes by less than 0.2 points.
     */
    static final long UNLIKE = 4_000;

    private final List<Slot> slots;
    private final List<Vocabulary> vocabularies;
    private final long[][] alone;

    HarmonySearch(List<Slot> slots) {
        this.slots = slots;
        this.vocabularies =
                slots.stream().map(slot -> Vocabulary.of(slot.key().mode())).toList();
        this.alone = new long[slots.size()][];
        for (int i = 0; i < alone.length; i++) {
            SlotCosts costs = new SlotCosts(slots.get(i));
            alone[i] =
                    vocabularies.get(i).chords().stream().mapToLong(costs::sum).toArray();
        }
    }

    /** @param earlier for each slot the chord that it should have again; an empty list for none at all */
    List<Harmony> best(List<Optional<Harmony>> earlier) {
        int[][] from = new int[slots.size()][];
        long[] costs = new long[0];
        for (int i = 0; i < slots.size(); i++) {
            List<Harmony> chords = vocabularies.get(i).chords();
            long[] next = new long[chords.size()];
            from[i] = new int[chords.size()];
            for (int to = 0; to < next.length; to++) {
                from[i][to] = cheapestBefore(i, chords.get(to), costs);
                long before = i == 0 ? 0 : costs[from[i][to]];
                long step = join(i, i == 0 ? Optional.empty() : Optional.of(before(i, from[i][to])), chords.get(to));
                next[to] = before + step + alone[i][to] + unlike(earlier, i, chords.get(to));
            }
            costs = next;
        }
        return backwards(from, costs);
    }

    private Harmony before(int slot, int chord) {
        return vocabularies.get(slot - 1).chords().get(chord);
    }

    private int cheapestBefore(int slot, Harmony to, long[] costs) {
        int best = 0;
        long least = Long.MAX_VALUE;
        for (int i = 0; i < costs.length; i++) {
            long cost = costs[i] + join(slot, Optional.of(before(slot, i)), to);
            if (cost < least) {
                least = cost;
                best = i;
            }
        }
        return best;
    }

    private List<Harmony> backwards(int[][] from, long[] costs) {
        List<Harmony> path = new ArrayList<>();
        int chord = 0;
        for (int i = 1; i < costs.length; i++) if (costs[i] < costs[chord]) chord = i;
        for (int i = slots.size() - 1; i >= 0; i--) {
            path.add(vocabularies.get(i).chords().get(chord));
            chord = from[i][chord];
        }
        Collections.reverse(path);
        return path;
    }

    /** What going from one chord to the next costs. */
    private long join(int slot, Optional<Harmony> from, Harmony to) {
        long sum = 0;
        for (long part : joinParts(slot, from, to)) sum = Math.addExact(sum, part);
        return sum;
    }

    /** For a beginning, a progression and a change. */
    private long[] joinParts(int index, Optional<Harmony> from, Harmony to) {
        Slot slot = slots.get(index);
        HarmonyTable table = vocabularies.get(index).table();
        boolean anew = from.isEmpty() || !slots.get(index - 1).key().equals(slot.key());
        if (anew) return new long[] {table.first(to.role()), 0, 0};
        if (from.get().equals(to)) return new long[3];
        return new long[] {0, table.move(slot.isInside(), from.get().role(), to.role()), table.change(slot)};
    }

    private static long unlike(List<Optional<Harmony>> earlier, int slot, Harmony chord) {
        if (earlier.isEmpty() || earlier.get(slot).isEmpty()) return 0;
        return earlier.get(slot).get().equals(chord) ? 0 : UNLIKE;
    }

    /** The chords where they change and where a section begins, with the facts of all their slots. */
    List<ProposedChord> explained(List<Harmony> path, List<Optional<Harmony>> earlier) {
        List<ProposedChord> chords = new ArrayList<>();
        Map<HarmonyReason, Long> facts = new EnumMap<>(HarmonyReason.class);
        int start = 0;
        for (int i = 0; i < slots.size(); i++) {
            addFacts(i, path, earlier, facts);
            boolean ends = i + 1 == slots.size()
                    || slots.get(i + 1).repeated()
                    || !slots.get(i + 1).key().equals(slots.get(i).key())
                    || !path.get(i + 1).equals(path.get(i));
            if (!ends) continue;
            chords.add(chord(slots.get(start), told(path, start, i), facts));
            facts.clear();
            start = i + 1;
        }
        return chords;
    }

    /** The chord of some slots, with its seventh where the next one lies a fifth below. */
    private Harmony told(List<Harmony> path, int from, int to) {
        if (to + 1 == path.size()) return path.get(from);
        return path.get(from).leadingTo(root(path, from) - root(path, to + 1));
    }

    private int root(List<Harmony> path, int slot) {
        return slots.get(slot).key().tonic().pitchClass() + path.get(slot).semitones();
    }

    private void addFacts(
            int slot, List<Harmony> path, List<Optional<Harmony>> earlier, Map<HarmonyReason, Long> facts) {
        Harmony chord = path.get(slot);
        new SlotCosts(slots.get(slot))
                .facts(chord)
                .forEach((reason, cost) -> facts.merge(reason, cost, Math::addExact));
        long[] join = joinParts(slot, slot == 0 ? Optional.empty() : Optional.of(path.get(slot - 1)), chord);
        facts.merge(HarmonyReason.BEGINNING, join[0], Math::addExact);
        facts.merge(HarmonyReason.PROGRESSION, join[1], Math::addExact);
        facts.merge(HarmonyReason.CHANGE, join[2], Math::addExact);
        facts.merge(HarmonyReason.ALIKE, unlike(earlier, slot, chord), Math::addExact);
    }

    private static ProposedChord chord(Slot slot, Harmony chord, Map<HarmonyReason, Long> facts) {
        List<HarmonyFact> told = facts.entrySet().stream()
                .filter(fact -> fact.getValue() != 0)
                .map(fact -> new HarmonyFact(fact.getKey(), fact.getValue()))
                .toList();
        WrittenPlace place = new WrittenPlace(slot.measure(), slot.offset());
        return new ProposedChord(place, chord.symbol(slot.key().tonic()), chord.degree(), told);
    }
}
