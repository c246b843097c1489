package org.mantice.instrument;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.mantice.reading.Corpus;
import org.mantice.reading.ReadOptions;
import org.mantice.reading.TuneReadException;
import org.mantice.reading.TuneReader;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.Measure;
import org.mantice.tune.PlacedChord;
import org.mantice.tune.Tune;

/** Chord symbols of the corpora: every one gets buttons on every size, or a reason is stated. */
class CorpusChordsTest {
    @Test
    void every_symbol_of_the_corpora_gets_buttons_on_every_size_or_a_stated_reason() {
        List<ChordSymbol> symbols = new ArrayList<>();
        Set<String> seen = new TreeSet<>();
        for (String folder : List.of("mxl-leadsheets-pd", "musicxml-misc", "musicxml-test-suite", "abc-nottingham"))
            for (Corpus.Numbered file : Corpus.files(folder, ".xml", ".musicxml", ".mxl", ".abc"))
                for (ChordSymbol symbol : symbols(file)) if (seen.add(symbol.toString())) symbols.add(symbol);
        for (StradellaBass layout : ChordLayouts.sizes()) {
            ChordButtons buttons = new ChordButtons(layout);
            int silent = 0;
            for (ChordSymbol symbol : symbols) {
                if (symbol.isSilent()) continue;
                ButtonChoice first = buttons.choices(symbol).get(0);
                if (first.isSilent()) silent++;
                boolean complete = first.missing().isEmpty() && first.hasWrittenBass();
                assertThat(complete
                                || !first.substitutions().isEmpty()
                                || !first.missing().isEmpty() && !first.isSilent())
                        .as(layout.buttons() + ": " + first)
                        .isTrue();
                if (first.isSilent()) assertThat(first.substitutions()).isNotEmpty();
            }
            if (layout.buttons() >= 40) assertThat(silent).isZero();
        }
        assertThat(symbols).hasSizeGreaterThan(50);
    }

    private static List<ChordSymbol> symbols(Corpus.Numbered file) {
        List<ChordSymbol> found = new ArrayList<>();
        try {
            Tune tune = new TuneReader().read(file.path(), ReadOptions.DEFAULT).tune();
            for (Measure measure : tune.measures())
                for (PlacedChord chord : measure.chords()) {
                    found.add(chord.symbol());
                    chord.alternate().ifPresent(found::add);
                }
        } catch (TuneReadException e) {
            return found;
        }
        return found;
    }
}
