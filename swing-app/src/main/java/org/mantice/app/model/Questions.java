package org.mantice.app.model;

import java.util.HashSet;
import java.util.Set;
import java.util.function.Consumer;
import org.mantice.Planning;
import org.mantice.app.files.PlanFiles;
import org.mantice.file.PlanFile;
import org.mantice.layer.RuleBook;
import org.mantice.plan.Explanation;
import org.mantice.plan.LayerPlan;
import org.mantice.plan.Plan;
import org.mantice.player.Taste;
import org.mantice.plugin.Packs;

/** What is asked of the plans in view beside the planning itself; answered in the background. */
final class Questions {
    private final Packs packs;
    private final Board board;
    private final PlanningDesk desk;

    Questions(Packs packs, Board board, PlanningDesk desk) {
        this.packs = packs;
        this.board = board;
        this.desk = desk;
    }

    private Taste taste() {
        return board.state().setup().player().taste();
    }

    void explain(Plan plan, Consumer<Explanation> explained) {
        Taste taste = taste();
        board.inside()
                .made()
                .ifPresent(made ->
                        desk.ask(made.basis(), (planning, cancelled) -> planning.explain(plan, taste), explained));
    }

    void explainDifference(Plan plan, Plan other, Consumer<Explanation> explained) {
        Taste taste = taste();
        board.inside()
                .made()
                .ifPresent(made -> desk.ask(
                        made.basis(),
                        (planning, cancelled) -> planning.explain(plan, taste).minus(planning.explain(other, taste)),
                        explained));
    }

    /** With the weights and locks that the plan was made under, which a change under way may have left behind. */
    void file(Plan plan, Consumer<PlanFile> file) {
        board.inside().made().ifPresent(made -> {
            OpenTune tune = made.tune();
            Setup setup = made.setup();
            PlanFiles files = new PlanFiles(tune.fileName(), tune.read(), tune.part(), packs, setup.edits());
            desk.ask(
                    made.basis(),
                    (planning, cancelled) -> files.of(planning, priced(plan, planning), setup.player(), setup.locks()),
                    file);
        });
    }

    /** A pack may have been turned off since: then its rules have no say in what the plan costs. */
    private static Plan priced(Plan plan, Planning planning) {
        Set<String> then = new HashSet<>();
        for (LayerPlan layer : plan.layers()) then.addAll(layer.costByRule().keySet());
        Set<String> now = new HashSet<>();
        for (RuleBook.Entry entry : planning.rules().entries()) now.add(entry.id());
        return then.equals(now) ? plan : planning.rescore(plan);
    }
}
