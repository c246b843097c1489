package org.mantice.instrument;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.TreeSet;

/**
 * The bass side: rows of buttons from the bellows outward, each running in fifths up toward the player's chin. A button
 * is known by what it sounds; where it lies, {@link #place}, {@link #alongMicrons} and {@link #acrossMicrons} say.
 *
 * @param rows each kind of row at most once; none for an instrument without bass
 * @param singles gaps, broken and marked buttons, all of them in the rows
 * @param geometry where the buttons lie
 * @param sound what they sound
 */
public record StradellaBass(List<ButtonRow> rows, SingleButtons singles, ButtonGeometry geometry, BassSound sound) {
    /** Sizes that {@link #ofSize} knows. */
    public static final List<Integer> SIZES = List.of(8, 12, 24, 32, 40, 48, 60, 72, 80, 96, 120);

    public StradellaBass {
        rows = rows.stream().sorted(Comparator.comparing(ButtonRow::row)).toList();
        EnumSet<BassRow> kinds = EnumSet.noneOf(BassRow.class);
        for (ButtonRow row : rows)
            if (!kinds.add(row.row()))
                throw new IllegalArgumentException("rows is twice " + row.row() + "; allowed: each kind once");
        checkThere("missing", singles.missing(), rows);
        checkThere("broken", singles.broken(), rows);
        checkThere("marked", singles.marked(), rows);
    }

    private static void checkThere(String name, Collection<BassButton> buttons, List<ButtonRow> rows) {
        for (BassButton button : buttons)
            if (rows.stream().noneMatch(row -> row.row() == button.row() && row.hasColumn(button.column())))
                throw new IllegalArgumentException(name + " is " + button + "; allowed: buttons of the rows");
    }

    /**
     * The usual layout of a size, one of {@link #SIZES}. 48 has twelve columns of four rows; for the other 48, eight
     * columns of six, ask {@link #ofRows}. Reeds per button: of 96 buttons one instrument is published with 4 and 6;
     * fewer on small ones is an estimate.
     */
    public static StradellaBass ofSize(int buttons) {
        if (!SIZES.contains(buttons))
            throw new IllegalArgumentException("buttons is " + buttons + "; allowed: one of " + SIZES);
        EnumSet<BassRow> rows = EnumSet.allOf(BassRow.class);
        if (buttons <= 32) rows.remove(BassRow.COUNTERBASS);
        if (buttons <= 60 || buttons == 80) rows.remove(BassRow.DIMINISHED);
        if (buttons <= 24 || buttons == 48) rows.remove(BassRow.SEVENTH);
        if (buttons <= 12) rows.remove(BassRow.MINOR);
        return ofRows(buttons / rows.size(), rows);
    }

    /**
     * So many columns, even and 2 to 24, laid out by the law that fits every published size: from n/2 - 1 fifths below
     * C to n/2 above.
     */
    public static StradellaBass ofRows(int columns, Collection<BassRow> rows) {
        if (columns < 2 || columns > 24 || columns % 2 != 0)
            throw new IllegalArgumentException("columns is " + columns + "; allowed: even, 2 to 24");
        return ofRows(rows.stream()
                .distinct()
                .map(row -> ButtonRow.of(row, 1 - columns / 2, columns))
                .toList());
    }

    /** Any rows, with the usual marks, the estimated geometry and reeds by the number of buttons. */
    public static StradellaBass ofRows(List<ButtonRow> rows) {
        boolean small = rows.stream().mapToInt(ButtonRow::columns).sum() <= 48;
        return new StradellaBass(
                rows,
                SingleButtons.usual(rows),
                ButtonGeometry.ESTIMATE,
                BassSound.ofReeds(small ? 2 : 4, small ? 3 : 6));
    }

    /** No bass at all. */
    public static StradellaBass none() {
        return new StradellaBass(
                List.of(), SingleButtons.usual(List.of()), ButtonGeometry.ESTIMATE, BassSound.ofReeds(1, 1));
    }

    /** The same with the sounds of one row moved along it: -1 lays C where F lay, as some makers do with diminished. */
    public StradellaBass displaced(BassRow row, int by) {
        return new StradellaBass(
                rows.stream()
                        .map(one -> one.row() == row ? one.shifted(by) : one)
                        .toList(),
                singles,
                geometry,
                sound);
    }

