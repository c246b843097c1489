package org.mantice.instrument;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.IntStream;
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
 * fewer tones. Only what the plain kind of chord would take stays in any case. A larger instrument, one with all the buttons of a smaller and more, never loses the written bass, and
 * at equal bass never misses more tones.
 */
public final class ChordButtons {
    /** The most choices that are kept for one symbol. */
    public static final int MOST_CHOICES = 8;

    /** Columns between buttons of the chord, which one hand holds at once; an estimate. */
    private static final int CHORD_SPAN = 4;
    /** Columns between the bass button and any of the chord; wide enough for C bass with E minor; an estimate. */
    private static final int BASS_SPAN = 5;

    private final StradellaBass layout;
    private final List<BassButton> all;
    private final List<List<BassButton>> basses;

    public ChordButtons(StradellaBass layout) {
        this.layout = layout;
        this.all = layout.allButtons();
        this.basses = IntStream.range(0, 12).mapToObj(layout::bassButtons).toList();
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
        boolean isChanged = tones.kind() == ChordKind.OTHER && symbol.kind() != ChordKind.OTHER;
        Asked asked = new Asked(symbol, tones, ChordRecipe.usual(isChanged ? symbol.kind() : tones.kind()), isChanged);
        List<ChordGrip> found = new ArrayList<>(usual(asked));
        found.addAll(searched(asked));
        if (found.isEmpty()) addWithBasses(asked, List.of(), ChordGrip.SEARCHED, found);
        if (found.isEmpty()) return List.of(silent(tones, Substitution.NOT_PLAYABLE));
        found.sort(ChordGrip.ORDER);
        return ChordGrip.unbeaten(found, MOST_CHOICES).stream()
                .map(grip -> choice(asked, grip))
                .toList();
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
                .filter(button -> Math.abs(layout.place(button) - layout.place(from)) <= BASS_SPAN)
                .sorted(Comparator.comparingLong((BassButton button) -> layout.distanceSquared(button, from))
                        .thenComparing(Comparator.naturalOrder()))
                .toList();
    }

    /**
     * A symbol, its tones and what players usually take for it.
     *
     * @param isChanged whether degrees make it none of the known kinds; the recipes are then those of the plain kind
     */
    private record Asked(ChordSymbol symbol, ChordTones tones, List<ChordRecipe> recipes, boolean isChanged) {}

