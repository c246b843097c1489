package org.mantice.instrument;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.mantice.tune.ChordKind;
import org.mantice.tune.ChordSymbol;

/**
 * Which buttons of one bass side play a chord symbol.
 *
 * <p>What players usually take comes first (a seventh button for C7, C major over an A bass for Am7), with the
 * fall-backs for rows that the instrument lacks; then what a search over one and two buttons finds. Order: the right
 * bass note, usual and complete before all others, missing tones, what else sounds for the bass, for usual ones their
 * rank, foreign tones, bass notes used as chord tones, fifths left out, number of buttons, columns away from the
 * chord's own, reach of all buttons held together, buttons from the bellows outward and from the floor up.
 *
 * <p>A choice that is nowhere better than one before it and somewhere worse is dropped, so a longer list means real
 * alternatives: the same shape at the other end of the columns, a bass note as counterbass, fewer buttons against
 * fewer tones. A larger instrument, one with all the buttons of a smaller and more, never loses the written bass, and
 * at equal bass never misses more tones.
 */
public final class ChordButtons {
    /** The most choices that are kept for one symbol. */
    public static final int MOST_CHOICES = 8;

    /** The most that are kept of choices that differ in the place of their buttons alone. */
    private static final int MOST_ALIKE = 4;

    /** Columns between buttons of the chord, which one hand holds at once; an estimate. */
    private static final int CHORD_SPAN = 4;
    /** Columns between the bass button and any of the chord; wide enough for C bass with E minor; an estimate. */
    private static final int BASS_SPAN = 5;

    private final StradellaBass layout;
    private final List<BassButton> all;

    public ChordButtons(StradellaBass layout) {
        this.layout = layout;
        this.all = layout.allButtons();
    }

    /**
     * The choices for a symbol, best first: at least one, at most {@link #MOST_CHOICES}. "No chord" gives
     * {@link ButtonChoice#SILENT} alone; so does, with the tones missing and the reason, a chord that no buttons come
     * near, and any chord on an instrument without bass.
     */
    public List<ButtonChoice> choices(ChordSymbol symbol) {
        if (symbol.isSilent()) return List.of(ButtonChoice.SILENT);
        ChordTones tones = ChordTones.of(symbol);
        if (layout.isAbsent()) return List.of(silent(tones, Substitution.NO_BASS_SIDE));
        Asked asked = new Asked(
                symbol,
                tones,
                symbol.degrees().isEmpty() || tones.kind() != ChordKind.OTHER
                        ? ChordRecipe.usual(tones.kind())
                        : List.of());
        List<Found> found = new ArrayList<>(usual(asked));
        found.addAll(searched(asked));
        if (found.isEmpty()) found.addAll(withBasses(asked, List.of(), Found.SEARCHED));
        List<ButtonChoice> best = found.stream()
                .sorted(Found.ORDER)
                .collect(Kept::new, Kept::offer, (one, other) -> other.choices.forEach(one::offer))
                .list();
        return best.isEmpty() ? List.of(silent(tones, Substitution.NOT_PLAYABLE)) : best;
    }

    /**
     * Bass buttons that may take turns with the bass of a choice, nearest first: those of the chord's fifth (the next
     * column of the bass row, or a counterbass), or of its root where the choice plays another bass note. Empty where
     * there is none within reach.
     */
    public List<BassButton> alternateBasses(ChordSymbol symbol, ButtonChoice choice) {
        if (choice.bass().isEmpty()) return List.of();
        int root = symbol.root().pitchClass();
        int sounded = choice.bass().get().pitchClasses().first();
        return near(sounded == root ? fifth(symbol) : root, choice.bass().get());
    }

    /** Bass buttons of the chord's third near the bass of a choice, nearest first; the counterbass of a major chord. */
    public List<BassButton> thirds(ChordSymbol symbol, ButtonChoice choice) {
        SortedSet<Integer> tones = symbol.pitchClasses();
        int root = symbol.root().pitchClass();
        for (int third : List.of(4, 3))
            if (tones.contains((root + third) % 12) && choice.bass().isPresent())
                return near((root + third) % 12, choice.bass().get());
        return List.of();
    }

