package org.mantice.app.command;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.mantice.Planning;
import org.mantice.app.files.PlannedTune;
import org.mantice.app.files.Profiles;
import org.mantice.app.text.ComparisonText;
import org.mantice.app.text.ExplanationText;
import org.mantice.fault.ManticeException;
import org.mantice.file.PlanDocument;
import org.mantice.file.PlanFile;
import org.mantice.layer.Choice;
import org.mantice.layer.RuleFailureException;
import org.mantice.plan.Explanation;
import org.mantice.plugin.Packs;
import org.mantice.rule.RuleSet;
import org.mantice.tune.WrittenPlace;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Explains a plan file: the whole, or one place and what else was possible there. */
@Command(
        name = "explain",
        mixinStandardHelpOptions = true,
        description = "Explains plans, or a place of them and what else was possible there.")
final class ExplainCommand implements Callable<Integer> {
    @Parameters(
            index = "0",
            paramLabel = "PLAN|FOLDER",
            description = "a *.plan.json, or a folder with plans in it or below")
    private Path given;

    @Parameters(index = "1", arity = "0..1", paramLabel = "MEASURE[:BEAT]", description = "a place, as in 9 or 9:2+1/8")
    private String place;

    @Option(
            names = "--pass",
            paramLabel = "N",
            description = "the pass to look at (${DEFAULT-VALUE})",
            defaultValue = "1")
    private int pass;

    @Option(names = "--tune", paramLabel = "FILE", description = "the tune, if it is no longer where the plan says")
    private Path tune;

    @Option(names = "--packs", paramLabel = "DIR", description = "folder with jars of more rules")
    private Path packFolder;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        Packs packs = Profiles.packs(Optional.ofNullable(packFolder));
        if (!Files.isDirectory(given)) {
            explain(given, packs);
            return ManticeCommand.DONE;
        }
        if (tune != null)
            throw new IllegalArgumentException(
                    "tune is " + tune + " and " + given + " is a folder; allowed: a tune with one plan");
        return explainAll(TuneFiles.plansIn(List.of(given)).files(), packs);
    }

    /** A plan that cannot be explained never stops the rest. */
    private int explainAll(List<Path> plans, Packs packs) throws Exception {
        int failed = 0;
        for (Path plan : plans) {
            try {
                spec.commandLine().getOut().println(plan);
                explain(plan, packs);
            } catch (ManticeException e) {
                spec.commandLine().getErr().println(ManticeCommand.oneLine(e));
                failed++;
            } catch (RuleFailureException | IllegalArgumentException e) {
                spec.commandLine().getErr().println(plan + ": " + ManticeCommand.oneLine(e));
                failed++;
            }
        }
        return failed > 0 ? ManticeCommand.SOME_FAILED : ManticeCommand.DONE;
    }

    private void explain(Path file, Packs packs) throws Exception {
        PlanDocument document = PlanFile.read(file).document();
        PrintWriter out = spec.commandLine().getOut();
        ExplanationText words = new ExplanationText(packs.providers());
        if (place == null) {
            out.print(words.of(document.explanation()));
            return;
        }
        int passes = document.plan().variation().passes().size();
        if (pass < 1 || pass > passes)
            throw new IllegalArgumentException("pass is " + pass + "; allowed: 1 to " + passes);
        String number = place.contains(":") ? place.substring(0, place.indexOf(':')) : place;
        String beat = place.contains(":") ? place.substring(place.indexOf(':') + 1) : "";
        String choices = choices(file, document, packs, number, beat);
        String prefix = "pass " + pass + ", measure " + number + ", beat " + beat;
        Explanation here = at(document.explanation(), prefix);
        out.println(prefix.replaceFirst(", beat $", "") + ": " + ComparisonText.cost(here.cost()));
        out.print(words.of(here));
        out.print(choices);
    }

    /** The part of the tree that speaks of places that begin with {@code prefix}. */
    private static Explanation at(Explanation node, String prefix) {
        if (node.children().isEmpty()) return node;
        List<Explanation> kept = new ArrayList<>();
        for (Explanation child : node.children()) {
            if (!child.place().isEmpty()) {
                boolean exact = !prefix.endsWith("beat ");
                if (exact ? child.place().equals(prefix) : child.place().startsWith(prefix)) kept.add(child);
            } else {
                Explanation part = at(child, prefix);
                if (!part.children().isEmpty()) kept.add(part);
            }
        }
        return Explanation.sumOf(node.key(), kept);
    }

    private String choices(Path file, PlanDocument document, Packs packs, String number, String beat) {
        Optional<Path> source = tune != null ? Optional.of(tune) : PlannedTune.find(file, document);
        if (source.isEmpty())
            return "What else was possible needs the tune: give it with --tune." + System.lineSeparator();
        Planning planning = PlannedTune.planning(source.get(), document, packs);
        long today = planning.rescore(document.plan()).cost(document.player().taste());
        if (today != document.cost())
            spec.commandLine()
                    .getErr()
                    .println(file + ": the rules of today price this plan at " + ComparisonText.cost(today)
                            + " instead of " + ComparisonText.cost(document.cost()));
        WrittenPlace at = LockWords.place(number, beat, planning.performance().tune());
        StringBuilder text = new StringBuilder();
        for (RuleSet layer : RuleSet.values()) {
            List<Choice> choices =
                    planning.choicesAt(document.plan(), layer, document.player().taste(), document.locks(), pass, at);
            if (choices.isEmpty()) continue;
            text.append("possible here (" + layer.id() + ") and what each would cost more:")
                    .append(System.lineSeparator());
            for (Choice choice : choices.subList(0, Math.min(8, choices.size())))
                text.append("  " + ComparisonText.cost(choice.extraCost()) + "  "
                                + choice.decision()
                                        .kind()
                                        .name()
                                        .toLowerCase(Locale.ROOT)
                                        .replace('_', ' ') + " "
                                + choice.decision().value())
                        .append(System.lineSeparator());
        }
        return text.toString();
    }
}
