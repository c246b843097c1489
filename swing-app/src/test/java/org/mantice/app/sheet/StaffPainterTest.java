package org.mantice.app.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.mantice.app.words.Words;
import org.mantice.tune.Barlines;
import org.mantice.tune.ChordKind;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.Key;
import org.mantice.tune.Measure;
import org.mantice.tune.MelodyEvent;
import org.mantice.tune.Meter;
import org.mantice.tune.NoteName;
import org.mantice.tune.Pitch;
import org.mantice.tune.PlacedChord;
import org.mantice.tune.Step;

/** Paints staves and looks at the ink. */
class StaffPainterTest {
    private static final int SPACE = 20;

    private static SheetContent scale() {
        List<MelodyEvent> events = new ArrayList<>();
        for (int i = 0; i < 14; i++)
            events.add(MelodyEvent.note(
                    Sheets.time(i, 4), Sheets.time(1, 4), Pitch.of(Step.values()[i % 7], 0, 4 + i / 7)));
        return Sheets.bare(Sheets.measure(Meter.of(14, 4), Key.C_MAJOR, events.toArray(MelodyEvent[]::new)));
    }

    @Test
    void staffHasFiveLinesOneSpaceApart() {
        PaintedLine line = PaintedLine.of(scale(), 0, 100, SPACE);

        List<Integer> rows = line.rows(3, PaintedLine.FAINT);

        assertThat(rows).hasSizeBetween(5, 15);
        int thickness = rows.size() / 5;
        for (int i = 0; i < 5; i++)
            for (int dot = 0; dot < thickness; dot++) {
                int middle = line.y(i) - thickness / 2;
                assertThat(rows.get(i * thickness + dot)).isBetween(middle + dot - 1, middle + dot + 1);
            }
    }

    @Test
    void notesOfAScaleLieHalfASpaceApartFromMiddleCUp() {
        SheetContent content = scale();
        MeasureGrid.Box box =
                GridSpacing.of(content, 100).lines().get(0).boxes().get(0);
        PaintedLine line = PaintedLine.of(content, 0, 100, SPACE);

        for (int i = 0; i < 14; i++) {
            double place = i - 2;
            double y = (8 - place) / 2;
            int x = (int) Math.round(box.xOf(Sheets.time(i, 4)) * SPACE);
            assertThat(line.isInk(x, line.y(y))).as("head of note %d", i).isTrue();
            assertThat(line.isInk(x, line.y(y - 0.8))).as("above note %d", i).isFalse();
            assertThat(line.isInk(x, line.y(y + 0.8))).as("below note %d", i).isFalse();
        }
    }