    private static int fifth(ChordSymbol symbol) {
        int root = symbol.root().pitchClass();
        SortedSet<Integer> tones = symbol.pitchClasses();
        for (int fifth : List.of(7, 6, 8)) if (tones.contains((root + fifth) % 12)) return (root + fifth) % 12;
        return (root + 7) % 12;
    }

    private List<BassButton> near(int pitchClass, BassButton from) {
        return layout.bassButtons(pitchClass).stream()
                .filter(button -> Math.abs(button.column() - from.column()) <= BASS_SPAN)
                .sorted(Comparator.comparingLong(
                                (BassButton button) -> layout.geometry().distanceSquared(button, from))
                        .thenComparing(Comparator.naturalOrder()))
                .toList();
    }

    /** A symbol, its tones and what players usually take for it. */
    private record Asked(ChordSymbol symbol, ChordTones tones, List<ChordRecipe> recipes) {}

    private List<Found> usual(Asked asked) {
        List<Found> found = new ArrayList<>();
        for (int rank = 0; rank < asked.recipes().size(); rank++) {
            ChordRecipe recipe = asked.recipes().get(rank);
            if (recipe.onlyElse() && !found.isEmpty()) continue;
            for (List<BassButton> chord : placements(asked, recipe))
                for (Found one : withBasses(asked, chord, rank))
                    if (recipe.holdsRoot()
                            || !asked.tones().hasSlashBass()
                            || !one.choice().hasWrittenBass()) found.add(one);
        }
        return found;
    }

    /** Every way to lay a recipe out on this instrument within the span of the chord fingers. */
    private List<List<BassButton>> placements(Asked asked, ChordRecipe recipe) {
        List<List<BassButton>> placed = List.of(List.of());
        for (ChordRecipe.Key key : recipe.keys()) {
            int pitchClass = (asked.tones().root() + key.semitones()) % 12;
            List<BassButton> places =
                    key.row() == BassRow.BASS ? layout.bassButtons(pitchClass) : layout.buttons(key.row(), pitchClass);
            List<List<BassButton>> longer = new ArrayList<>();
            for (List<BassButton> chord : placed)
                for (BassButton place : places) if (isWithin(CHORD_SPAN, chord, place)) longer.add(plus(chord, place));
            placed = longer;
        }
        return placed;
    }

    /**
     * Single buttons and pairs. A single chord button may add one foreign tone that lies no semitone from a tone of the
     * chord; nothing else adds any. Bass notes serve as chord tones only for chords that players have no usual chord
     * button for.
     */
    private List<Found> searched(Asked asked) {
        int wanted = asked.tones().chord();
        boolean usual =
                asked.recipes().stream().anyMatch(recipe -> !recipe.keys().isEmpty());
        List<Found> found = new ArrayList<>();
        for (BassButton one : all) {
            int foreign = ChordTones.mask(one) & ~wanted;
            boolean isMild = Integer.bitCount(foreign) == 1
                    && one.row().isChord()
                    && !asked.tones().clashes(foreign);
            if (foreign == 0 || isMild) found.addAll(withBasses(asked, List.of(one), Found.SEARCHED));
            if (foreign != 0 || usual && !one.row().isChord()) continue;
            for (BassButton other : all)
                if (one.compareTo(other) < 0
                        && (ChordTones.mask(other) & ~wanted) == 0
                        && isWithin(CHORD_SPAN, List.of(one), other))
                    found.addAll(withBasses(asked, List.of(one, other), Found.SEARCHED));
        }
        return found;
    }

    /**
     * The chord buttons with each button of the written bass note in reach, or if none is, with each that there is;
     * besides, under a slash, with the fundamental; without the written note, with any other tone of the chord.
     */
    private List<Found> withBasses(Asked asked, List<BassButton> chord, int rank) {
        ChordTones tones = asked.tones();
        List<BassButton> basses = new ArrayList<>(reachable(tones.bass(), chord));
        boolean written = !basses.isEmpty();
        if (written && tones.hasSlashBass()) basses.addAll(reachable(tones.root(), chord));
        if (!written) for (int tone : ChordTones.set(tones.chord())) basses.addAll(reachable(tone, chord));
        List<Found> found = new ArrayList<>();
        for (BassButton bass : basses) found.add(found(asked, Optional.of(bass), chord, rank, written));
        if (basses.isEmpty() && !chord.isEmpty()) found.add(found(asked, Optional.empty(), chord, rank, false));
        found.removeIf(one -> one.choice().bass().filter(chord::contains).isPresent());
        return found;
    }