    private List<ChordGrip> usual(Asked asked) {
        List<ChordGrip> found = new ArrayList<>();
        for (int rank = 0; rank < asked.recipes().size(); rank++) {
            ChordRecipe recipe = asked.recipes().get(rank);
            if (recipe.onlyElse() && !found.isEmpty()) continue;
            List<ChordGrip> grips = new ArrayList<>();
            for (List<BassButton> chord : placements(asked, recipe)) addWithBasses(asked, chord, rank, grips);
            boolean needsRoot = !recipe.holdsRoot() && asked.tones().hasSlashBass();
            grips.removeIf(grip -> needsRoot && grip.bassGrade() == 0);
            found.addAll(grips);
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
    private List<ChordGrip> searched(Asked asked) {
        int wanted = asked.tones().chord();
        boolean usual = !asked.isChanged()
                && asked.recipes().stream().anyMatch(recipe -> !recipe.keys().isEmpty());
        List<ChordGrip> found = new ArrayList<>();
        for (BassButton one : all) {
            int foreign = ChordTones.mask(one) & ~wanted;
            boolean isMild = Integer.bitCount(foreign) == 1
                    && one.row().isChord()
                    && !asked.tones().clashes(foreign);
            if (foreign == 0 || isMild) addWithBasses(asked, List.of(one), ChordGrip.SEARCHED, found);
            if (foreign != 0 || usual && !one.row().isChord()) continue;
            for (BassButton other : all)
                if (one.compareTo(other) < 0
                        && (ChordTones.mask(other) & ~wanted) == 0
                        && Math.abs(layout.place(one) - layout.place(other)) <= CHORD_SPAN)
                    addWithBasses(asked, List.of(one, other), ChordGrip.SEARCHED, found);
        }
        return found;
    }

    /**
     * Adds the chord buttons with each button of the written bass note in reach, or if none is, with each that there
     * is; besides, under a slash, with the fundamental; without the written note, with any other tone of the chord.
     */
    private void addWithBasses(Asked asked, List<BassButton> chord, int rank, List<ChordGrip> found) {
        ChordTones tones = asked.tones();
        List<BassButton> basses = new ArrayList<>(reachable(tones.bass(), chord));
        boolean written = !basses.isEmpty();
        if (written && tones.hasSlashBass()) basses.addAll(reachable(tones.root(), chord));
        if (!written) for (int tone : ChordTones.set(tones.chord())) basses.addAll(reachable(tone, chord));
        for (BassButton bass : basses)
            if (!chord.contains(bass)) found.add(grip(asked, Optional.of(bass), chord, rank));
        if (basses.isEmpty() && !chord.isEmpty()) found.add(grip(asked, Optional.empty(), chord, rank));
    }

    private List<BassButton> reachable(int pitchClass, List<BassButton> chord) {
        List<BassButton> every = basses.get(pitchClass);
        List<BassButton> near = new ArrayList<>(every);
        near.removeIf(bass -> !isWithin(BASS_SPAN, chord, bass));
        return near.isEmpty() ? every : near;
    }

    private ChordGrip grip(Asked asked, Optional<BassButton> bass, List<BassButton> chord, int rank) {
        ChordTones tones = asked.tones();
        List<BassButton> buttons = bass.map(button -> plus(chord, button)).orElse(chord);
        int home = homeColumn(asked.symbol().root().fifths());
        int sounding = 0;
        int away = 0;
        long reach = 0;
        for (BassButton button : buttons) {
            sounding |= ChordTones.mask(button);
            away += Math.abs(button.column() - home);
            for (BassButton other : buttons) reach = Math.max(reach, layout.distanceSquared(button, other));
        }
        int silent = tones.wanted() & ~sounding;
        int leftOut = tones.leftOut(silent, buttons);
        return new ChordGrip(
                bass,
                chord.stream().sorted().toList(),
                sounding,
                silent & ~leftOut,
                leftOut,
                sounding & ~tones.wanted(),
                rank,
                rank < asked.recipes().size() && !asked.recipes().get(rank).onlyElse(),
                bass.map(button -> bassGrade(tones, button)).orElse(5),
                away,
                reach);
    }

    private ButtonChoice choice(Asked asked, ChordGrip grip) {
        return new ButtonChoice(
                grip.bass(),
                grip.chord(),
                ChordTones.set(grip.sounding()),
                ChordTones.set(grip.missing()),
                ChordTones.set(grip.leftOut()),
                ChordTones.set(grip.foreign()),
                reasons(asked, grip));
    }

    /** The written column or, where it is not there, the one of the same name twelve away. */
    private int homeColumn(int written) {
        for (int column : List.of(written, written - 12, written + 12)) if (layout.hasColumn(column)) return column;
        return written;
    }

    private static int bassGrade(ChordTones tones, BassButton bass) {
        int tone = bass.pitchClasses().first();
        if (tone == tones.bass()) return 0;
        return switch (Math.floorMod(tone - tones.root(), 12)) {
            case 0 -> 1;
            case 7 -> 2;
            case 3, 4 -> 3;
            default -> 4;
        };
    }

    private Set<Substitution> reasons(Asked asked, ChordGrip grip) {
        EnumSet<Substitution> reasons = EnumSet.noneOf(Substitution.class);
        if (grip.rank() != 0 && !asked.recipes().isEmpty()) addWhyNotUsual(asked, reasons);
        int root = asked.tones().root();
        if (!layout.hasColumn(asked.symbol().root().fifths())
                && grip.buttons().stream()
                        .anyMatch(button -> button.row() != BassRow.COUNTERBASS && button.rootPitchClass() == root))
            reasons.add(Substitution.ENHARMONIC_COLUMN);
        if (grip.bass().isEmpty()) reasons.add(Substitution.NO_BASS_NOTE);
        else if (grip.bassGrade() > 0) reasons.add(Substitution.OTHER_BASS);
        int bass = asked.tones().bass();
        if (basses.get(bass).isEmpty() && wouldBeCounterbass(bass)) reasons.add(Substitution.NO_COUNTERBASS_ROW);
        return reasons;
    }

    private boolean wouldBeCounterbass(int pitchClass) {
        if (layout.hasRow(BassRow.COUNTERBASS)) return false;
        return layout.allButtons().stream()
                .map(button -> new BassButton(BassRow.COUNTERBASS, button.column()))
                .anyMatch(button -> button.pitchClasses().first() == pitchClass);
    }

    private void addWhyNotUsual(Asked asked, Set<Substitution> reasons) {
        ChordRecipe ideal = asked.recipes().get(0);
        if (!placements(asked, ideal).isEmpty()) return;
        for (ChordRecipe.Key key : ideal.keys())
            if (!layout.hasRow(key.row())) Substitution.ofMissing(key.row()).ifPresent(reasons::add);
        if (reasons.isEmpty()
                || !layout.hasColumn(homeColumn(asked.symbol().root().fifths())))
            reasons.add(Substitution.BEYOND_COLUMNS);
    }

    private boolean isWithin(int span, List<BassButton> buttons, BassButton other) {
        for (BassButton button : buttons) if (Math.abs(layout.place(button) - layout.place(other)) > span) return false;
        return true;
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
}
