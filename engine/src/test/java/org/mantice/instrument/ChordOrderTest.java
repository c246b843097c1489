package org.mantice.instrument;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.mantice.tune.ChordSymbol;

/**
 * Where players have no usual buttons, the first choice is the best of all sets of up to three buttons: the bass right,
 * then fewest missing, then fewest foreign, then fewest buttons, then the least reach. Every set is tried here.
 */
class ChordOrderTest {
    private record Grip(boolean wrongBass, int missing, int foreign, int buttons, long reach) {
        static final Comparator<Grip> ORDER = Comparator.comparing(Grip::wrongBass)
                .thenComparingInt(Grip::missing)
                .thenComparingInt(Grip::foreign)
                .thenComparingInt(Grip::buttons)
                .thenComparingLong(Grip::reach);
    }

    @ParameterizedTest
    @ValueSource(strings = {"aug", "m(maj7)", "maj7#5", "aug/E", "m(maj7)/G"})
    void the_first_choice_is_the_best_of_all_sets_of_buttons(String rest) {
        int compared = 0;
        for (StradellaBass layout : List.of(
                StradellaBass.ofSize(24),
                StradellaBass.ofSize(40),
                StradellaBass.ofSize(48),
                ChordLayouts.otherOf48(),
                StradellaBass.ofSize(60).displaced(BassRow.SEVENTH, -1)))
            for (String root : ChordLayouts.ROOTS) {
                if (rest.contains("/") && !root.equals("C")) continue;
                ChordSymbol symbol = ChordLayouts.symbol(root + rest);
                ButtonChoice first = new ChordButtons(layout).choices(symbol).get(0);
                if (first.isSilent()) continue;
                Grip best = best(layout, symbol);
                compared++;
                assertThat(grip(layout, symbol, first.bass(), first.chord()))
                        .as(symbol + " on " + layout.buttons() + ": " + first)
                        .isEqualTo(best);
            }
        assertThat(compared).isGreaterThan(3);
    }

    private static Grip best(StradellaBass layout, ChordSymbol symbol) {
        List<List<BassButton>> chords = new ArrayList<>();
        List<BassButton> all = layout.allButtons();
        for (BassButton one : all) {
            chords.add(List.of(one));
            for (BassButton other : all) if (one.compareTo(other) < 0) chords.add(List.of(one, other));
        }
        Grip best = null;
        for (List<BassButton> chord : chords) {
            if (!isAllowed(layout, symbol, chord)) continue;
            for (BassButton bass : all) {
                if (bass.row().isChord() || chord.contains(bass) || tooFar(layout, chord, bass)) continue;
                Grip grip = grip(layout, symbol, Optional.of(bass), chord);
                if (best == null || Grip.ORDER.compare(grip, best) < 0) best = grip;
            }
        }
        return best;
    }

    /** As stated: four columns for the chord fingers; only a single chord button may add a tone, and one without clash. */
    private static boolean isAllowed(StradellaBass layout, ChordSymbol symbol, List<BassButton> chord) {
        Set<Integer> wanted = symbol.pitchClasses();
        TreeSet<Integer> foreign = new TreeSet<>();
        chord.forEach(button -> foreign.addAll(button.pitchClasses()));
        foreign.removeAll(wanted);
        if (chord.size() == 1)
            return foreign.isEmpty()
                    || foreign.size() == 1
                            && chord.get(0).row().isChord()
                            && !wanted.contains((foreign.first() + 1) % 12)
                            && !wanted.contains((foreign.first() + 11) % 12);
        return foreign.isEmpty() && Math.abs(layout.place(chord.get(0)) - layout.place(chord.get(1))) <= 4;
    }

    /** Five columns, unless the note lies nowhere nearer. */
    private static boolean tooFar(StradellaBass layout, List<BassButton> chord, BassButton bass) {
        return layout.bassButtons(bass.pitchClasses().first()).stream().anyMatch(other -> within(layout, chord, other))
                && !within(layout, chord, bass);
    }

    private static boolean within(StradellaBass layout, List<BassButton> chord, BassButton bass) {
        return chord.stream().allMatch(button -> Math.abs(layout.place(button) - layout.place(bass)) <= 5);
    }

    private static Grip grip(
            StradellaBass layout, ChordSymbol symbol, Optional<BassButton> bass, List<BassButton> chord) {
        List<BassButton> buttons = new ArrayList<>(chord);
        bass.ifPresent(buttons::add);
        TreeSet<Integer> wanted = new TreeSet<>(symbol.pitchClasses());
        int written = symbol.bass().orElse(symbol.root()).pitchClass();
        wanted.add(written);
        TreeSet<Integer> sounding = new TreeSet<>();
        buttons.forEach(button -> sounding.addAll(button.pitchClasses()));
        TreeSet<Integer> missing = new TreeSet<>(wanted);
        missing.removeAll(sounding);
        int fifth = (symbol.root().pitchClass() + 7) % 12;
        boolean onRoot = buttons.stream()
                .anyMatch(button -> button.row() == BassRow.SEVENTH
                        && button.rootPitchClass() == symbol.root().pitchClass());
        if ((symbol.pitchClasses().size() >= 4 || onRoot) && fifth != written) missing.remove(fifth);
        sounding.removeAll(wanted);
        long reach = 0;
        for (BassButton one : buttons)
            for (BassButton other : buttons) reach = Math.max(reach, layout.distanceSquared(one, other));
        boolean wrong = bass.isEmpty() || bass.get().pitchClasses().first() != written;
        return new Grip(wrong, missing.size(), sounding.size(), buttons.size(), reach);
    }
}
