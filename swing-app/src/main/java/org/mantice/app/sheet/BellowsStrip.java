package org.mantice.app.sheet;

import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.mantice.plan.BellowsPlan.Direction;
import org.mantice.plan.Concession;
import org.mantice.plan.Lock;
import org.mantice.tune.MelodyEvent;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.WrittenPlace;

/**
 * The bellows: a fan as high as they are open, with pleats, a fold at each turn, and the word for each stroke. Every
 * written onset can be pointed at, for at each of them the bellows turn or might turn.
 */
final class BellowsStrip {
    /** Height of the row of words and signs. */
    static final double WORDS = 2;
    /** Height of the fan at full opening. */
    static final double FAN = 4.6;

    static final double HEIGHT = WORDS + FAN + 0.4;
    private static final Lettering WORD = new Lettering(Lettering.Face.PLAIN, 1.55);
    private static final double BASE = WORDS + FAN;
    private static final double MIDDLE = WORDS / 2;
    private static final double ARROW = 1.9;
    private static final double GAP = 0.3;

    private final BandLine line;
    private final List<Fan.Piece> pieces;
    private final List<Item> items = new ArrayList<>();
    private final List<StripRow.Place> spots = new ArrayList<>();
    private final Shelf words = new Shelf();

    private BellowsStrip(BandLine line) {
        this.line = line;
        this.pieces = Fan.of(line);
    }

    static StripRow lay(BandLine line) {
        BellowsStrip strip = new BellowsStrip(line);
        strip.items.addAll(line.ground(HEIGHT));
        strip.scale();
        for (Fan.Piece piece : strip.pieces) strip.piece(piece);
        for (MeasureGrid.Box box : line.line().boxes())
            box.cell().played().ifPresent(played -> strip.places(box, played));
        for (Fan.Piece piece : strip.pieces) strip.word(piece);
        return new StripRow(Strip.BELLOWS, HEIGHT, strip.items, strip.spots);
    }

    /** @param millilitres air in the bellows */
    static double yOf(double millilitres, int fullMillilitres) {
        return BASE - FAN * Math.max(0, Math.min(1, millilitres / fullMillilitres));
    }

    private double yOf(double millilitres) {
        return yOf(millilitres, line.accordion().bellows().fullMillilitres());
    }

    /** Lines at closed, comfortable and full opening. */
    private void scale() {
        double comfortable = yOf(line.accordion().bellows().comfortableMillilitres());
        double left = line.left();
        double right = line.right();
        items.add(Item.Drawn.dashed(Signs.open(left, WORDS, right, WORDS), Ink.FAINT, 0.08, 0.25));
        items.add(Item.Drawn.dashed(Signs.open(left, comfortable, right, comfortable), Ink.FAINT, 0.12, 0.8));
        items.add(Item.Lines.of(List.of(new Line2D.Double(left, BASE, right, BASE)), Ink.INK, 0.1));
    }

    private void piece(Fan.Piece piece) {
        boolean out = piece.stroke().direction() == Direction.OUT;
        Path2D area = new Path2D.Double();
        area.moveTo(piece.left(), BASE);
        for (Fan.Point point : piece.top()) area.lineTo(point.x(), yOf(point.millilitres()));
        area.lineTo(piece.right(), BASE);
        area.closePath();
        items.add(Item.Filled.of(area, out ? Ink.OUT : Ink.IN));
        List<Line2D> pleats = Pleats.of(piece, out, BASE, this::yOf);
        if (!pleats.isEmpty()) items.add(Item.Lines.of(pleats, Ink.ON_FAN, Pleats.THICKNESS));
        items.add(Item.Drawn.of(edge(piece), Ink.INK, 0.12));
        overComfort(piece);
        if (piece.begins() && piece.stroke().index() > 0) items.add(Signs.fold(piece.left(), WORDS - 0.1, BASE));
        if (piece.tornLeft()) items.add(Signs.tear(piece.left() - 0.35, BASE));
        if (piece.tornRight()) items.add(Signs.tear(piece.right() + 0.35, BASE));
    }

    private Path2D edge(Fan.Piece piece) {
        Path2D edge = new Path2D.Double();
        edge.moveTo(piece.left(), yOf(piece.top().get(0).millilitres()));
        for (Fan.Point point : piece.top()) edge.lineTo(point.x(), yOf(point.millilitres()));
        return edge;
    }