    /** The same with other gaps, broken and marked buttons. */
    public StradellaBass with(SingleButtons changed) {
        return new StradellaBass(rows, changed, geometry, sound);
    }

    public boolean isAbsent() {
        return allButtons().isEmpty();
    }

    /** Buttons that are there, broken ones too. */
    public int buttons() {
        return rows.stream().mapToInt(ButtonRow::columns).sum()
                - singles.missing().size();
    }

    public boolean hasRow(BassRow kind) {
        return rows.stream().anyMatch(row -> row.row() == kind);
    }

    /** Whether the button is there and works. */
    public boolean has(BassButton button) {
        return rows.stream().anyMatch(row -> row.row() == button.row() && row.hasColumn(button.column()))
                && !singles.missing().contains(button)
                && !singles.broken().contains(button);
    }

    /** Whether any row reaches the column. */
    public boolean hasColumn(int column) {
        return rows.stream().anyMatch(row -> row.hasColumn(column));
    }

    /** Every button that is there, broken ones too: row by row from the bellows outward, each from the floor up. */
    public List<BassButton> laidOut() {
        return rows.stream()
                .flatMap(row -> row.buttons().stream())
                .filter(button -> !singles.missing().contains(button))
                .toList();
    }

    /** Every button that works, in the order of {@link #laidOut}. */
    public List<BassButton> allButtons() {
        return laidOut().stream()
                .filter(button -> !singles.broken().contains(button))
                .toList();
    }

    /**
     * The buttons of a row by the note that a player calls them by (for a counterbass the note it sounds), from the
     * floor up: none, one, or two where the instrument repeats columns.
     *
     * @param pitchClass 0 to 11
     */
    public List<BassButton> buttons(BassRow kind, int pitchClass) {
        return rows.stream()
                .filter(row -> row.row() == kind)
                .flatMap(row -> row.buttons().stream())
                .filter(button -> button.noteName().pitchClass() == pitchClass && has(button))
                .toList();
    }

    /** The bass and counterbass buttons that sound a note, bass row first, each from the floor up. */
    public List<BassButton> bassButtons(int pitchClass) {
        List<BassButton> found = new ArrayList<>(buttons(BassRow.BASS, pitchClass));
        found.addAll(buttons(BassRow.COUNTERBASS, pitchClass));
        return List.copyOf(found);
    }

    /** The column in whose place a button lies: in a displaced row another than the one of its sound. */
    public int place(BassButton button) {
        for (ButtonRow row : rows) if (row.row() == button.row()) return button.column() + row.shift();
        return button.column();
    }

    /** The places of marked buttons, as columns from low to high, each once. */
    public List<Integer> markedPlaces() {
        TreeSet<Integer> places = new TreeSet<>();
        singles.marked().forEach(button -> places.add(place(button)));
        return List.copyOf(places);
    }

    /** Columns from a place to the nearest marked one; empty where nothing is marked. */
    public OptionalInt columnsToMark(int place) {
        return markedPlaces().stream()
                .mapToInt(marked -> Math.abs(marked - place))
                .min();
    }

    /** How far up a button lies along the rows, against column 0 of the innermost row. */
    public int alongMicrons(BassButton button) {
        return geometry.alongMicrons(button.row(), rowsInside(button.row()), place(button));
    }

    /** How far up the place of a column lies on the row of fundamental basses, or where it would lie. */
    public int bassRowMicrons(int place) {
        return geometry.alongMicrons(BassRow.BASS, rowsInside(BassRow.BASS), place);
    }

    /** How far out from the innermost row a button lies. Rows close up where the instrument lacks one. */
    public int acrossMicrons(BassButton button) {
        return geometry.acrossMicrons(button.row(), rowsInside(button.row()));
    }

    private int rowsInside(BassRow kind) {
        int inside = 0;
        for (ButtonRow row : rows) if (row.row().compareTo(kind) < 0) inside++;
        return inside;
    }

    /** Square of the distance between two buttons' centres, exact. */
    public long distanceSquared(BassButton one, BassButton other) {
        long along = (long) alongMicrons(one) - alongMicrons(other);
        long across = (long) acrossMicrons(one) - acrossMicrons(other);
        return along * along + across * across;
    }
}
