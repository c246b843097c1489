package org.mantice.tune;

import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * A chord symbol.
 *
 * @param root meaningless for {@link ChordKind#NONE}; by convention C there
 * @param bass the note under a slash
 * @param text the kind as the source writes it, for display; may be empty
 */
public record ChordSymbol(
        NoteName root, ChordKind kind, List<ChordDegree> degrees, Optional<NoteName> bass, String text) {
    private static final int[] DEGREE_SEMITONES = {0, 2, 4, 5, 7, 9, 10};

    public ChordSymbol {
        degrees = List.copyOf(degrees);
    }

    public static ChordSymbol of(NoteName root, ChordKind kind) {
        return new ChordSymbol(root, kind, List.of(), Optional.empty(), "");
    }

    /** "No chord": the left hand is silent. */
    public boolean isSilent() {
        return kind == ChordKind.NONE;
    }

    /**
     * The pitch classes that the symbol names without the slash bass, degrees applied, ascending from 0 to 11. A kind
     * with no fixed set counts as its root alone.
     */
    public SortedSet<Integer> pitchClasses() {
        NavigableSet<Integer> tones = new TreeSet<>();
        if (isSilent()) return tones;
        kind.intervals().forEach(tones::add);
        if (tones.isEmpty()) tones.add(0);
        for (ChordDegree degree : degrees) apply(degree, tones);
        SortedSet<Integer> classes = new TreeSet<>();
        tones.forEach(tone -> classes.add(Math.floorMod(tone + root.pitchClass(), 12)));
        return classes;
    }

    private void apply(ChordDegree degree, NavigableSet<Integer> tones) {
        int plain = DEGREE_SEMITONES[(degree.value() - 1) % 7] + 12 * ((degree.value() - 1) / 7);
        switch (degree.change()) {
            case ADD -> tones.add(plain + degree.alter());
            case SUBTRACT -> tones.removeIf(tone -> Math.floorMod(tone - plain - degree.alter(), 12) == 0);
            case ALTER -> {
                int present = tones.stream()
                        .filter(tone -> letterOf(tone) == (degree.value() - 1) % 7)
                        .findFirst()
                        .orElse(plain);
                tones.remove(present);
                tones.add(present + degree.alter());
            }
        }
    }

    /** The scale degree (0 to 6) that a tone of a plain kind stands for. */
    private int letterOf(int tone) {
        return switch (Math.floorMod(tone, 12)) {
            case 0 -> 0;
            case 1, 2 -> 1;
            case 3, 4 -> 2;
            case 5 -> 3;
            case 6, 7, 8 -> 4;
            case 9 -> kind == ChordKind.DIMINISHED_SEVENTH ? 6 : 5;
            default -> 6;
        };
    }

    /** As {@code "F#m7/C#"}. */
    @Override
    public String toString() {
        if (isSilent()) return kind.suffix();
        StringBuilder symbol = new StringBuilder(root.toString()).append(kind.suffix());
        for (ChordDegree degree : degrees) {
            symbol.append('(')
                    .append(
                            switch (degree.change()) {
                                case ADD -> "add";
                                case ALTER -> "";
                                case SUBTRACT -> "no";
                            });
            symbol.append(degree.alter() < 0 ? "b".repeat(-degree.alter()) : "#".repeat(degree.alter()));
            symbol.append(degree.value()).append(')');
        }
        bass.ifPresent(note -> symbol.append('/').append(note));
        return symbol.toString();
    }
}
