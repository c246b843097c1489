package org.mantice.app.command;

import java.util.List;
import java.util.Locale;
import org.mantice.Alternatives;
import org.mantice.PlanRequest;
import org.mantice.app.text.ComparisonText;
import org.mantice.app.text.ListingText;
import org.mantice.app.text.PatternText;
import org.mantice.performance.ChordsPlayed;
import org.mantice.performance.Settings;
import org.mantice.plan.Concession;
import org.mantice.plan.Obstacle;
import org.mantice.plan.Plan;
import org.mantice.reading.Skipped;
import org.mantice.tune.Tune;

/** What the verb {@code plan} prints for one tune. */
final class PlanText {
    private final OnePlanning job;

    PlanText(OnePlanning job) {
        this.job = job;
    }

    /** @param details also the best plan measure by measure */
    String text(boolean details) {
        StringBuilder text = new StringBuilder();
        head(text);
        if (job.alternatives() instanceof Alternatives.NotPlayable notPlayable) {
            obstacles(text, notPlayable.obstacles());
            return text.toString();
        }
        Alternatives.Found found = (Alternatives.Found) job.alternatives();
        text.append('\n')
                .append(new ComparisonText(
                                job.planning().performance(),
                                job.planning().request().player().taste())
                        .of(found.plans()));
        if (found.plans().size() < found.asked())
            text.append(found.plans().size())
                    .append(" of ")
                    .append(found.asked())
                    .append(" plans: no others differ enough and cost little enough more.\n");
        for (var remark : job.planning().remarks(found.best()))
            text.append(remark).append('\n');
        concessions(text, found.best());
        if (details) text.append('\n').append(new ListingText(job.planning().performance()).of(found.best()));
        return text.toString();
    }

    private void head(StringBuilder text) {
        Settings settings = job.planning().performance().settings();
        String title = job.read().tune().title();
        text.append(title.isBlank() ? "(no title)" : title)
                .append(" — ")
                .append(job.planning().request().accordion().name())
                .append(" — ")
                .append(job.planning().request().player().name())
                .append('\n');
        text.append("tempo ").append(settings.tempo()).append(assumed(settings.tempoAssumed()));
        text.append(", times through ").append(settings.timesThrough()).append(assumed(settings.timesAssumed()));
        text.append(", loudness ")
                .append(settings.loudness().name().toLowerCase(Locale.ROOT))
                .append(assumed(settings.loudnessAssumed()));
        if (settings.transposition() != 0) text.append(", transposed by ").append(settings.transposition());
        text.append(chords(job.read().tune(), settings.chords()));
        if (!job.planning().request().accordion().bellows().measured())
            text.append("; air figures are estimates until this accordion is measured");
        text.append('\n');
        String patterns = PatternText.of(job.planning().performance());
        if (!patterns.isEmpty()) text.append(patterns).append('\n');
        for (Skipped skipped : job.read().skipped())
            text.append("  ").append(skipped).append('\n');
        if (!job.tune().words().isEmpty())
            text.append("  ").append(job.tune().words()).append('\n');
    }

    /** Which chords are played, where the tune leaves a choice. */
    private static String chords(Tune tune, ChordsPlayed chords) {
        StringBuilder text = new StringBuilder();
        if (tune.hasAlternateChords())
            text.append(
                    switch (chords.alternates()) {
                        case LATER_PASSES -> ", alternate chords from pass 2 on";
                        case NEVER -> ", no alternate chords";
                        case ALWAYS -> ", alternate chords in every pass";
                    });
        if (tune.hasOptionalChords())
            text.append(chords.optional() ? ", chords in brackets played" : ", chords in brackets left out");
        return text.toString();
    }

    private static String assumed(boolean assumed) {
        return assumed ? " (assumed)" : "";
    }

    private static void obstacles(StringBuilder text, List<Obstacle> obstacles) {
        text.append("not playable as asked:\n");
        for (Obstacle obstacle : obstacles) {
            text.append("  ").append(obstacle.message()).append('\n');
            for (var remedy : obstacle.remedies())
                text.append("    remedy: ").append(remedy).append('\n');
        }
    }

    private void concessions(StringBuilder text, Plan plan) {
        for (Concession concession : plan.concessions())
            text.append("gave way: ")
                    .append(concession.what().name().toLowerCase(Locale.ROOT).replace('_', ' '))
                    .append(" at pass ")
                    .append(concession.pass())
                    .append(", measure ")
                    .append(job.planning()
                            .performance()
                            .tune()
                            .measure(concession.place().measure())
                            .number())
                    .append('\n');
        PlanRequest request = job.planning().request();
        for (var remedy : job.planning().remedies(plan, request.player().taste(), request.locks()))
            text.append("  remedy: ").append(remedy).append('\n');
    }
}