    /** The comfortable line where the fan covers it. */
    private void overComfort(Fan.Piece piece) {
        double comfortable = line.accordion().bellows().comfortableMillilitres();
        Path2D path = new Path2D.Double();
        for (int i = 1; i < piece.top().size(); i++) {
            Fan.Point from = piece.top().get(i - 1);
            Fan.Point to = piece.top().get(i);
            double rise = to.millilitres() - from.millilitres();
            boolean over = from.millilitres() > comfortable;
            if (!over && to.millilitres() <= comfortable) continue;
            double crossing =
                    rise == 0 ? from.x() : from.x() + (to.x() - from.x()) * (comfortable - from.millilitres()) / rise;
            path.moveTo(over ? from.x() : crossing, yOf(comfortable));
            path.lineTo(over && to.millilitres() < comfortable ? crossing : to.x(), yOf(comfortable));
        }
        if (path.getCurrentPoint() != null) items.add(Item.Drawn.of(path, Ink.ON_FAN, 0.16));
    }

    private void places(MeasureGrid.Box box, int played) {
        int pass = line.plan().measure(played).pass();
        List<MusicalTime> offsets = List.copyOf(offsets(box, played, pass));
        for (int i = 0; i < offsets.size(); i++) {
            MusicalTime offset = offsets.get(i);
            double left = line.justBefore(box, offset);
            double right = i + 1 < offsets.size() ? line.justBefore(box, offsets.get(i + 1)) : box.right();
            WrittenPlace place = new WrittenPlace(box.cell().written(), offset);
            Spot spot = new Spot(Strip.BELLOWS, played, pass, place, 0);
            if (left < right)
                spots.add(new StripRow.Place(
                        spot, box.index(), offset, new Rectangle2D.Double(left, 0, right - left, HEIGHT)));
            marks(spot, left + GAP);
        }
    }

    /** The barline, every written onset, and wherever something was decided. */
    private TreeSet<MusicalTime> offsets(MeasureGrid.Box box, int played, int pass) {
        int written = box.cell().written();
        TreeSet<MusicalTime> offsets = new TreeSet<>();
        offsets.add(MusicalTime.ZERO);
        for (MelodyEvent event :
                line.plan().performance().tune().measure(written).melody()) offsets.add(event.offset());
        line.plan().strokes().stream()
                .filter(stroke -> stroke.measure() == played)
                .forEach(stroke -> offsets.add(stroke.place().offset()));
        line.plan().band().differing().stream()
                .filter(spot -> spot.strip() == Strip.BELLOWS && spot.measure() == played)
                .forEach(spot -> offsets.add(spot.place().offset()));
        for (Concession concession : line.plan().plan().bellows().concessions())
            if (concession.pass() == pass && concession.place().measure() == written)
                offsets.add(concession.place().offset());
        for (Lock lock : line.plan().band().locks())
            if (lock instanceof Lock.Turn turn
                    && turn.appliesTo(pass)
                    && turn.place().measure() == written)
                offsets.add(turn.place().offset());
        return offsets;
    }

    private void marks(Spot spot, double left) {
        double x = left;
        if (PlayedPlan.gaveWay(line.plan().plan().bellows(), spot.pass(), spot.place()) && words.take(x, x + 1.44)) {
            items.add(Signs.caution(x + 0.72, MIDDLE));
            x += 1.44 + GAP;
        }
        if (line.plan().differs(spot) && words.take(x, x + Signs.SIZE)) {
            items.add(Signs.differs(x + Signs.SIZE / 2, MIDDLE));
            x += Signs.SIZE + GAP;
        }
        if (line.plan().isLocked(spot) && words.take(x, x + Signs.SIZE))
            items.addAll(Signs.padlock(x + Signs.SIZE / 2, MIDDLE));
    }

    /** The arrow and the word where the stroke begins; the word in brackets where it goes on from elsewhere. */
    private void word(Fan.Piece piece) {
        boolean out = piece.stroke().direction() == Direction.OUT;
        String word = line.music().direction(piece.stroke().direction());
        double right = piece.right() - GAP;
        if (!piece.begins()) {
            firstFree(piece.left() + GAP, right, WORD.width("(" + word + ")"))
                    .ifPresent(x -> write("(" + word + ")", x));
            return;
        }
        Optional<Double> whole = firstFree(piece.left() + GAP * 2, right, ARROW + GAP + WORD.width(word));
        if (whole.isPresent()) {
            items.add(Signs.stroke(out, whole.get() + ARROW / 2, MIDDLE));
            write(word, whole.get() + ARROW + GAP);
            return;
        }
        firstFree(piece.left() + GAP, piece.right(), WORD.width(word)).ifPresent(x -> write(word, x));
    }

    /** The leftmost free room near the beginning of a stroke: behind the marks of its turn. */
    private Optional<Double> firstFree(double from, double to, double width) {
        for (double x = from; x + width <= to && x < from + 6; x += 0.2)
            if (words.take(x, x + width)) return Optional.of(x);
        return Optional.empty();
    }

    private void write(String word, double x) {
        items.add(Item.Text.at(x, MIDDLE + WORD.capital() / 2, word, WORD, Ink.INK));
    }
}
