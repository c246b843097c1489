package org.mantice.instrument;

import java.util.Collection;
import java.util.Collections;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Buttons that differ from their neighbours.
 *
 * @param missing gaps in a row, where there is no button
 * @param broken buttons that are there and that no plan presses
 * @param marked buttons that a finger knows by touch
 */
public record SingleButtons(SortedSet<BassButton> missing, SortedSet<BassButton> broken, SortedSet<BassButton> marked) {
    /**
     * What makers mark: C, and E and A-flat four buttons either side, in the row of the fundamental basses
     * (encyclopaedia articles on the system).
     */
    public static final Set<BassButton> USUALLY_MARKED = sorted(Stream.of(-4, 0, 4)
            .map(column -> new BassButton(BassRow.BASS, column))
            .collect(Collectors.toSet()));

    public SingleButtons {
        missing = sorted(missing);
        broken = sorted(broken);
        marked = sorted(marked);
        for (BassButton button : missing) {
            if (broken.contains(button))
                throw new IllegalArgumentException("broken is " + button + "; allowed: no button that is missing");
            if (marked.contains(button))
                throw new IllegalArgumentException("marked is " + button + "; allowed: no button that is missing");
        }
    }

    /** No gaps, all working, the usual marks so far as the rows have these buttons. */
    public static SingleButtons usual(Collection<ButtonRow> rows) {
        SortedSet<BassButton> marked = new TreeSet<>(USUALLY_MARKED);
        marked.removeIf(button -> rows.stream().noneMatch(row -> row.buttons().contains(button)));
        return new SingleButtons(new TreeSet<>(), new TreeSet<>(), marked);
    }

    /** The same with these broken. */
    public SingleButtons withBroken(Collection<BassButton> buttons) {
        return new SingleButtons(missing, sorted(buttons), marked);
    }

    /** The same with these gaps. */
    public SingleButtons withMissing(Collection<BassButton> buttons) {
        return new SingleButtons(sorted(buttons), broken, marked);
    }

    /** The same with these marks. */
    public SingleButtons withMarked(Collection<BassButton> buttons) {
        return new SingleButtons(missing, broken, sorted(buttons));
    }

    private static SortedSet<BassButton> sorted(Collection<BassButton> buttons) {
        return Collections.unmodifiableSortedSet(new TreeSet<>(buttons));
    }
}
