package org.mantice.app.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Rectangle;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.mantice.app.model.States;
import org.mantice.app.sheet.SheetPainter.Target;
import org.mantice.performance.Pass;
import org.mantice.performance.Performance;
import org.mantice.plan.BellowsPlan;
import org.mantice.plan.LeftHandPlan;
import org.mantice.plan.Lock;
import org.mantice.plan.Plan;
import org.mantice.plan.RightHandPlan;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.WrittenPlace;

class SheetPainterTest {
    private static final Reading AS_WRITTEN = new Reading.AsWritten();
    private static final Reading AS_PLAYED = new Reading.AsPlayed();

    static List<String> tunes() {
        return States.TUNES;
    }

    @ParameterizedTest
    @MethodSource("tunes")
    void whatIsPointedAtAtTheMiddleOfATargetIsThatTarget(String tune) {
        SheetPainter painter = PlannedSheets.painter(PlannedSheets.of(tune, 2, AS_WRITTEN));

        assertThat(painter.targets(0)).hasSizeGreaterThan(50);
        for (int band = 0; band < 2; band++)
            for (Target target : painter.targets(band))
                assertThat(painter.targetAt(
                                target.bounds().getCenterX(), target.bounds().getCenterY()))
                        .contains(target);
    }

    @ParameterizedTest
    @MethodSource("tunes")
    void everyDecisionCanBePointedAtWhereTheSheetShowsAllThatIsPlayed(String tune) {
        SheetContent content = PlannedSheets.of(tune, 4, AS_PLAYED);
        SheetPainter painter = PlannedSheets.painter(content);

        for (int band = 0; band < content.bands().size(); band++) {
            Plan plan = content.bands().get(band).plan();
            assertThat(painter.targets(band)).extracting(Target::spot).containsAll(spots(plan, content.performance()));
        }
    }

    private static Set<Spot> spots(Plan plan, Performance performance) {
        Set<Spot> spots = new HashSet<>();
        for (RightHandPlan.Event event : plan.rightHand().events())
            for (int part = 0; part < event.fingers().size(); part++)
                spots.add(new Spot(
                        Strip.FINGERS,
                        performance.treble().get(event.moment()).measure(),
                        event.pass(),
                        event.place(),
                        part));
        for (LeftHandPlan.Event event : plan.leftHand().events())
            spots.add(new Spot(Strip.BUTTONS, event.measure(), event.pass(), event.place(), 0));
        for (BellowsPlan.Stroke stroke : plan.bellows().strokes())
            spots.add(new Spot(Strip.BELLOWS, stroke.measure(), stroke.pass(), stroke.place(), 0));
        for (Pass pass : performance.passes())
            spots.add(new Spot(
                    Strip.REGISTERS,
                    pass.firstMeasure(),
                    pass.number(),
                    new WrittenPlace(
                            performance.measures().get(pass.firstMeasure()).written(), MusicalTime.ZERO),
                    0));
        return spots;
    }

    @ParameterizedTest
    @MethodSource("tunes")
    void plansHaveOneMomentAtOneX(String tune) {
        SheetContent content = PlannedSheets.of(tune, 4, AS_WRITTEN);
        SheetPainter painter = PlannedSheets.painter(content);
        List<Target> first = fingers(painter, 0);

        for (int band = 1; band < content.bands().size(); band++) {
            List<Target> others = fingers(painter, band);
            assertThat(others)
                    .extracting(Target::spot)
                    .isEqualTo(first.stream().map(Target::spot).toList());
            for (int i = 0; i < first.size(); i++)
                assertThat(others.get(i).bounds().getCenterX())
                        .isEqualTo(first.get(i).bounds().getCenterX(), within(1e-9));
        }
    }

    private static List<Target> fingers(SheetPainter painter, int band) {
        return painter.targets(band).stream()
                .filter(target -> target.spot().strip() == Strip.FINGERS)
                .toList();
    }

    @Test
    void targetsComeInOrderOfPlayAndFromTopToBottom() {
        SheetContent content = PlannedSheets.of("fog-over-grebe-holm", 1, AS_PLAYED);
        List<Target> targets = PlannedSheets.painter(content).targets(0);

        for (int i = 1; i < targets.size(); i++) {
            Spot before = targets.get(i - 1).spot();
            Spot here = targets.get(i).spot();
            int byTime = before.measure() != here.measure()
                    ? Integer.compare(before.measure(), here.measure())
                    : before.place().compareTo(here.place());
            assertThat(byTime).isNotPositive();
            if (byTime == 0) assertThat(before.strip()).isLessThanOrEqualTo(here.strip());
        }
    }

