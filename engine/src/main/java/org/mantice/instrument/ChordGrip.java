package org.mantice.instrument;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Buttons found for a chord, with what ranks them. Sets of pitch classes are bits of an int.
 *
 * @param bass the button of the bass note
 * @param chord the buttons of the chord beats, in button order, without the bass button
 * @param rank place among the usual recipes, or {@link #SEARCHED}, or that place after {@link #CHANGED}
 * @param isUsual whether players take it of their own accord, not for want of another
 * @param bassGrade 0 the written bass, 1 the root instead, 2 its perfect fifth, 3 a third, 4 another tone, 5 none
 * @param awayFromHome for what players usually take without a slash, {@code away}; else 0
 * @param away columns between its buttons and the chord's own column, added up
 * @param reachSquared the largest distance between two buttons, squared
 */
record ChordGrip(
        Optional<BassButton> bass,
        List<BassButton> chord,
        int sounding,
        int missing,
        int leftOut,
        int foreign,
        int rank,
        boolean isUsual,
        int bassGrade,
        int awayFromHome,
        int away,
        long reachSquared) {
    static final int SEARCHED = 100;
    /** From here on the recipes of a plain kind for a chord that degrees change; they have no precedence. */
    static final int CHANGED = SEARCHED + 1;

    /** Best first; the order that {@link ChordButtons} states. */
    static final Comparator<ChordGrip> ORDER = Comparator.comparing((ChordGrip grip) -> grip.bassGrade > 0)
            .thenComparing(grip -> !(grip.isUsual && grip.missing == 0))
            .thenComparingInt(grip -> Integer.bitCount(grip.missing))
            .thenComparingInt(ChordGrip::bassGrade)
            .thenComparingInt(grip -> Math.min(grip.rank, SEARCHED))
            .thenComparingInt(grip -> Integer.bitCount(grip.foreign))
            .thenComparingInt(ChordGrip::size)
            .thenComparingInt(ChordGrip::awayFromHome)
            .thenComparingLong(ChordGrip::reachSquared)
            .thenComparingInt(ChordGrip::bassNotesInChord)
            .thenComparingInt(grip -> Integer.bitCount(grip.leftOut))
            .thenComparingInt(ChordGrip::away)
            .thenComparing(ChordGrip::buttons, ChordGrip::compare);

    /** The most that are kept of grips that differ in the place of their buttons alone. */
    private static final int MOST_ALIKE = 4;

    int size() {
        return chord.size() + (bass.isPresent() ? 1 : 0);
    }

    /** The bass, then the chord. */
    List<BassButton> buttons() {
        List<BassButton> all = new ArrayList<>(3);
        bass.ifPresent(all::add);
        all.addAll(chord);
        return all;
    }

    private int bassNotesInChord() {
        int count = 0;
        for (BassButton button : chord) if (!button.row().isChord()) count++;
        return count;
    }

    private static int compare(List<BassButton> one, List<BassButton> other) {
        for (int i = 0; i < Math.min(one.size(), other.size()); i++)
            if (!one.get(i).equals(other.get(i))) return one.get(i).compareTo(other.get(i));
        return Integer.compare(one.size(), other.size());
    }

    /**
     * The first ones of a list in order that none before them beats; if the usual grip is not among them, it takes the
     * last place.
     */
    static List<ChordGrip> unbeaten(List<ChordGrip> inOrder, int most) {
        List<ChordGrip> kept = new ArrayList<>();
        for (ChordGrip grip : inOrder) {
            if (kept.size() == most) break;
            if (kept.stream().noneMatch(before -> before.beats(grip))
                    && kept.stream().filter(before -> before.isLike(grip)).count() < MOST_ALIKE) kept.add(grip);
        }
        if (kept.stream().noneMatch(ChordGrip::isFirstRecipe))
            inOrder.stream().filter(ChordGrip::isFirstRecipe).findFirst().ifPresent(usual -> {
                if (kept.size() == most) kept.remove(most - 1);
                kept.add(usual);
            });
        return kept;
    }

    private boolean isFirstRecipe() {
        return rank == 0 || rank == CHANGED;
    }

    private boolean isLike(ChordGrip other) {
        return rank == other.rank
                && bassGrade == other.bassGrade
                && sounding == other.sounding
                && size() == other.size();
    }

    /** Whether it is the same again, or nowhere worse and somewhere better. */
    private boolean beats(ChordGrip other) {
        if (bass.equals(other.bass) && chord.equals(other.chord)) return true;
        int moreMissing = Integer.bitCount(other.missing) - Integer.bitCount(missing);
        int moreLeftOut = Integer.bitCount(other.leftOut) - Integer.bitCount(leftOut);
        int moreForeign = Integer.bitCount(other.foreign) - Integer.bitCount(foreign);
        int moreButtons = other.size() - size();
        return moreMissing >= 0
                && moreLeftOut >= 0
                && moreForeign >= 0
                && moreButtons >= 0
                && moreMissing + moreLeftOut + moreForeign + moreButtons > 0;
    }
}
