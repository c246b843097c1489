package org.mantice.instrument;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.mantice.tune.ChordSymbol;

/**
 * Which buttons of one bass side play a chord symbol.
 *
 * <p>What players usually take comes first (a seventh button for C7, C major over an A bass for Am7), with the
 * fall-backs for rows that the instrument lacks; then what a search over one and two buttons finds. Order: the right
 * bass note, usual and complete before all others, missing tones, what else sounds for the bass, for usual ones their
 * rank, foreign tones, number of buttons, for usual ones without a slash the columns away from the chord's own, reach
 * of all buttons held together. Where all this is equal: bass notes used as chord tones, fifths left out, columns away,
 * buttons from the bellows outward and from the floor up.
 *
 * <p>A choice that is nowhere better than one before it and somewhere worse is dropped, so a longer list means real
 * alternatives: the same shape at the other end of the columns, a bass note as counterbass, fewer buttons against
 * fewer tones. Only what the plain kind of chord would take stays in any case.
 *
 * <p>A larger instrument, one with all the buttons of a smaller and more, never loses the written bass, and at equal
 * bass never misses more tones. Without "at equal bass" this would not hold, since the bass comes first: 24 buttons
 * lack G-flat, and for Gbm6 they play other tones of the chord over another bass; 48 have the G-flat, and with it fewer
 * of the other tones lie in reach.
 */
public final class ChordButtons {
    /** The most choices that are kept for one symbol. */
    public static final int MOST_CHOICES = 8;

    private final StradellaBass layout;
    private final ChordSearch search;
    private final FallBacks fallBacks;

    public ChordButtons(StradellaBass layout) {
        this.layout = layout;
        this.search = new ChordSearch(layout);
        this.fallBacks = new FallBacks(layout, search);
    }

    /**
     * The choices for a symbol, best first: at least one, at most {@link #MOST_CHOICES}. "No chord" gives
     * {@link ButtonChoice#SILENT} alone; so does, with the tones missing and the reason, a chord that no buttons come
     * near, and any chord on an instrument without bass.
     */
    public List<ButtonChoice> choices(ChordSymbol symbol) {
        if (symbol.isSilent()) return List.of(ButtonChoice.SILENT);
        AskedChord asked = AskedChord.of(symbol);
        if (layout.isAbsent()) return List.of(silent(asked.tones(), Substitution.NO_BASS_SIDE));
        List<ChordGrip> found = search.grips(asked);
        if (found.isEmpty()) return List.of(silent(asked.tones(), Substitution.NOT_PLAYABLE));
        return ChordGrip.unbeaten(found.stream().sorted(ChordGrip.ORDER).toList(), MOST_CHOICES).stream()
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
                .filter(button -> Math.abs(layout.place(button) - layout.place(from)) <= ChordSearch.BASS_SPAN)
                .sorted(Comparator.comparingLong((BassButton button) -> layout.distanceSquared(button, from))
                        .thenComparing(Comparator.naturalOrder()))
                .toList();
    }

    private ButtonChoice choice(AskedChord asked, ChordGrip grip) {
        return new ButtonChoice(
                grip.bass(),
                grip.chord(),
                ChordTones.set(grip.sounding()),
                ChordTones.set(grip.missing()),
                ChordTones.set(grip.leftOut()),
                ChordTones.set(grip.foreign()),
                fallBacks.of(asked, grip));
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
