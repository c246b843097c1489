package org.mantice.app.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.mantice.app.model.States;
import org.mantice.app.words.MusicWords;
import org.mantice.app.words.Words;
import org.mantice.instrument.BassButton;
import org.mantice.instrument.BassRow;
import org.mantice.plan.BellowsPlan.Direction;
import org.mantice.plan.BellowsPlan.Stroke;

class StripsTest {
    private static final double TOUCH = 1e-6;

    static List<String> tunes() {
        return States.TUNES;
    }

    private static List<BandLine> lines(SheetContent content, double width, Words words) {
        List<BandLine> lines = new ArrayList<>();
        for (PlanBand band : content.bands())
            for (MeasureGrid.Line line : GridSpacing.of(content, width).lines())
                lines.add(new BandLine(
                        new PlayedPlan(content.performance(), band),
                        content.accordion(),
                        line,
                        content.cells(),
                        SheetWords.of(words)));
        return lines;
    }

    private static List<BandLine> lines(String tune, int plans, Reading reading) {
        return lines(PlannedSheets.of(tune, plans, reading), 148, PlannedSheets.ENGLISH);
    }

    private static List<Optional<Integer>> firstPass(BandLine line) {
        List<Optional<Integer>> shown = new ArrayList<>();
        for (int i = 0; i < line.line().boxes().size(); i++) shown.add(i == 0 ? Optional.of(1) : Optional.empty());
        return shown;
    }

    private static Stream<StripRow> rows(BandLine line) {
        return Stream.of(
                FingerStrip.lay(line),
                RegisterStrip.lay(line, firstPass(line)),
                BellowsStrip.lay(line),
                ButtonStrip.lay(line));
    }

    @ParameterizedTest
    @MethodSource("tunes")
    void noTextStandsOnAnother(String tune) {
        SheetContent content = PlannedSheets.of(tune, 4, new Reading.AsWritten());
        for (double width : new double[] {70, 148})
            for (BandLine line : lines(content, width, Words.of(Locale.GERMAN)))
                rows(line).forEach(row -> {
                    List<Item.Text> texts = row.items().stream()
                            .filter(Item.Text.class::isInstance)
                            .map(Item.Text.class::cast)
                            .toList();
                    for (int i = 0; i < texts.size(); i++)
                        for (int j = i + 1; j < texts.size(); j++)
                            assertThat(overlap(
                                            texts.get(i).bounds(), texts.get(j).bounds()))
                                    .as("%s: %s and %s", row.strip(), texts.get(i), texts.get(j))
                                    .isFalse();
                });
    }

    private static boolean overlap(Rectangle2D one, Rectangle2D other) {
        return one.getMinX() < other.getMaxX() - TOUCH
                && other.getMinX() < one.getMaxX() - TOUCH
                && one.getMinY() < other.getMaxY() - TOUCH
                && other.getMinY() < one.getMaxY() - TOUCH;
    }

    @ParameterizedTest
    @MethodSource("tunes")
    void roomsInWhichSpotsArePointedAtDoNotOverlap(String tune) {
        for (BandLine line : lines(tune, 2, new Reading.AsWritten()))
            rows(line).forEach(row -> {
                List<StripRow.Place> places = row.spots();
                for (int i = 0; i < places.size(); i++)
                    for (int j = i + 1; j < places.size(); j++)
                        assertThat(overlap(places.get(i).bounds(), places.get(j).bounds()))
                                .as("%s and %s", places.get(i), places.get(j))
                                .isFalse();
            });
    }

    @ParameterizedTest
    @MethodSource("tunes")
    void whatIsLaidOutKeepsInsideItsStrip(String tune) {
        for (BandLine line : lines(tune, 2, new Reading.AsWritten()))
            rows(line).forEach(row -> assertThat(row.items()).allSatisfy(item -> {
                assertThat(item.bounds().getMinY()).isGreaterThan(-0.3);
                assertThat(item.bounds().getMaxY()).isLessThan(row.height() + 0.3);
            }));
    }

    @ParameterizedTest
    @MethodSource("tunes")
    void theFanIsAsHighAsTheBellowsAreOpenWhereStrokesBeginAndEnd(String tune) {
        int begun = 0;
        int ended = 0;
        List<BandLine> lines = lines(tune, 1, new Reading.AsPlayed());
        for (BandLine line : lines)
            for (Fan.Piece piece : Fan.of(line)) {
                Stroke stroke = piece.stroke();
                if (piece.begins()) {
                    assertThat(piece.millilitresAt(piece.left())).isEqualTo(stroke.startMillilitres());
                    begun++;
                }
                if (piece.ends()) {
                    assertThat(piece.millilitresAt(piece.right())).isEqualTo(stroke.endMillilitres());
                    ended++;
                }
            }
        int strokes = lines.get(0).plan().strokes().size();
        assertThat(begun).isEqualTo(strokes);
        assertThat(ended).isEqualTo(strokes);
    }

    @ParameterizedTest
    @MethodSource("tunes")
    void theFanOnlyGrowsInStrokesOutAndOnlyShrinksInStrokesIn(String tune) {
        for (BandLine line : lines(tune, 2, new Reading.AsWritten()))
            for (Fan.Piece piece : Fan.of(line))
                for (int i = 1; i < piece.top().size(); i++) {
                    double step = piece.top().get(i).millilitres()
                            - piece.top().get(i - 1).millilitres();
                    assertThat(piece.top().get(i).x())
                            .isGreaterThanOrEqualTo(piece.top().get(i - 1).x());
                    assertThat(piece.stroke().direction() == Direction.OUT ? step : -step)
                            .isGreaterThan(-1e-6);
                }
    }