    @Test
    void aHiddenStripTakesNoRoomAndHasNoTargets() {
        double all = PlannedSheets.painter(PlannedSheets.of("the-rusty-gate", 2, AS_WRITTEN))
                .height();

        for (Strip strip : Strip.values()) {
            Set<Strip> others = EnumSet.complementOf(EnumSet.of(strip));
            SheetPainter painter =
                    PlannedSheets.painter(PlannedSheets.of("the-rusty-gate", 2, AS_WRITTEN, others, List.of()));
            assertThat(painter.height()).isLessThan(all);
            assertThat(painter.targets(0)).noneMatch(target -> target.spot().strip() == strip);
        }
    }

    @Test
    void withoutStripsTheSheetIsAsHighAsTheBareStaff() {
        SheetContent none = PlannedSheets.of("the-rusty-gate", 2, AS_WRITTEN, Set.of(), List.of());
        SheetContent bare = PlannedSheets.of("the-rusty-gate", 0, AS_WRITTEN);

        assertThat(PlannedSheets.painter(none).height())
                .isEqualTo(PlannedSheets.painter(bare).height());
    }

    @ParameterizedTest
    @MethodSource("tunes")
    void measuresThatAreNotPlayedInWhatIsShownHaveNoTargets(String tune) {
        int last = Reading.sweeps(States.of(tune).planning().performance()).size() - 1;
        SheetContent content = PlannedSheets.of(tune, 1, new Reading.OneSweep(last));
        SheetPainter painter = PlannedSheets.painter(content);

        for (int cell = 0; cell < content.cells().size(); cell++) {
            if (content.cells().get(cell).played().isPresent()) continue;
            Rectangle2D bounds = painter.boundsOfCell(cell);
            assertThat(painter.targets(0))
                    .noneMatch(target -> bounds.contains(
                            target.bounds().getCenterX(), target.bounds().getCenterY()));
        }
    }

    @Test
    void theSameSheetGivesTheSamePixels() {
        SheetContent content = PlannedSheets.of("seven-geese-in-the-schoolyard", 2, AS_WRITTEN);

        BufferedImage one = PlannedSheets.picture(PlannedSheets.painter(content));
        BufferedImage other = PlannedSheets.picture(PlannedSheets.painter(content));

        assertThat(pixels(one)).isEqualTo(pixels(other));
    }

    @Test
    void aPartOfTheSheetIsPaintedAsInTheWhole() {
        SheetPainter painter = PlannedSheets.painter(PlannedSheets.of("seven-geese-in-the-schoolyard", 2, AS_WRITTEN));
        BufferedImage whole = PlannedSheets.picture(painter);
        Rectangle part = new Rectangle(310, 170, 240, 190);
        BufferedImage alone = new BufferedImage(whole.getWidth(), whole.getHeight(), BufferedImage.TYPE_INT_RGB);

        painter.paint(alone.createGraphics(), PlannedSheets.COLOURS, part);

        assertThat(pixels(alone.getSubimage(part.x, part.y, part.width, part.height)))
                .isEqualTo(pixels(whole.getSubimage(part.x, part.y, part.width, part.height)));
        assertThat(alone.getRGB(0, 0) & 0xffffff).isZero();
    }

    @Test
    void paintingALittleTakesLittleWork() {
        SheetPainter painter = PlannedSheets.painter(PlannedSheets.of("fog-over-grebe-holm", 4, AS_PLAYED));
        BufferedImage image = new BufferedImage(1200, (int) painter.height(), BufferedImage.TYPE_INT_RGB);
        Target target = painter.targets(3).get(painter.targets(3).size() / 2);

        int all = painter.paintCounting(
                image.createGraphics(), PlannedSheets.COLOURS, new Rectangle(0, 0, 1200, image.getHeight()));
        int one = painter.paintCounting(
                image.createGraphics(), PlannedSheets.COLOURS, target.bounds().getBounds());

        assertThat(all).isGreaterThan(2000);
        assertThat(one).isBetween(1, 60);
    }

    @Test
    void workGrowsWithTheDecisionsAndNoFaster() {
        SheetContent content = PlannedSheets.of("fog-over-grebe-holm", 4, AS_PLAYED);
        SheetPainter painter = PlannedSheets.painter(content);
        BufferedImage image = new BufferedImage(1200, (int) painter.height(), BufferedImage.TYPE_INT_RGB);
        int decisions = content.bands().stream()
                .mapToInt(band -> band.plan().decisions().size())
                .sum();

        int painted = painter.paintCounting(
                image.createGraphics(), PlannedSheets.COLOURS, new Rectangle(0, 0, 1200, image.getHeight()));

        assertThat(painted).isLessThan(5 * decisions);
    }

