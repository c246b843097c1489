package org.mantice.app.command;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.mantice.app.text.PatternText;
import org.mantice.file.PatternFile;
import org.mantice.pattern.BassPattern;
import org.mantice.pattern.BassPatterns;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lists patterns of the left hand. */
@Command(
        name = "patterns",
        mixinStandardHelpOptions = true,
        description = "Lists the patterns of the left hand, or those of files.")
final class PatternsCommand implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", arity = "0..*", description = "*.patterns.json, instead of the shipped ones")
    private List<Path> files = new ArrayList<>();

    @Option(names = "--json", description = "prints them as a file of patterns, to begin one's own with")
    private boolean json;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        List<BassPattern> patterns = new ArrayList<>();
        for (Path file : files) patterns.addAll(PatternFile.read(file).patterns());
        if (files.isEmpty()) patterns.addAll(BassPatterns.shipped());
        PrintWriter out = spec.commandLine().getOut();
        out.print(
                json
                        ? new String(PatternFile.of(patterns).bytes(), StandardCharsets.UTF_8)
                        : PatternText.list(patterns));
        out.flush();
        return ManticeCommand.DONE;
    }
}
