package org.mantice.app.window;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.mantice.app.command.ManticeCommand;
import org.mantice.app.files.Profiles;
import org.mantice.app.words.Words;
import org.mantice.app.work.AppFolder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Opens the window. Ends when it is closed. */
@Command(
        name = "window",
        mixinStandardHelpOptions = true,
        description = "Opens the window, with a tune or plan if one is named, else with a shipped example.")
public final class WindowCommand implements Callable<Integer> {
    private static final int DONE = 0;
    private static final int WRONG_CALL = 2;

    @Parameters(arity = "0..1", paramLabel = "TUNE|PLAN", description = "a MusicXML or ABC file or a *.plan.json")
    private Path file;

    @Option(names = "--accordion", paramLabel = "PRESET|FILE", description = "the accordion; else the one of last time")
    private String accordion;

    @Option(names = "--player", paramLabel = "PRESET|FILE", description = "the player; else the one of last time")
    private String player;

    @Option(names = "--packs", paramLabel = "DIR", description = "folder with jars of more rules")
    private Path packFolder;

    @Option(names = "--language", paramLabel = "en|de", description = "the window's language; else that of last time")
    private String language;

    @Option(names = "--dark", description = "dark; else as last time")
    private boolean dark;

    @Option(names = "--light", description = "light; else as last time")
    private boolean light;

    @Spec
    private CommandSpec spec;

    /**
     * Opens the window with the shipped example, as without any argument, on a display that is known to be there.
     *
     * @return the exit code
     */
    public static int openExample(EarlyReading example, PrintWriter err) {
        try {
            AppMain app = AppMain.begin(Optional.empty(), example, AppFolder::ofThisComputer);
            app.open(new WindowStart(
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Profiles.packs(Optional.empty()),
                    Optional.empty(),
                    Optional.empty()));
            return DONE;
        } catch (Exception e) {
            return ManticeCommand.report(e, err);
        }
    }

    @Override
    public Integer call() throws Exception {
        WindowStart start = start();
        Optional<String> problem = Display.problem();
        if (problem.isPresent()) {
            PrintWriter err = spec.commandLine().getErr();
            err.println("There is no display to show a window on (" + problem.get()
                    + "); the other verbs work without: --help lists them");
            return WRONG_CALL;
        }
        AppMain.run(start);
        return DONE;
    }

    private WindowStart start() {
        if (dark && light) throw new IllegalArgumentException("look is --dark and --light; allowed: one of them");
        return new WindowStart(
                Optional.ofNullable(file),
                Optional.ofNullable(accordion).map(Profiles::accordion),
                Optional.ofNullable(player).map(Profiles::player),
                Profiles.packs(Optional.ofNullable(packFolder)),
                Optional.ofNullable(language).map(WindowCommand::language),
                dark || light ? Optional.of(dark) : Optional.empty());
    }

    private static Locale language(String tag) {
        return Words.LANGUAGES.stream()
                .filter(known -> known.getLanguage().equals(tag))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("language is " + tag + "; allowed: en, de"));
    }
}
