package org.mantice.app.model;

import java.math.BigDecimal;
import java.math.MathContext;
import java.text.NumberFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.mantice.app.sheet.Spot;
import org.mantice.app.sheet.Strip;
import org.mantice.app.words.MusicWords;
import org.mantice.app.words.RuleWords;
import org.mantice.app.words.Words;
import org.mantice.layer.Choice;
import org.mantice.performance.Performance;
import org.mantice.plan.BellowsPlan.Stroke;
import org.mantice.plan.Decision;

/** What there is to say of the selected place. */
record WhyPlace(PlannerState state, Performance performance, Selection selection, Words words, MusicWords music) {
    private Spot spot() {
        return selection.spot();
    }

    private Optional<Insight> insight() {
        return state.insight().filter(one -> one.selection().equals(selection));
    }

    private Offer offer() {
        return state.offers().get(selection.offer());
    }

    /** A line for the place, one for each decision, one if it is locked, one for what it pays. */
    String heading() {
        List<String> lines = new ArrayList<>();
        lines.add(words.text("why.heading", offer().letter(), place()));
        List<Decision> here = insight().map(Insight::here).orElse(List.of());
        for (Decision decision : here)
            if (decision.kind() != Decision.Kind.HAND_PLACE)
                lines.add(words.text("why.decided", music.kind(decision.kind()), decided(decision)));
        if (insight().isPresent() && here.isEmpty() && spot().strip() == Strip.BELLOWS)
            lines.add(words.text("why.noTurn"));
        if (!Locks.at(state.setup().locks(), spot()).isEmpty()) lines.add(words.text("why.locked"));
        share().ifPresent(lines::add);
        return String.join("\n", lines);
    }

    private String place() {
        return spot().strip() == Strip.REGISTERS
                ? words.text("why.pass", spot().pass())
                : music.place(performance, spot().measure(), spot().place());
    }

    /** The kind says that it is a finger. */
    private String decided(Decision decision) {
        return decision.kind() == Decision.Kind.FINGER ? decision.value() : value(decision);
    }

    /** While plans are being searched for, the place's costs and the plan's are not of the same weights. */
    private Optional<String> share() {
        long whole = offer().cost();
        if (state.isWorking() || whole <= 0) return Optional.empty();
        return insight().map(known -> known.explanation().cost()).map(paid -> {
            if (paid == 0) return words.text("why.paysNothing");
            NumberFormat percent = NumberFormat.getPercentInstance(words.locale());
            percent.setMaximumFractionDigits(1);
            BigDecimal share = BigDecimal.valueOf(paid).divide(BigDecimal.valueOf(whole), MathContext.DECIMAL64);
            return words.text("why.pays", music.cost(paid), percent.format(share), music.cost(whole));
        });
    }

    Optional<CostTree> costs(RuleWords rules) {
        return insight()
                .map(known -> CostTree.ofPlace(known.explanation(), words.text("why.share"), place(), rules, words));
    }

    /** None where the bellows begin: there is nothing yet that could turn. */
    List<WhyModel.Row> rows() {
        if (insight().isEmpty() || begins()) return List.of();
        Insight known = insight().get();
        return known.choices().stream().map(choice -> row(choice, known.here())).toList();
    }

    private boolean begins() {
        List<Stroke> strokes = offer().plan().bellows().strokes();
        return spot().strip() == Strip.BELLOWS
                && !strokes.isEmpty()
                && strokes.get(0).measure() == spot().measure()
                && strokes.get(0).place().equals(spot().place());
    }

    private WhyModel.Row row(Choice choice, List<Decision> here) {
        return new WhyModel.Row(
                choice, value(choice.decision()), music.cost(choice.extraCost()), isOwn(choice.decision(), here));
    }

    private String value(Decision decision) {
        return music.value(decision.kind(), decision.value(), state.setup().accordion());
    }

    /** A choice of registers is written together with its octave; one of the bellows says only whether they turn. */
    private static boolean isOwn(Decision choice, List<Decision> here) {
        return switch (choice.kind()) {
            case TURN -> choice.value().equals(Locks.NO_TURN) == here.isEmpty();
            case REGISTER ->
                !here.isEmpty()
                        && Locks.of(choice, false).stream().allMatch(lock -> here.stream()
                                .anyMatch(decision -> Locks.of(decision, false).contains(lock)));
            default -> here.stream().anyMatch(decision -> decision.value().equals(choice.value()));
        };
    }

    /** What is to be said of the choices, or why there are none. */
    String note(List<WhyModel.Row> rows) {
        if (insight().isEmpty())
            return words.text(state.answer() instanceof Answer.Failed ? "why.failed" : "why.working");
        if (state.isWorking()) return words.text("why.stale");
        if (begins()) return words.text("why.begins");
        if (rows.isEmpty()) return words.text("why.undecided");
        if (rows.size() == 1) return onlyOne();
        return rows.get(0).choice().extraCost() > 0 ? words.text("why.repeated") : "";
    }

    private String onlyOne() {
        return switch (spot().strip()) {
            case FINGERS -> words.text("why.only.finger");
            case REGISTERS -> words.text("why.only.register");
            case BELLOWS -> words.text("why.only.turn");
            case BUTTONS -> words.text("why.only.button");
        };
    }
}