    @ParameterizedTest
    @MethodSource("tunes")
    void theFanGoesOnWithoutAStepUnlessThePlayJumps(String tune) {
        for (BandLine line : lines(tune, 1, new Reading.AsWritten())) {
            List<Fan.Piece> pieces = Fan.of(line);
            for (int i = 1; i < pieces.size(); i++) {
                Fan.Piece before = pieces.get(i - 1);
                Fan.Piece here = pieces.get(i);
                if (here.tornLeft()) {
                    assertThat(here.left()).isGreaterThan(before.right() + 0.5);
                    assertThat(before.tornRight()).isTrue();
                } else {
                    assertThat(here.left()).isEqualTo(before.right(), within(TOUCH));
                    assertThat(here.millilitresAt(here.left()))
                            .isEqualTo(before.millilitresAt(before.right()), within(TOUCH));
                }
            }
        }
    }

    @Test
    void repeatsTearTheFan() {
        assertThat(lines("seven-geese-in-the-schoolyard", 1, new Reading.AsWritten()))
                .flatExtracting(Fan::of)
                .anyMatch(Fan.Piece::tornRight)
                .anyMatch(Fan.Piece::tornLeft);
        assertThat(lines("seven-geese-in-the-schoolyard", 1, new Reading.AsPlayed()))
                .flatExtracting(Fan::of)
                .noneMatch(Fan.Piece::tornRight)
                .noneMatch(Fan.Piece::tornLeft);
    }

    @Test
    void theFanIsScaledToTheFullOpening() {
        assertThat(BellowsStrip.yOf(0, 8000)).isEqualTo(BellowsStrip.WORDS + BellowsStrip.FAN);
        assertThat(BellowsStrip.yOf(4000, 8000)).isEqualTo(BellowsStrip.WORDS + BellowsStrip.FAN / 2);
        assertThat(BellowsStrip.yOf(8000, 8000)).isEqualTo(BellowsStrip.WORDS);
    }

    @ParameterizedTest
    @CsvSource({"en, out, in", "de, auf, zu"})
    void strokesSayTheirDirectionInTheLanguage(String language, String out, String in) {
        SheetContent content = PlannedSheets.of("fog-over-grebe-holm", 1, new Reading.AsPlayed());

        List<String> texts = lines(content, 148, Words.of(Locale.forLanguageTag(language))).stream()
                .flatMap(line -> BellowsStrip.lay(line).items().stream())
                .filter(Item.Text.class::isInstance)
                .map(item -> ((Item.Text) item).text().replaceAll("[()]", ""))
                .toList();

        assertThat(texts).containsOnly(out, in);
    }

    @ParameterizedTest
    @CsvSource({
        "BASS, 0, C",
        "COUNTERBASS, 0, E",
        "MAJOR, 1, GM",
        "MINOR, 2, Dm",
        "SEVENTH, -1, F7",
        "DIMINISHED, -2, B♭d"
    })
    void buttonsAreLettersAsTheTradeWritesThem(BassRow row, int column, String letters) {
        assertThat(PressLetters.letters(new BassButton(row, column), new MusicWords(PlannedSheets.ENGLISH)))
                .isEqualTo(letters);
    }

    @ParameterizedTest
    @MethodSource("tunes")
    void everyButtonAndEveryNewFingerOfTheBassesHasRoom(String tune) {
        SheetContent content = PlannedSheets.of(tune, 3, new Reading.AsPlayed());

        SheetLayout layout = new SheetLayout(content, PlannedSheets.ENGLISH, 148);

        for (PlanBand band : content.bands()) {
            PlayedPlan plan = new PlayedPlan(content.performance(), band);
            for (MeasureGrid.Line line : layout.grid().lines())
                for (MeasureGrid.Box box : line.boxes()) {
                    List<ButtonStrip.Press> presses = plan
                            .presses(box.cell().played().orElseThrow())
                            .stream()
                            .map(event -> new ButtonStrip.Press(
                                    event, box.index(), box.xOf(event.place().offset()), box.right()))
                            .toList();
                    List<PressLetters.Entry> entries = PressLetters.of(
                            presses, PressLetters.Detail.FINGERS_ONCE, new MusicWords(PlannedSheets.ENGLISH));
                    for (int i = 0; i < entries.size(); i++)
                        for (PressLetters.Entry other : entries.subList(0, i))
                            if (other.lane() == entries.get(i).lane())
                                assertThat(entries.get(i).left()).isGreaterThan(other.right());
                }
        }
    }

    @Test
    void everyPressHasALetterOrADotWhereThereIsRoom() {
        for (BandLine line : lines("the-ropewalk-march", 1, new Reading.AsWritten())) {
            StripRow row = ButtonStrip.lay(line);
            long texts =
                    row.items().stream().filter(Item.Text.class::isInstance).count();
            assertThat(texts).isGreaterThanOrEqualTo(row.spots().size());
        }
    }

    @ParameterizedTest
    @CsvSource({"1, 8va", "-1, 8vb", "2, 15ma", "-2, 15mb"})
    void octavesAreWrittenAsPlayersWriteThem(int octaves, String written) {
        assertThat(RegisterStrip.octave(octaves)).isEqualTo(written);
    }
}
