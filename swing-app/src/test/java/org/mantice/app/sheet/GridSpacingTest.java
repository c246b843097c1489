package org.mantice.app.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.mantice.app.sheet.Sheets.measure;
import static org.mantice.app.sheet.Sheets.time;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.mantice.tune.Key;
import org.mantice.tune.Lyric;
import org.mantice.tune.MelodyEvent;
import org.mantice.tune.Meter;
import org.mantice.tune.Pitch;
import org.mantice.tune.PlacedChord;
import org.mantice.tune.Step;

/** Spaces of the measure grid. */
class GridSpacingTest {
    private static final double EXACTNESS = 1e-6;

    static Stream<SheetContent> sheets() {
        Stream<SheetContent> examples = Sheets.examples().stream()
                .flatMap(file -> Stream.of(new Reading.AsWritten(), new Reading.AsPlayed())
                        .map(reading -> Sheets.bare(file, reading)));
        Stream<SheetContent> random =
                IntStream.range(0, 25).mapToObj(seed -> Sheets.bare(Sheets.random(seed, 24), new Reading.AsWritten()));
        return Stream.concat(examples, random);
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void everyCellHasOneBoxInOrderAndBoxesMeet(SheetContent content) {
        MeasureGrid grid = GridSpacing.of(content, 120);

        List<Integer> indexes = new ArrayList<>();
        for (MeasureGrid.Line line : grid.lines()) {
            double x = 0;
            for (MeasureGrid.Box box : line.boxes()) {
                indexes.add(box.index());
                assertThat(box.cell()).isEqualTo(content.cells().get(box.index()));
                assertThat(box.x()).isCloseTo(x, org.assertj.core.data.Offset.offset(EXACTNESS));
                x = box.right();
            }
            assertThat(x).isLessThanOrEqualTo(120);
        }
        assertThat(indexes)
                .isEqualTo(IntStream.range(0, content.cells().size()).boxed().toList());
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void momentsFollowEachOtherAndEveryWrittenOneHasItsPlace(SheetContent content) {
        for (MeasureGrid.Line line : GridSpacing.of(content, 120).lines())
            for (MeasureGrid.Box box : line.boxes()) {
                List<Double> xs = List.copyOf(box.positions().values());
                var measure = content.performance().tune().measure(box.cell().written());

                assertThat(xs).isSorted().doesNotHaveDuplicates();
                assertThat(xs.get(0)).isGreaterThan(box.x());
                assertThat(box.positions().get(measure.length()))
                        .isCloseTo(box.right(), org.assertj.core.data.Offset.offset(EXACTNESS));
                assertThat(box.positions()).containsKey(time(0, 1));
                assertThat(box.positions().keySet())
                        .containsAll(measure.melody().stream()
                                .map(MelodyEvent::offset)
                                .toList())
                        .containsAll(measure.chords().stream()
                                .map(PlacedChord::offset)
                                .toList())
                        .containsAll(
                                measure.bass().stream().map(e -> e.offset()).toList());
            }
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void signsOfOneMomentEndBeforeThoseOfTheNextBegin(SheetContent content) {
        SheetMeasures measures = new SheetMeasures(content);
        for (MeasureGrid.Line line : GridSpacing.of(content, 160).lines()) {
            double reached = 0;
            for (MeasureGrid.Box box : line.boxes()) {
                reached = Math.max(reached, box.x());
                for (StaffEvent event : measures.staff(box.index()).events()) {
                    double x = box.positions().get(event.offset());
                    if (!event.wholeMeasure()) assertThat(x - event.left()).isGreaterThanOrEqualTo(reached - EXACTNESS);
                    reached = x + event.right();
                }
                assertThat(reached).isLessThan(box.right() - measures.closing(box.index()));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void noChordSymbolTouchesTheNext(SheetContent content) {
        SheetMeasures measures = new SheetMeasures(content);
        for (MeasureGrid.Line line : GridSpacing.of(content, 160).lines()) {
            double reached = 0;
            for (MeasureGrid.Box box : line.boxes())
                for (PlacedChord chord : measures.measure(box.index()).chords()) {
                    double x = box.xOf(chord.offset()) - Engraving.HALF_HEAD;
                    assertThat(x).isGreaterThanOrEqualTo(reached);
                    reached = x + ChordText.outline(chord).bounds().getMaxX();
                }
        }
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void noSyllableTouchesTheNext(SheetContent content) {
        SheetMeasures measures = new SheetMeasures(content);
        for (MeasureGrid.Line line : GridSpacing.of(content, 160).lines()) {
            double reached = 0;
            for (MeasureGrid.Box box : line.boxes())
                for (StaffEvent event : measures.staff(box.index()).events()) {
                    Optional<Lyric> lyric = LyricText.at(event, 1);
                    if (lyric.isEmpty()) continue;
                    double width = LyricText.outline(lyric.get()).advance();
                    double x = box.xOf(event.offset());
                    assertThat(x - width / 2).isGreaterThanOrEqualTo(reached - EXACTNESS);
                    reached = x + width / 2 + (lyric.get().endsWord() ? 0.5 : 0.9);
                }
        }
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void allLinesButTheLastAreFullAndTheSameContentGivesTheSameGrid(SheetContent content) {
        MeasureGrid grid = GridSpacing.of(content, 140);

        for (MeasureGrid.Line line : grid.lines().subList(0, grid.lines().size() - 1)) {
            MeasureGrid.Box last = line.boxes().get(line.boxes().size() - 1);
            double warning = new SheetMeasures(content).warning(last.index()).width();
            assertThat(last.right() + warning).isBetween(139.5, 140.0);
        }
        assertThat(GridSpacing.of(content, 140)).isEqualTo(grid);
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void fingersHaveRoomAtNotesAndButtonsAtBeats(SheetContent content) {
        for (MeasureGrid.Line line : GridSpacing.of(content, 160).lines())
            for (MeasureGrid.Box box : line.boxes()) {
                var measure = content.performance().tune().measure(box.cell().written());
                for (int i = 0; i + 1 < measure.melody().size(); i++)
                    assertThat(box.xOf(measure.melody().get(i + 1).offset())
                                    - box.xOf(measure.melody().get(i).offset()))
                            .isGreaterThan(1.59);
                if (measure.pickup() || measure.meter().isFree()) continue;
                var beat = measure.meter().beat();
                for (var at = beat; at.isBefore(measure.length()); at = at.plus(beat))
                    assertThat(box.xOf(at) - box.xOf(at.minus(beat))).isGreaterThan(2.79);
            }
    }

    @Test
    void longNoteGetsMoreRoomThanAShortOneButLessThanInProportion() {
        Pitch pitch = Pitch.of(Step.A, 0, 4);
        SheetContent content = Sheets.bare(measure(
                Meter.of(4, 4),
                Key.C_MAJOR,
                MelodyEvent.note(time(0, 1), time(1, 4), pitch),
                MelodyEvent.note(time(1, 4), time(1, 2), pitch),
                MelodyEvent.note(time(3, 4), time(1, 4), pitch)));

        MeasureGrid.Box box =
                GridSpacing.of(content, 200).lines().get(0).boxes().get(0);

        double quarter = box.xOf(time(1, 4)) - box.xOf(time(0, 1));
        double half = box.xOf(time(3, 4)) - box.xOf(time(1, 4));
        assertThat(half / quarter).isBetween(1.4, 1.6);
    }

    @Test
    void measureThatDoesNotFitIsPressedIntoTheWidth() {
        SheetContent content = Sheets.bare(Sheets.random(3, 6), new Reading.AsWritten());

        for (MeasureGrid.Line line : GridSpacing.of(content, 15).lines())
            for (MeasureGrid.Box box : line.boxes()) assertThat(box.right()).isLessThanOrEqualTo(15 + EXACTNESS);
        assertThatThrownBy(() -> GridSpacing.of(content, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("width is 0");
    }
}
