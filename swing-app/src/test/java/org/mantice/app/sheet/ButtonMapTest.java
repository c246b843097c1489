package org.mantice.app.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.mantice.app.words.MusicWords;
import org.mantice.app.words.Words;
import org.mantice.instrument.BassButton;
import org.mantice.instrument.BassRow;
import org.mantice.instrument.ButtonNames;
import org.mantice.instrument.StradellaBass;

class ButtonMapTest {
    private static final MusicWords MUSIC = new MusicWords(Words.of(Locale.ENGLISH));
    private static final StradellaBass FULL = StradellaBass.ofSize(120);

    private static BassButton button(String name) {
        return ButtonNames.find(name).orElseThrow();
    }

    private static ButtonMap map(StradellaBass layout) {
        return ButtonMap.of(
                layout, List.of(button("C bass"), button("C major")), List.of(4, 3), List.of(button("G bass")), MUSIC);
    }

    private static ButtonMap.Button find(ButtonMap map, String name) {
        return map.buttons().get(index(map, name));
    }

    private static int index(ButtonMap map, String name) {
        for (int i = 0; i < map.buttons().size(); i++)
            if (map.buttons().get(i).button().equals(button(name))) return i;
        throw new AssertionError(name);
    }

    /** Player's view: fifths go up toward the chin (learnfreereed.com and others), rows outward from the bellows. */
    @Test
    void fifthsGoUpTowardTheChinAndRowsOutward() {
        ButtonMap map = map(FULL);

        assertThat(map.buttons()).hasSize(120);
        assertThat(find(map, "G bass").y()).isLessThan(find(map, "C bass").y());
        assertThat(find(map, "C major").x()).isGreaterThan(find(map, "C bass").x());
        assertThat(find(map, "E counterbass").x())
                .isLessThan(find(map, "C bass").x());
        assertThat(map.buttons()).allSatisfy(button -> {
            assertThat(button.x()).isBetween(0.0, map.widthMm());
            assertThat(button.y()).isBetween(0.0, map.heightMm());
        });
    }

    @Test
    void whatIsPressedHasItsFingerAndWhatWasPressedIsSaid() {
        ButtonMap map = map(FULL);

        assertThat(find(map, "C bass").finger()).hasValue(4);
        assertThat(find(map, "C major").finger()).hasValue(3);
        assertThat(find(map, "G bass").before()).isTrue();
        assertThat(map.buttons().stream().filter(one -> one.finger().isPresent()))
                .hasSize(2);
        assertThat(map.buttons().stream().filter(ButtonMap.Button::marked))
                .extracting(ButtonMap.Button::letters)
                .containsExactly("A♭", "C", "E");
    }

    @Test
    void gapsAreLeftOutAndBrokenButtonsStayInSight() {
        ButtonMap map = map(FULL.with(
                FULL.singles().withBroken(Set.of(button("C seventh"))).withMissing(Set.of(button("D seventh")))));

        assertThat(map.buttons()).hasSize(119);
        assertThat(find(map, "C seventh").broken()).isTrue();
        assertThat(map.buttons()).noneMatch(one -> one.button().equals(button("D seventh")));
    }

    /** Encyclopaedia article on the system: C diminished sits where F diminished sits elsewhere. */
    @Test
    void aDisplacedRowIsDrawnWhereItLies() {
        ButtonMap moved = map(FULL.displaced(BassRow.DIMINISHED, -1));

        assertThat(find(moved, "C diminished").y())
                .isEqualTo(find(map(FULL), "F diminished").y());
    }

    @Test
    void theArrowsWalkFromButtonToButton() {
        ButtonMap map = map(FULL);
        int c = index(map, "C bass");

        assertThat(map.beside(c, ButtonMap.Way.TO_CHIN)).isEqualTo(index(map, "G bass"));
        assertThat(map.beside(c, ButtonMap.Way.TO_FLOOR)).isEqualTo(index(map, "F bass"));
        assertThat(map.beside(c, ButtonMap.Way.OUTWARD)).isEqualTo(index(map, "C major"));
        assertThat(map.beside(c, ButtonMap.Way.TO_BELLOWS)).isEqualTo(index(map, "E counterbass"));
        int last = index(map, "A# diminished");
        assertThat(map.beside(last, ButtonMap.Way.OUTWARD)).isEqualTo(last);
        assertThat(map.beside(last, ButtonMap.Way.TO_CHIN)).isEqualTo(last);
    }

    @Test
    void aPointIsOnTheButtonUnderIt() {
        ButtonMap map = map(FULL);
        ButtonMap.Button c = find(map, "C bass");

        assertThat(map.at(c.x() + 2, c.y())).hasValue(index(map, "C bass"));
        assertThat(map.at(0, 0)).isEmpty();
    }

    @Test
    void noBassIsAnEmptyMap() {
        ButtonMap map = ButtonMap.of(StradellaBass.none(), List.of(), List.of(), List.of(), MUSIC);

        assertThat(map.buttons()).isEmpty();
    }
}