    static Stream<SheetContent> sheets() {
        Stream<SheetContent> examples = Sheets.examples().stream()
                .flatMap(file -> Stream.of(new Reading.AsWritten(), new Reading.AsPlayed(), new Reading.OneSweep(1))
                        .map(reading -> Sheets.bare(file, reading)));
        Stream<SheetContent> random = IntStream.range(100, 120)
                .mapToObj(seed -> Sheets.bare(Sheets.random(seed, 16), new Reading.AsWritten()));
        return Stream.concat(examples, random);
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void allInkLiesWithinTheHeightsThatThePainterTells(SheetContent content) {
        int lines = GridSpacing.of(content, 110).lines().size();

        for (int i = 0; i < lines; i++) {
            PaintedLine line = PaintedLine.of(content, i, 110, 8);

            assertThat(line.hasInkOutside()).as("line %d", i).isFalse();
        }
    }

    @Test
    void measureThatIsNotPlayedIsFaint() {
        SheetContent played = scale();
        SheetContent silent = new SheetContent(
                played.performance(),
                played.accordion(),
                List.of(new Cell(0, OptionalInt.empty())),
                List.of(),
                played.strips(),
                played.pointing());
        MeasureGrid.Box box = GridSpacing.of(played, 100).lines().get(0).boxes().get(0);
        int x = (int) Math.round(box.xOf(Sheets.time(9, 4)) * SPACE);

        PaintedLine line = PaintedLine.of(silent, 0, 100, SPACE);

        assertThat(line.colour(x, line.y(0.5))).isEqualTo(PaintedLine.FAINT);
        assertThat(PaintedLine.of(played, 0, 100, SPACE).colour(x, line.y(0.5))).isEqualTo(Color.BLACK);
    }

    @Test
    void chordSymbolsStandHigherWhereAHighNoteIsUnderOneOfThem() {
        PlacedChord first =
                new PlacedChord(Sheets.time(0, 1), ChordSymbol.of(new NoteName(Step.C, 0), ChordKind.MAJOR));
        PlacedChord third = new PlacedChord(Sheets.time(1, 2), first.symbol());

        double away = painter(withHighThirdNote(first)).above(0);
        double over = painter(withHighThirdNote(first, third)).above(0);

        assertThat(over).isGreaterThan(away + 1.5);
    }

    @Test
    void anAlternateStandsBehindItsChordAndOneThatMayBeLeftOutInBrackets() {
        ChordSymbol g = ChordSymbol.of(new NoteName(Step.G, 0), ChordKind.MAJOR);
        ChordSymbol em = ChordSymbol.of(new NoteName(Step.E, 0), ChordKind.MINOR);
        PlacedChord plain = new PlacedChord(Sheets.time(0, 1), g);
        PlacedChord optional = new PlacedChord(Sheets.time(0, 1), g, Optional.empty(), true, false);

        double width = ChordText.outline(plain).bounds().getMaxX();
        double both = ChordText.outline(plain.withAlternate(em)).bounds().getMaxX();
        double whole = width
                + ChordText.outline(new PlacedChord(Sheets.time(0, 1), em))
                        .bounds()
                        .getMaxX();

        assertThat(both).isGreaterThan(width + 1).isLessThan(whole + 1);
        assertThat(ChordText.outline(optional).bounds().getMaxX()).isGreaterThan(width + 0.5);
        assertThat(GridSpacing.of(withHighThirdNote(plain.withAlternate(em)), 100)
                        .lines())
                .hasSize(1);
    }

    private static StaffPainter painter(SheetContent content) {
        return new StaffPainter(content, GridSpacing.of(content, 100), Words.of(Locale.ENGLISH));
    }

    private static SheetContent withHighThirdNote(PlacedChord... chords) {
        List<MelodyEvent> events = new ArrayList<>();
        for (int i = 0; i < 4; i++)
            events.add(MelodyEvent.note(Sheets.time(i, 4), Sheets.time(1, 4), Pitch.of(Step.D, 0, i == 2 ? 6 : 5)));
        return Sheets.bare(new Measure(
                "1",
                Sheets.time(1, 1),
                Meter.of(4, 4),
                Key.C_MAJOR,
                false,
                events,
                List.of(chords),
                List.of(),
                List.of(),
                Barlines.PLAIN));
    }

    @Test
    void paintingLeavesTheGraphicsAsItWas() {
        var image = new java.awt.image.BufferedImage(400, 200, java.awt.image.BufferedImage.TYPE_INT_RGB);
        var graphics = image.createGraphics();
        graphics.translate(3, 5);
        graphics.setColor(Color.PINK);
        var hints = graphics.getRenderingHints();
        SheetContent content = scale();

        new StaffPainter(content, GridSpacing.of(content, 100), Words.of(Locale.ENGLISH))
                .paint(graphics, 0, 80, 4, PaintedLine.COLOURS);

        assertThat(graphics.getTransform()).isEqualTo(java.awt.geom.AffineTransform.getTranslateInstance(3, 5));
        assertThat(graphics.getColor()).isEqualTo(Color.PINK);
        assertThat(graphics.getRenderingHints()).isEqualTo(hints);
        graphics.dispose();
    }

    @Test
    void germanSheetSaysThatTheTempoIsAssumedInItsOwnWords() {
        SheetContent content = scale();

        PaintedLine english = PaintedLine.of(content, 0, 100, SPACE, Locale.ENGLISH);
        PaintedLine german = PaintedLine.of(content, 0, 100, SPACE, Locale.GERMAN);

        assertThat(german.rightmostInkAbove(-2)).isGreaterThan(english.rightmostInkAbove(-2));
    }
}
