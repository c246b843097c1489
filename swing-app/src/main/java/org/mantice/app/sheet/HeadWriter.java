package org.mantice.app.sheet;

import static org.mantice.app.sheet.Engraving.GRACE;
import static org.mantice.app.sheet.Engraving.HALF_HEAD;
import static org.mantice.app.sheet.Engraving.HEAD;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.mantice.app.sheet.StaffEvent.Grace;
import org.mantice.app.sheet.StaffEvent.Head;
import org.mantice.tune.MelodyEvent;
import org.mantice.tune.MelodyNote;

/** Places the heads, accidentals and grace notes of one sign and measures how far they reach. */
final class HeadWriter {
    private static final double ACCIDENTAL_GAP = 0.2;
    /** Accidentals nearer than a seventh would touch in one column. */
    private static final int ACCIDENTAL_HEIGHT = 6;

    private static final double GRACE_GAP = 0.5;
    private static final double FLAG = 1.1;
    /** Short leger lines where notes are dense, so that those of neighbours do not join. */
    private static final double LEGER_ROOM = 0.25;

    static final double DOT_GAP = 0.35;
    static final double DOT_PITCH = 0.6;

    private final Accidentals accidentals;
    private final NoteValue value;
    private final boolean stemUp;
    private final boolean beamed;
    private final List<Grace> graces = new ArrayList<>();
    private final List<Grace> after = new ArrayList<>();
    private List<Head> heads = List.of();
    private double left = HALF_HEAD;
    private double right = HALF_HEAD;

    HeadWriter(Accidentals accidentals, NoteValue value, boolean stemUp, boolean beamed) {
        this.accidentals = accidentals;
        this.value = value;
        this.stemUp = stemUp;
        this.beamed = beamed;
    }

    List<Head> heads() {
        return heads;
    }

    List<Grace> graces() {
        return graces;
    }

    List<Grace> after() {
        return after;
    }

    double left() {
        return left;
    }

    double right() {
        return right;
    }

    /** @param first the first sign of its event, which alone has accidentals and grace notes before it */
    void write(MelodyEvent event, boolean first, boolean last) {
        List<List<Head>> before = new ArrayList<>();
        if (first) for (List<MelodyNote> notes : event.graces().notes()) before.add(heads(notes, true, true, true));
        if (!event.isRest()) {
            heads = heads(event.notes(), first, last, stemUp);
            measure();
        }
        for (int i = before.size() - 1; i >= 0; i--) graces.add(0, graceBefore(before.get(i)));
        if (last)
            for (List<MelodyNote> notes : event.after().notes()) after.add(graceAfter(heads(notes, true, true, true)));
    }

    void rest(boolean wholeMeasure) {
        if (wholeMeasure) {
            left = 0;
            right = 0;
            return;
        }
        right = SheetFonts.glyph(NoteGlyphs.rest(value)).bounds().getMaxX() - HALF_HEAD;
        right += dots();
    }

    private double dots() {
        return value.dots() == 0 ? 0 : DOT_GAP + value.dots() * DOT_PITCH;
    }

    private void measure() {
        boolean toRight = heads.stream().anyMatch(Head::displaced) && stemUp;
        boolean toLeft = heads.stream().anyMatch(Head::displaced) && !stemUp;
        double width = SheetFonts.glyph(NoteGlyphs.head(value)).bounds().getWidth();
        double headsRight = width - HALF_HEAD + (toRight ? width : 0);
        right = headsRight + dots();
        if (stemUp && value.flags() > 0 && !beamed) right = Math.max(right, HALF_HEAD + FLAG);
        left = Math.max(HALF_HEAD + (toLeft ? width : 0), left);
        for (Head head : heads) if (head.accidental().isPresent()) left = Math.max(left, -head.accidentalX());
        boolean onLegerLine = heads.stream().anyMatch(head -> head.place() <= -2 || head.place() >= 10);
        if (!onLegerLine) return;
        left = Math.max(left, HALF_HEAD + LEGER_ROOM);
        right = Math.max(right, HALF_HEAD + LEGER_ROOM);
    }

    private Grace graceBefore(List<Head> notes) {
        double x = -left - GRACE_GAP - GRACE * HALF_HEAD;
        left = -x + GRACE * reachLeft(notes);
        return new Grace(notes, x);
    }

    private Grace graceAfter(List<Head> notes) {
        double x = right + GRACE_GAP + GRACE * reachLeft(notes);
        right = x + GRACE * HALF_HEAD;
        return new Grace(notes, x);
    }

    private static double reachLeft(List<Head> notes) {
        return notes.stream()
                .filter(head -> head.accidental().isPresent())
                .mapToDouble(head -> -head.accidentalX())
                .reduce(HALF_HEAD, Math::max);
    }

    private List<Head> heads(List<MelodyNote> notes, boolean first, boolean last, boolean up) {
        int count = notes.size();
        int[] places = new int[count];
        boolean[] displaced = new boolean[count];
        List<Optional<Glyph>> signs = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            places[i] = Accidentals.placeOf(notes.get(i).pitch());
            signs.add(
                    first
                            ? accidentals.before(
                                    notes.get(i).pitch(), notes.get(i).tiedBack())
                            : Optional.empty());
        }
        displace(places, displaced, up);
        double[] x = accidentalColumns(places, signs, displaced, up);
        List<Head> written = new ArrayList<>();
        for (int i = 0; i < count; i++)
            written.add(new Head(
                    places[i],
                    displaced[i],
                    signs.get(i),
                    x[i],
                    !first || notes.get(i).tiedBack(),
                    !last || notes.get(i).tiedForward()));
        return List.copyOf(written);
    }

    /** From the stem's foot on, the farther note of a second changes sides. */
    private static void displace(int[] places, boolean[] displaced, boolean up) {
        for (int k = 1; k < places.length; k++) {
            int i = up ? k : places.length - 1 - k;
            int before = up ? i - 1 : i + 1;
            displaced[i] = Math.abs(places[i] - places[before]) <= 1 && !displaced[before];
        }
    }

    /** From the top down, each in the nearest column in which nothing is too near. */
    private static double[] accidentalColumns(
            int[] places, List<Optional<Glyph>> signs, boolean[] displaced, boolean up) {
        double start = -HALF_HEAD - ACCIDENTAL_GAP;
        for (boolean moved : displaced) if (moved && !up) start = -HALF_HEAD - HEAD - ACCIDENTAL_GAP;
        double[] x = new double[places.length];
        List<List<Integer>> columns = new ArrayList<>();
        for (int i = places.length - 1; i >= 0; i--)
            if (signs.get(i).isPresent()) columnFor(i, places, columns).add(i);
        for (List<Integer> column : columns) {
            double width = 0;
            for (int i : column)
                width = Math.max(
                        width, SheetFonts.glyph(signs.get(i).get()).bounds().getWidth());
            for (int i : column)
                x[i] = start - SheetFonts.glyph(signs.get(i).get()).bounds().getWidth();
            start -= width + ACCIDENTAL_GAP;
        }
        return x;
    }

    private static List<Integer> columnFor(int note, int[] places, List<List<Integer>> columns) {
        for (List<Integer> column : columns)
            if (column.stream().allMatch(other -> Math.abs(places[other] - places[note]) >= ACCIDENTAL_HEIGHT))
                return column;
        List<Integer> fresh = new ArrayList<>();
        columns.add(fresh);
        return fresh;
    }
}
