package org.mantice.instrument;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Buttons that play one chord symbol, with what they leave out and what they add. Pitch classes are 0 (C) to 11 (B).
 *
 * @param bass the button that plays the bass note; empty where none fits
 * @param chord the buttons played together on the chord beats, in button order; usually chord buttons, for suspended
 *     chords and a few others also buttons of the bass rows; empty where the bass note stands alone
 * @param sounding what bass and chord sound together
 * @param missing tones of the symbol, its slash bass included, that do not sound
 * @param leftOut tones that do not sound and are not missed: the fifth that a seventh or diminished button is built
 *     without, and the fifth of a chord of four or more tones
 * @param foreign what sounds and the symbol does not name
 * @param substitutions why it is not what the symbol asks for; empty for the usual buttons
 */
public record ButtonChoice(
        Optional<BassButton> bass,
        List<BassButton> chord,
        SortedSet<Integer> sounding,
        SortedSet<Integer> missing,
        SortedSet<Integer> leftOut,
        SortedSet<Integer> foreign,
        Set<Substitution> substitutions) {
    /** The left hand plays nothing. */
    public static final ButtonChoice SILENT = new ButtonChoice(
            Optional.empty(), List.of(), new TreeSet<>(), new TreeSet<>(), new TreeSet<>(), new TreeSet<>(), Set.of());

    public ButtonChoice {
        chord = chord.stream().sorted().toList();
        sounding = sorted(sounding);
        missing = sorted(missing);
        leftOut = sorted(leftOut);
        foreign = sorted(foreign);
        EnumSet<Substitution> reasons = EnumSet.noneOf(Substitution.class);
        reasons.addAll(substitutions);
        substitutions = Collections.unmodifiableSet(reasons);
    }

    private static SortedSet<Integer> sorted(Collection<Integer> classes) {
        for (int pitchClass : classes)
            if (pitchClass < 0 || pitchClass > 11)
                throw new IllegalArgumentException("pitch class is " + pitchClass + "; allowed: 0 to 11");
        return Collections.unmodifiableSortedSet(new TreeSet<>(classes));
    }

    public boolean isSilent() {
        return bass.isEmpty() && chord.isEmpty();
    }

    /** Whether the bass note is the one that the symbol asks for. */
    public boolean hasWrittenBass() {
        return !substitutions.contains(Substitution.OTHER_BASS)
                && !substitutions.contains(Substitution.NO_BASS_NOTE)
                && !substitutions.contains(Substitution.NOT_PLAYABLE)
                && !substitutions.contains(Substitution.NO_BASS_SIDE);
    }

    /** Every button once: the bass, then the chord. */
    public List<BassButton> buttons() {
        List<BassButton> all = new ArrayList<>();
        bass.ifPresent(all::add);
        chord.stream().filter(button -> !all.contains(button)).forEach(all::add);
        return List.copyOf(all);
    }

    /** As {@code "A bass + C major"}. */
    @Override
    public String toString() {
        return isSilent()
                ? "silent"
                : String.join(
                        " + ", buttons().stream().map(BassButton::toString).toList());
    }
}