    @Test
    void whatIsSelectedHasAFrameOfTwoPixels() {
        SheetPainter painter = PlannedSheets.painter(PlannedSheets.of("the-rusty-gate", 2, AS_WRITTEN));
        Target target = painter.targets(1).stream()
                .filter(one -> one.spot().strip() == Strip.BUTTONS)
                .skip(3)
                .findFirst()
                .orElseThrow();

        SheetPainter pointing =
                painter.pointing(new Pointing(1, Optional.of(target.spot()), Optional.empty(), Optional.empty()));

        BufferedImage image = PlannedSheets.picture(pointing);
        int y = (int) target.bounds().getCenterY();
        int thick = 0;
        for (int x = (int) target.bounds().getX() - 4; x < target.bounds().getX() + 4; x++)
            if ((image.getRGB(x, y) & 0xffffff) == 0x0000ff) thick++;
        assertThat(thick).isGreaterThanOrEqualTo(1);
        assertThat(count(image, 0x0000ff)).isGreaterThan((int)
                (2 * (target.bounds().getWidth() + target.bounds().getHeight())));
        assertThat(count(PlannedSheets.picture(painter), 0x0000ff)).isZero();
    }

    @Test
    void theDifferenceSteppedToIsMarkedInEveryPlan() {
        SheetPainter painter = PlannedSheets.painter(PlannedSheets.of("the-rusty-gate", 2, AS_WRITTEN));
        Spot spot = painter.targets(0).get(5).spot();

        BufferedImage before = PlannedSheets.picture(painter);
        BufferedImage image = PlannedSheets.picture(
                painter.pointing(new Pointing(-1, Optional.empty(), Optional.of(spot), Optional.empty())));

        for (int band = 0; band < 2; band++) {
            Rectangle around = painter.boundsOf(band, spot).orElseThrow().getBounds();
            around.grow(6, 6);
            assertThat(count(cut(image, around), 0xa00060)).isGreaterThan(count(cut(before, around), 0xa00060) + 20);
        }
    }

    @Test
    void lockedDecisionsHaveAPadlock() {
        WrittenPlace place = new WrittenPlace(2, MusicalTime.ZERO);
        List<Lock> locks = List.of(
                new Lock.Finger(OptionalInt.empty(), place, 0, 3), new Lock.Turn(OptionalInt.empty(), place, false));

        SheetContent open = PlannedSheets.of("the-rusty-gate", 1, AS_WRITTEN);
        SheetContent locked = PlannedSheets.of("the-rusty-gate", 1, AS_WRITTEN, PlannedSheets.ALL, locks);

        assertThat(count(PlannedSheets.picture(PlannedSheets.painter(open)), 0x404080))
                .isZero();
        assertThat(count(PlannedSheets.picture(PlannedSheets.painter(locked)), 0x404080))
                .isGreaterThan(30);
    }

    @Test
    void titleAndMarginAreTheHeadOfTheirBand() {
        SheetPainter painter = PlannedSheets.painter(PlannedSheets.of("the-rusty-gate", 2, AS_WRITTEN));
        Rectangle2D second = painter.targets(1).get(0).bounds();

        assertThat(painter.headAt(30, second.getY() - 12)).hasValue(1);
        assertThat(painter.headAt(12, second.getCenterY())).hasValue(1);
        assertThat(painter.headAt(second.getCenterX(), second.getCenterY())).isEmpty();
        assertThat(painter.headAt(30, 4)).isEmpty();
    }

    /** WCAG 2.2, success criterion 2.5.8, asks for 24 pixels or as much room around; where notes stand close, less. */
    @ParameterizedTest
    @MethodSource("tunes")
    void targetsAreSixteenPixelsHighAndAsWideAsTheNotesStandApart(String tune) {
        SheetPainter painter = PlannedSheets.painter(PlannedSheets.of(tune, 1, AS_WRITTEN));
        List<Target> targets = painter.targets(0);

        assertThat(targets).allSatisfy(target -> {
            assertThat(target.bounds().getHeight()).isGreaterThanOrEqualTo(16 - 1e-9);
            assertThat(target.bounds().getWidth()).isGreaterThan(8);
        });
        long wide = targets.stream()
                .filter(target -> target.bounds().getWidth() >= 16 - 1e-9)
                .count();
        assertThat(wide).isGreaterThan(targets.size() * 95L / 100);
    }

    private static BufferedImage cut(BufferedImage image, Rectangle part) {
        Rectangle inside = part.intersection(new Rectangle(0, 0, image.getWidth(), image.getHeight()));
        return image.getSubimage(inside.x, inside.y, inside.width, inside.height);
    }

    private static int[] pixels(BufferedImage image) {
        return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    }

    private static int count(BufferedImage image, int colour) {
        return (int) java.util.Arrays.stream(pixels(image))
                .filter(pixel -> (pixel & 0xffffff) == colour)
                .count();
    }
}
