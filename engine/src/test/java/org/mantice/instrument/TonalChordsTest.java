package org.mantice.instrument;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.mantice.reading.ChordText;
import org.mantice.tune.ChordSymbol;

/**
 * What the buttons sound, against the notes that npm tonal 6.4.2 names for the same symbol
 * ({@code combination-notes-tonal.tsv}, made by the script beside it).
 */
class TonalChordsTest {
    /**
     * tonal has no third in an eleventh and no eleventh in a thirteenth, MusicXML's kinds stack every third; tonal
     * keeps no fifth beside a flat thirteenth, and knows no maj11.
     */
    private static final Set<String> NAMED_OTHERWISE = Set.of("11", "13", "maj13", "m13", "13b9", "7b13");

    private record Row(String root, String rest, TreeSet<Integer> classes) {}

    private static List<Row> rows() throws IOException {
        List<Row> rows = new ArrayList<>();
        for (String line : lines("combination-notes-tonal.tsv")) {
            if (line.endsWith("none")) continue;
            String[] cells = line.split("\t");
            rows.add(new Row(
                    cells[0],
                    cells[1],
                    new TreeSet<>(Arrays.stream(cells[2].split(" "))
                            .map(Integer::valueOf)
                            .toList())));
        }
        return rows;
    }

    private static List<String> lines(String resource) throws IOException {
        try (BufferedReader in = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(TonalChordsTest.class.getResourceAsStream(resource)), StandardCharsets.UTF_8))) {
            return in.lines().filter(line -> !line.startsWith("#")).toList();
        }
    }

    @Test
    void exact_choices_sound_the_notes_that_tonal_names() throws IOException {
        int exact = 0;
        int firstExact = 0;
        for (StradellaBass layout : ChordLayouts.sizes())
            for (Row row : rows()) {
                if (NAMED_OTHERWISE.contains(row.rest())) continue;
                List<ButtonChoice> choices =
                        new ChordButtons(layout).choices(ChordLayouts.symbol(row.root() + row.rest()));
                for (ButtonChoice choice : choices) {
                    if (!isExact(choice)) continue;
                    assertThat(choice.sounding())
                            .as(row.root() + row.rest() + ": " + choice)
                            .isEqualTo(row.classes());
                    exact++;
                }
                if (layout.buttons() == 120 && isExact(choices.get(0))) firstExact++;
            }
        assertThat(exact).isGreaterThan(5_000);
        assertThat(firstExact).isGreaterThan(250);
    }

    /** Whatever spelling can be read has buttons, the same as any other spelling of the same chord. */
    @Test
    void every_spelling_that_can_be_read_has_buttons_and_equal_chords_have_equal_ones() throws IOException {
        ChordText text = new ChordText(ChordText.Letters.INTERNATIONAL);
        ChordButtons buttons = new ChordButtons(StradellaBass.ofSize(120));
        Map<List<Object>, ButtonChoice> known = new HashMap<>();
        int read = 0;
        for (String line : lines("/org/mantice/reading/chord-spellings-tonal.tsv"))
            for (String root : ChordLayouts.ROOTS) {
                Optional<ChordSymbol> symbol = text.symbol(root + line.split("\t")[0]);
                if (symbol.isEmpty()) continue;
                read++;
                ButtonChoice first = buttons.choices(symbol.get()).get(0);
                assertThat(first.isSilent()).as(symbol.get().toString()).isFalse();
                assertThat(first.hasWrittenBass()).as(symbol.get().toString()).isTrue();
                List<Object> chord =
                        List.of(root, symbol.get().kind(), symbol.get().degrees());
                assertThat(known.computeIfAbsent(chord, key -> first)).isEqualTo(first);
            }
        assertThat(read).isGreaterThan(12 * 40);
    }

    private static boolean isExact(ButtonChoice choice) {
        return !choice.isSilent()
                && choice.missing().isEmpty()
                && choice.leftOut().isEmpty()
                && choice.foreign().isEmpty();
    }

    @Test
    void where_nothing_is_foreign_all_that_sounds_is_among_tonals_notes() throws IOException {
        int compared = 0;
        for (Row row : rows()) {
            if (NAMED_OTHERWISE.contains(row.rest())) continue;
            for (ButtonChoice choice :
                    new ChordButtons(StradellaBass.ofSize(72)).choices(ChordLayouts.symbol(row.root() + row.rest()))) {
                TreeSet<Integer> named = new TreeSet<>(choice.sounding());
                named.removeAll(choice.foreign());
                named.addAll(choice.missing());
                named.addAll(choice.leftOut());
                assertThat(named).as(row.root() + row.rest() + ": " + choice).isEqualTo(row.classes());
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(1_000);
    }
}