    private List<BassButton> reachable(int pitchClass, List<BassButton> chord) {
        List<BassButton> every = layout.bassButtons(pitchClass);
        List<BassButton> near =
                every.stream().filter(bass -> isWithin(BASS_SPAN, chord, bass)).toList();
        return near.isEmpty() ? every : near;
    }

    private Found found(
            Asked asked, Optional<BassButton> bass, List<BassButton> chord, int rank, boolean writtenBassExists) {
        ChordTones tones = asked.tones();
        List<BassButton> buttons = bass.map(button -> plus(chord, button)).orElse(chord);
        int sounding = 0;
        for (BassButton button : buttons) sounding |= ChordTones.mask(button);
        int silent = tones.wanted() & ~sounding;
        int leftOut = tones.leftOut(silent, buttons);
        ButtonChoice choice = new ButtonChoice(
                bass,
                chord,
                ChordTones.set(sounding),
                ChordTones.set(silent & ~leftOut),
                ChordTones.set(leftOut),
                ChordTones.set(sounding & ~tones.wanted()),
                reasons(asked, bass, buttons, rank, writtenBassExists));
        int bassTone = bass.map(button -> button.pitchClasses().first()).orElse(-1);
        int home = homeColumn(asked.symbol().root().fifths());
        return new Found(
                choice,
                rank,
                rank < asked.recipes().size() && !asked.recipes().get(rank).onlyElse(),
                bassGrade(tones, bassTone),
                buttons.stream()
                        .mapToInt(button -> Math.abs(button.column() - home))
                        .sum(),
                choice.reachSquared(layout.geometry()));
    }

    /** The written column or, where it is not there, the one of the same name twelve away. */
    private int homeColumn(int written) {
        for (int column : List.of(written, written - 12, written + 12)) if (layout.hasColumn(column)) return column;
        return written;
    }

    /** 0 the written bass, 1 the root instead, 2 its perfect fifth, 3 a third, 4 another tone, 5 none. */
    private static int bassGrade(ChordTones tones, int bassTone) {
        if (bassTone < 0) return 5;
        if (bassTone == tones.bass()) return 0;
        return switch (Math.floorMod(bassTone - tones.root(), 12)) {
            case 0 -> 1;
            case 7 -> 2;
            case 3, 4 -> 3;
            default -> 4;
        };
    }

    private Set<Substitution> reasons(
            Asked asked, Optional<BassButton> bass, List<BassButton> buttons, int rank, boolean writtenBassExists) {
        EnumSet<Substitution> reasons = EnumSet.noneOf(Substitution.class);
        if (rank != 0 && !asked.recipes().isEmpty()) addWhyNotUsual(asked, reasons);
        int root = asked.tones().root();
        if (!layout.hasColumn(asked.symbol().root().fifths())
                && buttons.stream()
                        .anyMatch(button -> button.row() != BassRow.COUNTERBASS && button.rootPitchClass() == root))
            reasons.add(Substitution.ENHARMONIC_COLUMN);
        if (bass.isEmpty()) reasons.add(Substitution.NO_BASS_NOTE);
        else if (bass.get().pitchClasses().first() != asked.tones().bass()) reasons.add(Substitution.OTHER_BASS);
        if (!writtenBassExists && wouldBeCounterbass(asked.tones().bass()))
            reasons.add(Substitution.NO_COUNTERBASS_ROW);
        return reasons;
    }

    private boolean wouldBeCounterbass(int pitchClass) {
        if (layout.rows().contains(BassRow.COUNTERBASS)) return false;
        for (int column = layout.firstColumn(); column <= layout.lastColumn(); column++)
            if (new BassButton(BassRow.COUNTERBASS, column).pitchClasses().first() == pitchClass) return true;
        return false;
    }

