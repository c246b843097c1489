package org.mantice.instrument;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.mantice.tune.ChordKind;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.NoteName;

/** The page {@code engine/docs/chords.md} is what the engine answers. */
class ChordTableTest {
    private static final List<Integer> FIFTHS = List.of(0, -5, 2, -3, 4, -1, 6, 1, -4, 3, -2, 5);

    @Test
    void the_table_of_accepted_answers_is_what_the_engine_answers() throws IOException {
        Path page = Path.of(System.getProperty("mantice.root", "..")).resolve("engine/docs/chords.md");
        String generated = page();
        if (Boolean.getBoolean("mantice.write.docs")) Files.writeString(page, generated);

        assertThat(Files.readString(page))
                .as("engine/docs/chords.md is old; write it anew with -Dmantice.write.docs=true")
                .isEqualTo(generated);
    }

    /** R. Stradling, Notes on the Stradella bass; the encyclopaedia articles: what the page must say whatever else it says. */
    @Test
    void the_table_has_the_published_answers() throws IOException {
        String page = page();

        assertThat(page)
                .contains("| C | C bass + C major; ", "| Am7 | A bass + C major; A counterbass + C major")
                .contains("| Fm6 | F bass + F minor + F diminished");
    }

    private static String page() {
        StringBuilder text = new StringBuilder("""
                # Buttons for chord symbols

                Made by `ChordTableTest` from what the engine answers; `mantice chords --accordion … SYMBOL…` prints the same for
                any instrument. In brackets: tones of the symbol that do not sound (`-`), fifths that nobody misses (`~`), tones
                that sound besides (`+`).

                ## First answers on every size

                How many of the twelve roots sound exactly / with nothing missed or foreign / with the written bass; s: silent on
                so many.

                """);
        sizes(text);
        text.append("\n## Accepted answers on 120 buttons\n");
        for (ChordKind kind : ChordKind.values()) {
            if (kind == ChordKind.NONE) continue;
            text.append("\n### ").append(kind.musicXml()).append("\n\n| symbol | answers, best first |\n|---|---|\n");
            ChordButtons buttons = new ChordButtons(StradellaBass.ofSize(120));
            for (int fifths : FIFTHS) {
                ChordSymbol symbol = ChordSymbol.of(NoteName.ofFifths(fifths), kind);
                text.append("| ").append(symbol).append(" | ");
                text.append(buttons.choices(symbol).stream()
                        .map(choice -> answer(symbol, choice))
                        .collect(Collectors.joining("; ")));
                text.append(" |\n");
            }
        }
        return text.toString();
    }

    private static void sizes(StringBuilder text) {
        List<StradellaBass> sizes = ChordLayouts.sizes();
        text.append("| kind |");
        for (StradellaBass size : sizes)
            text.append(' ')
                    .append(size.buttons())
                    .append(size.equals(ChordLayouts.otherOf48()) ? "b" : "")
                    .append(" |");
        text.append("\n|---|").append("---|".repeat(sizes.size())).append('\n');
        for (ChordKind kind : ChordKind.values()) {
            if (kind == ChordKind.NONE) continue;
            text.append("| ").append(kind.musicXml()).append(" |");
            for (StradellaBass size : sizes)
                text.append(' ').append(counts(size, kind)).append(" |");
            text.append('\n');
        }
    }

    private static String counts(StradellaBass size, ChordKind kind) {
        ChordButtons buttons = new ChordButtons(size);
        List<ButtonChoice> firsts = new ArrayList<>();
        for (int fifths : FIFTHS)
            firsts.add(buttons.choices(ChordSymbol.of(NoteName.ofFifths(fifths), kind))
                    .get(0));
        long silent = firsts.stream().filter(ButtonChoice::isSilent).count();
        List<ButtonChoice> sounding =
                firsts.stream().filter(choice -> !choice.isSilent()).toList();
        long exact = sounding.stream()
                .filter(choice -> choice.missing().isEmpty()
                        && choice.foreign().isEmpty()
                        && choice.leftOut().isEmpty())
                .count();
        long complete = sounding.stream()
                .filter(choice -> choice.missing().isEmpty() && choice.foreign().isEmpty())
                .count();
        long bass = sounding.stream().filter(ButtonChoice::hasWrittenBass).count();
        return exact + "/" + complete + "/" + bass + (silent == 0 ? "" : " s" + silent);
    }

    private static String answer(ChordSymbol symbol, ButtonChoice choice) {
        String tones = tones(symbol, choice.missing(), "-")
                + tones(symbol, choice.leftOut(), "~")
                + tones(symbol, choice.foreign(), "+");
        return choice + (tones.isEmpty() ? "" : " (" + tones.strip() + ")");
    }

    private static String tones(ChordSymbol symbol, Set<Integer> classes, String sign) {
        StringBuilder text = new StringBuilder();
        for (int pitchClass : classes)
            text.append(' ').append(sign).append(ButtonNames.tone(symbol.root(), pitchClass));
        return text.toString();
    }
}
