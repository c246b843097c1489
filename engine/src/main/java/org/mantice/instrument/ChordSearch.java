package org.mantice.instrument;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Finds the buttons that come into question for a chord: what players usually take, laid out on one instrument, and
 * single buttons and pairs that sound nothing but tones of the chord.
 */
final class ChordSearch {
    /** Columns between buttons of the chord, which one hand holds at once; an estimate. */
    static final int CHORD_SPAN = 4;
    /** Columns between the bass button and any of the chord; wide enough for C bass with E minor; an estimate. */
    static final int BASS_SPAN = 5;

    private final StradellaBass layout;
    private final List<BassButton> all;
    private final List<List<BassButton>> basses;

    ChordSearch(StradellaBass layout) {
        this.layout = layout;
        this.all = layout.allButtons();
        this.basses = IntStream.range(0, 12).mapToObj(layout::bassButtons).toList();
    }

    /** In no order; empty only where not even a bass note of the chord is there. */
    List<ChordGrip> grips(AskedChord asked) {
        List<ChordGrip> found = new ArrayList<>(usual(asked));
        found.addAll(searched(asked));
        if (found.isEmpty()) addWithBasses(asked, List.of(), ChordGrip.SEARCHED, found);
        return found;
    }

    private List<ChordGrip> usual(AskedChord asked) {
        List<ChordGrip> found = new ArrayList<>();
        for (int rank = 0; rank < asked.recipes().size(); rank++) {
            ChordRecipe recipe = asked.recipes().get(rank);
            if (recipe.onlyElse() && !found.isEmpty()) continue;
            List<ChordGrip> grips = new ArrayList<>();
            int order = asked.isChanged() ? ChordGrip.CHANGED + rank : rank;
            for (List<BassButton> chord : placements(asked, recipe)) addWithBasses(asked, chord, order, grips);
            boolean needsRoot = !recipe.holdsRoot() && asked.tones().hasSlashBass();
            grips.removeIf(grip -> needsRoot && grip.bassGrade() == 0);
            found.addAll(grips);
        }
        return found;
    }

    /** Every way to lay a recipe out on this instrument within the span of the chord fingers. */
    List<List<BassButton>> placements(AskedChord asked, ChordRecipe recipe) {
        List<List<BassButton>> placed = List.of(List.of());
        for (ChordRecipe.Key key : recipe.keys()) {
            int pitchClass = (asked.tones().root() + key.semitones()) % 12;
            List<BassButton> places =
                    key.row() == BassRow.BASS ? basses.get(pitchClass) : layout.buttons(key.row(), pitchClass);
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
    private List<ChordGrip> searched(AskedChord asked) {
        int wanted = asked.tones().chord();
        boolean usual = asked.hasUsualButtons();
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
                        && isWithin(CHORD_SPAN, List.of(one), other))
                    addWithBasses(asked, List.of(one, other), ChordGrip.SEARCHED, found);
        }
        return found;
    }

    /**
     * Adds the chord buttons with each button of the written bass note in reach, or if none is, with each that there
     * is; besides, under a slash, with the fundamental; without the written note, with any other tone of the chord.
     */
    private void addWithBasses(AskedChord asked, List<BassButton> chord, int rank, List<ChordGrip> found) {
        ChordTones tones = asked.tones();
        List<BassButton> near = new ArrayList<>(reachable(tones.bass(), chord));
        boolean written = !near.isEmpty();
        if (written && tones.hasSlashBass()) near.addAll(reachable(tones.root(), chord));
        if (!written) for (int tone : ChordTones.set(tones.chord())) near.addAll(reachable(tone, chord));
        for (BassButton bass : near) if (!chord.contains(bass)) found.add(grip(asked, Optional.of(bass), chord, rank));
        if (near.isEmpty() && !chord.isEmpty()) found.add(grip(asked, Optional.empty(), chord, rank));
    }

    private List<BassButton> reachable(int pitchClass, List<BassButton> chord) {
        List<BassButton> every = basses.get(pitchClass);
        List<BassButton> near = new ArrayList<>(every);
        near.removeIf(bass -> !isWithin(BASS_SPAN, chord, bass));
        return near.isEmpty() ? every : near;
    }

    private ChordGrip grip(AskedChord asked, Optional<BassButton> bass, List<BassButton> chord, int rank) {
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
        boolean isAtHome = rank < ChordGrip.SEARCHED && !tones.hasSlashBass();
        return new ChordGrip(
                bass,
                chord.stream().sorted().toList(),
                sounding,
                silent & ~leftOut,
                leftOut,
                sounding & ~tones.wanted(),
                rank,
                asked.isUsual(rank),
                bass.map(button -> bassGrade(tones, button)).orElse(5),
                isAtHome ? away : 0,
                away,
                reach);
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

    /** The written column or, where it is not there, the one of the same name twelve away. */
    int homeColumn(int written) {
        for (int column : List.of(written, written - 12, written + 12)) if (layout.hasColumn(column)) return column;
        return written;
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
}