    private void addWhyNotUsual(Asked asked, Set<Substitution> reasons) {
        ChordRecipe ideal = asked.recipes().get(0);
        if (!placements(asked, ideal).isEmpty()) return;
        for (ChordRecipe.Key key : ideal.keys())
            if (!layout.rows().contains(key.row()))
                Substitution.ofMissing(key.row()).ifPresent(reasons::add);
        if (reasons.isEmpty()
                || !layout.hasColumn(homeColumn(asked.symbol().root().fifths())))
            reasons.add(Substitution.BEYOND_COLUMNS);
    }

    private static boolean isWithin(int span, List<BassButton> buttons, BassButton other) {
        return buttons.stream().allMatch(button -> Math.abs(button.column() - other.column()) <= span);
    }

    private static List<BassButton> plus(List<BassButton> buttons, BassButton one) {
        List<BassButton> longer = new ArrayList<>(buttons);
        longer.add(one);
        return List.copyOf(longer);
    }

    private static ButtonChoice silent(ChordTones tones, Substitution reason) {
        return new ButtonChoice(
                Optional.empty(),
                List.of(),
                new TreeSet<>(),
                ChordTones.set(tones.wanted()),
                new TreeSet<>(),
                new TreeSet<>(),
                Set.of(reason));
    }

    /**
     * A choice with what ranks it.
     *
     * @param rank place among the usual recipes, or {@link #SEARCHED}
     * @param isUsual whether players take it of their own accord, not for want of another
     * @param away columns between its buttons and the chord's own column, added up
     */
    private record Found(ButtonChoice choice, int rank, boolean isUsual, int bassGrade, int away, long reachSquared) {
        static final int SEARCHED = 100;

        static final Comparator<Found> ORDER = Comparator.comparing((Found found) -> found.bassGrade > 0)
                .thenComparing(
                        found -> !(found.isUsual && found.choice.missing().isEmpty()))
                .thenComparingInt(found -> found.choice.missing().size())
                .thenComparingInt(Found::bassGrade)
                .thenComparingInt(Found::rank)
                .thenComparingInt(found -> found.choice.foreign().size())
                .thenComparingLong(Found::bassNotesInChord)
                .thenComparingInt(found -> found.choice.leftOut().size())
                .thenComparingInt(found -> found.choice.buttons().size())
                .thenComparingInt(Found::away)
                .thenComparingLong(Found::reachSquared)
                .thenComparing(found -> found.choice.buttons(), ChordButtons::compare);

        long bassNotesInChord() {
            return choice.chord().stream()
                    .filter(button -> !button.row().isChord())
                    .count();
        }
    }

    private static int compare(List<BassButton> one, List<BassButton> other) {
        for (int i = 0; i < Math.min(one.size(), other.size()); i++)
            if (!one.get(i).equals(other.get(i))) return one.get(i).compareTo(other.get(i));
        return Integer.compare(one.size(), other.size());
    }

    /** The choices kept so far, none dominated by one before it. */
    private static final class Kept {
        private final List<Found> choices = new ArrayList<>();

        void offer(Found found) {
            if (choices.size() < MOST_CHOICES
                    && choices.stream().noneMatch(kept -> beats(kept, found))
                    && choices.stream().filter(kept -> isAlike(kept, found)).count() < MOST_ALIKE) choices.add(found);
        }

        private static boolean isAlike(Found kept, Found found) {
            return kept.rank() == found.rank()
                    && kept.bassGrade() == found.bassGrade()
                    && kept.choice().sounding().equals(found.choice().sounding())
                    && kept.choice().buttons().size()
                            == found.choice().buttons().size();
        }

        private static boolean beats(Found kept, Found found) {
            ButtonChoice one = kept.choice();
            ButtonChoice other = found.choice();
            if (Set.copyOf(one.buttons()).equals(Set.copyOf(other.buttons()))
                    && one.bass().equals(other.bass())) return true;
            int missing = other.missing().size() - one.missing().size();
            int leftOut = other.leftOut().size() - one.leftOut().size();
            int foreign = other.foreign().size() - one.foreign().size();
            int buttons = other.buttons().size() - one.buttons().size();
            return missing >= 0
                    && leftOut >= 0
                    && foreign >= 0
                    && buttons >= 0
                    && missing + leftOut + foreign + buttons > 0;
        }

        List<ButtonChoice> list() {
            return choices.stream().map(Found::choice).toList();
        }
    }
}
