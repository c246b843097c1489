package org.mantice.app.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import org.mantice.app.files.PlannedTune;
import org.mantice.app.files.Profiles;
import org.mantice.app.text.ComparisonText;
import org.mantice.app.text.ExplanationText;
import org.mantice.file.PlanDocument;
import org.mantice.file.PlanFile;
import org.mantice.plan.Explanation;
import org.mantice.plan.PlanDifference;
import org.mantice.plugin.Packs;
import org.mantice.tune.WrittenPlace;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Compares two plan files of one tune: decisions that differ, and what each side pays more for. */
@Command(name = "compare", mixinStandardHelpOptions = true, description = "Compares two plans of one tune.")
final class CompareCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "PLAN", description = "a *.plan.json")
    private Path first;

    @Parameters(index = "1", paramLabel = "PLAN", description = "another *.plan.json of the same tune")
    private Path second;

    @Option(names = "--packs", paramLabel = "DIR", description = "folder with jars of more rules, for their texts")
    private Path packFolder;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        PlanDocument mine = PlanFile.read(first).document();
        PlanDocument theirs = PlanFile.read(second).document();
        if (!mine.tune().sha256().equals(theirs.tune().sha256()))
            throw new IllegalArgumentException("the plans are of two tunes, "
                    + mine.tune().file() + " and " + theirs.tune().file() + "; allowed: two plans of one tune");
        PrintWriter out = spec.commandLine().getOut();
        out.println("first  " + first + ": " + mine.plan().label() + ", cost " + ComparisonText.cost(mine.cost()));
        out.println("second " + second + ": " + theirs.plan().label() + ", cost " + ComparisonText.cost(theirs.cost()));
        if (!mine.tune().edits().equals(theirs.tune().edits()))
            out.println("the tune was not edited alike for both: places are those of the first");
        List<PlanDifference> differences = PlanDifference.between(mine.plan(), theirs.plan());
        out.println(differences.size() + (differences.size() == 1 ? " decision differs" : " decisions differ"));
        Function<WrittenPlace, String> places = PlannedTune.places(first, mine);
        for (PlanDifference difference : differences) out.println("  " + words(difference, places));
        Explanation costs = theirs.explanation().minus(mine.explanation());
        if (costs.children().isEmpty()) return ManticeCommand.DONE;
        out.println("what the second costs more (less where negative):");
        Packs packs = Profiles.packs(Optional.ofNullable(packFolder));
        out.print(new ExplanationText(packs.providers()).of(costs));
        return ManticeCommand.DONE;
    }

    private static String words(PlanDifference difference, Function<WrittenPlace, String> places) {
        return "pass " + difference.pass() + ", " + places.apply(difference.place()) + ": "
                + difference.kind().name().toLowerCase(Locale.ROOT).replace('_', ' ') + " "
                + difference.first().orElse("—") + " | " + difference.second().orElse("—");
    }
}
