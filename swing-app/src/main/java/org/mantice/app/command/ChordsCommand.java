package org.mantice.app.command;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.mantice.app.files.Profiles;
import org.mantice.app.text.ChordsText;
import org.mantice.instrument.Accordion;
import org.mantice.reading.ChordText;
import org.mantice.tune.ChordKind;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.NoteName;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints the buttons that play chord symbols on an instrument. */
@Command(
        name = "chords",
        mixinStandardHelpOptions = true,
        description = "Prints which buttons play chord symbols on an instrument, what they leave out and add, and why.")
final class ChordsCommand implements Callable<Integer> {
    /** From G-flat to F sharp: every root once and F sharp twice. */
    private static final int OUTERMOST_ROOT = 6;

    @Parameters(
            paramLabel = "SYMBOL",
            arity = "0..*",
            description = "chord symbols, as C, Am7, F#dim/A, Bb7(b9); none: every kind on every root")
    private List<String> symbols = new ArrayList<>();

    @Option(
            names = "--accordion",
            paramLabel = "ID|FILE",
            defaultValue = "full-41-key-120-bass",
            description = "a preset or a *.accordion.json (default: ${DEFAULT-VALUE})")
    private String accordion;

    @Option(names = "--all", description = "every answer, best first, not only the best")
    private boolean all;

    @Option(names = "--german", description = "H is the semitone below C, and B the one below that")
    private boolean german;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Accordion instrument = Profiles.accordion(accordion);
        List<ChordSymbol> asked = symbols.isEmpty() ? every() : read();
        PrintWriter out = spec.commandLine().getOut();
        out.println(instrument.name());
        ChordsText text = new ChordsText(instrument.bass(), all);
        for (ChordSymbol symbol : asked) out.print(text.of(symbol));
        out.flush();
        return ManticeCommand.DONE;
    }

    private List<ChordSymbol> read() {
        ChordText reader = new ChordText(german ? ChordText.Letters.GERMAN : ChordText.Letters.INTERNATIONAL);
        return symbols.stream()
                .map(text -> reader.symbol(text)
                        .orElseThrow(() -> new IllegalArgumentException(
                                "symbol is '" + text + "'; allowed: chord symbols, as C, Am7, F#dim/A, Bb7(b9)")))
                .toList();
    }

    private static List<ChordSymbol> every() {
        List<ChordSymbol> every = new ArrayList<>();
        for (ChordKind kind : ChordKind.values())
            for (int fifths = -OUTERMOST_ROOT; kind != ChordKind.NONE && fifths <= OUTERMOST_ROOT; fifths++)
                every.add(ChordSymbol.of(NoteName.ofFifths(fifths), kind));
        return every;
    }
}
