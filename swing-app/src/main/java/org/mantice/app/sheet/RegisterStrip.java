package org.mantice.app.sheet;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.mantice.instrument.RegisterSign;
import org.mantice.instrument.RegisterSwitch;
import org.mantice.performance.Pass;
import org.mantice.plan.VariationPlan.PassDecision;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.WrittenPlace;

/**
 * The register sign, the switch's name and the octave, where a pass begins. A line on which none begins has no such
 * strip.
 */
final class RegisterStrip {
    private static final Lettering NAME = new Lettering(Lettering.Face.PLAIN, 1.6);
    /** Smaller than on the staff, whose sign is 3.125 spaces high (Bravura 1.392). */
    private static final Lettering SIGN = new Lettering(Lettering.Face.MUSIC, 3.3);

    private static final double SIGN_HEIGHT = 3.125 * 3.3 / 4;
    private static final double HEIGHT = 3.3;
    private static final double GAP = 0.5;
    private static final double MARGIN = 0.4;

    private final BandLine line;
    private final List<Item> items = new ArrayList<>();
    private final List<StripRow.Place> spots = new ArrayList<>();
    private final Shelf texts = new Shelf();
    private double x;

    private RegisterStrip(BandLine line) {
        this.line = line;
    }

    /** Which cells of a sheet show a register: those where the shown play enters another pass. */
    static Optional<Integer> passShownAt(PlayedPlan plan, Optional<Cell> lastPlayed, Cell cell) {
        if (cell.played().isEmpty()) return Optional.empty();
        int pass = plan.measure(cell.played().getAsInt()).pass();
        boolean goesOn = lastPlayed.isPresent()
                && plan.measure(lastPlayed.get().played().getAsInt()).pass() == pass;
        return goesOn ? Optional.empty() : Optional.of(pass);
    }

    /** @param shown the pass that each box of the line enters */
    static StripRow lay(BandLine line, List<Optional<Integer>> shown) {
        RegisterStrip strip = new RegisterStrip(line);
        if (shown.stream().allMatch(Optional::isEmpty)) return new StripRow(Strip.REGISTERS, 0, List.of(), List.of());
        for (int i = 0; i < shown.size(); i++) {
            MeasureGrid.Box box = line.line().boxes().get(i);
            double end = strip.nextShown(shown, i);
            shown.get(i).ifPresent(pass -> strip.pass(pass, box, end));
        }
        strip.items.addAll(line.ground(HEIGHT, strip.texts));
        return new StripRow(Strip.REGISTERS, HEIGHT, strip.items, strip.spots);
    }

    private double nextShown(List<Optional<Integer>> shown, int from) {
        for (int i = from + 1; i < shown.size(); i++)
            if (shown.get(i).isPresent()) return line.start(line.line().boxes().get(i));
        return line.right();
    }

    private void pass(int number, MeasureGrid.Box box, double end) {
        double left = line.start(box) + MARGIN;
        PassDecision decision = line.plan().plan().variation().pass(number);
        Pass pass = line.plan().performance().passes().get(number - 1);
        int written = line.plan().measure(pass.firstMeasure()).written();
        Spot spot =
                new Spot(Strip.REGISTERS, pass.firstMeasure(), number, new WrittenPlace(written, MusicalTime.ZERO), 0);
        x = left;
        List<Item> mine = new ArrayList<>();
        marks(mine, spot, end);
        sign(mine, decision, end);
        double from = x;
        word(mine, line.music().register(decision.switchId(), line.accordion()), end);
        if (decision.octave() != 0) word(mine, octave(decision.octave()), end);
        if (line.plan().differs(spot) && x > from) mine.add(Signs.doubleUnderline(from, x - GAP, HEIGHT * 0.8));
        items.addAll(mine);
        texts.take(left, x - GAP);
        spots.add(new StripRow.Place(
                spot, box.index(), MusicalTime.ZERO, new Rectangle2D.Double(left, 0, Math.max(2, x - left), HEIGHT)));
    }

    private void marks(List<Item> mine, Spot spot, double end) {
        if (line.plan().registerGaveWay(spot.pass())) mark(mine, List.of(Signs.caution(x + 0.6, HEIGHT / 2)), end);
        if (line.plan().differs(spot)) mark(mine, List.of(Signs.differs(x + 0.6, HEIGHT / 2)), end);
        if (line.plan().isLocked(spot)) mark(mine, Signs.padlock(x + 0.6, HEIGHT / 2), end);
    }

    private void mark(List<Item> mine, List<Item> sign, double end) {
        if (x + Signs.SIZE > end) return;
        mine.addAll(sign);
        x += Signs.SIZE + GAP;
    }

    private void sign(List<Item> mine, PassDecision decision, double end) {
        Optional<RegisterSign> sign = line.accordion().treble().switches().stream()
                .filter(register -> register.id().equals(decision.switchId()))
                .findFirst()
                .map(RegisterSwitch::sign);
        if (sign.isEmpty() || x + SIGN_HEIGHT > end) return;
        mine.add(Item.Text.at(
                x, (HEIGHT + SIGN_HEIGHT) / 2, Character.toString(sign.get().codePoint()), SIGN, Ink.INK));
        x += SIGN_HEIGHT + GAP;
    }

    private void word(List<Item> mine, String word, double end) {
        if (x + NAME.width(word) > end) return;
        mine.add(Item.Text.at(x, (HEIGHT + NAME.capital()) / 2, word, NAME, Ink.INK));
        x += NAME.width(word) + GAP;
    }

    /** As players write it: 8 or 15 with va up, vb down. */
    static String octave(int octaves) {
        int steps = 7 * Math.abs(octaves) + 1;
        String up = steps == 8 ? "va" : "ma";
        String down = steps == 8 ? "vb" : "mb";
        return steps + (octaves > 0 ? up : down);
    }
}
