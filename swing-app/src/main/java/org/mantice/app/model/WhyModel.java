package org.mantice.app.model;

import java.util.List;
import java.util.Optional;
import org.mantice.app.sheet.Spot;
import org.mantice.app.sheet.Strip;
import org.mantice.app.words.MusicWords;
import org.mantice.app.words.RuleWords;
import org.mantice.app.words.Words;
import org.mantice.instrument.Accordion;
import org.mantice.layer.Choice;
import org.mantice.performance.Performance;
import org.mantice.plan.Decision;
import org.mantice.plan.Lock;

/**
 * Why the plan decides as it does at the selected place, and what else was possible there, in words.
 *
 * @param heading the place and the decision; how to ask where nothing is selected
 * @param costs the part of the plan's costs that this place has; empty while it is worked out, and where nothing is
 *     selected
 * @param choices cheapest first
 * @param note what to say instead of choices; empty if there are some
 * @param locks all that the player has locked
 */
public record WhyModel(
        String heading, Optional<CostTree> costs, List<Row> choices, String note, List<LockRow> locks) {
    /**
     * Something that was possible.
     *
     * @param extra what it would cost more
     * @param own whether it is what the plan does
     */
    public record Row(Choice choice, String value, String extra, boolean own) {}

    /** A locked decision in words. */
    public record LockRow(Lock lock, String words) {
        @Override
        public String toString() {
            return words;
        }
    }

    public WhyModel {
        choices = List.copyOf(choices);
        locks = List.copyOf(locks);
    }

    public static WhyModel of(PlannerState state, RuleWords rules, Words words) {
        return new Builder(state, rules, words, new MusicWords(words)).build();
    }

    private record Builder(PlannerState state, RuleWords rules, Words words, MusicWords music) {
        WhyModel build() {
            if (state.performance().isEmpty() || state.selection().isEmpty())
                return new WhyModel(
                        words.text(state.offers().isEmpty() ? "why.noPlans" : "why.ask"),
                        Optional.empty(),
                        List.of(),
                        "",
                        locks());
            Selection selection = state.selection().get();
            Performance performance = state.performance().get();
            Optional<Insight> insight = state.insight().filter(one -> one.selection().equals(selection));
            if (insight.isEmpty())
                return new WhyModel(
                        heading(selection, performance, List.of(), false),
                        Optional.empty(),
                        List.of(),
                        words.text("why.working"),
                        locks());
            Insight known = insight.get();
            List<Row> rows = known.choices().stream()
                    .map(choice -> row(choice, known.here()))
                    .toList();
            return new WhyModel(
                    heading(
                            selection,
                            performance,
                            known.here(),
                            !known.locks().isEmpty()),
                    Optional.of(CostTree.of(known.explanation(), words.text("why.share"), rules, words)),
                    rows,
                    rows.isEmpty() ? words.text("why.nothingElse") : "",
                    locks());
        }

        private String heading(Selection selection, Performance performance, List<Decision> here, boolean locked) {
            Spot spot = selection.spot();
            String place = spot.strip() == Strip.REGISTERS
                    ? words.text("why.pass", spot.pass())
                    : music.place(performance, spot.measure(), spot.place());
            String letter = selection.offer() < state.offers().size()
                    ? state.offers().get(selection.offer()).letter()
                    : "";
            StringBuilder heading = new StringBuilder(words.text("why.heading", letter, place));
            for (Decision decision : here)
                if (decision.kind() != Decision.Kind.HAND_PLACE)
                    heading.append('\n').append(words.text("why.decided", music.kind(decision.kind()), value(decision)));
            if (here.isEmpty() && spot.strip() == Strip.BELLOWS)
                heading.append('\n').append(words.text("why.noTurn"));
            if (locked) heading.append('\n').append(words.text("why.locked"));
            return heading.toString();
        }

        private String value(Decision decision) {
            return music.value(decision.kind(), decision.value(), accordion());
        }

        private Accordion accordion() {
            return state.setup().accordion();
        }

        private Row row(Choice choice, List<Decision> here) {
            return new Row(
                    choice, value(choice.decision()), music.cost(choice.extraCost()), isOwn(choice.decision(), here));
        }

        /** A choice of registers is written together with its octave; one of the bellows says only whether they turn. */
        private boolean isOwn(Decision choice, List<Decision> here) {
            return switch (choice.kind()) {
                case TURN -> choice.value().equals(Locks.NO_TURN) == here.isEmpty();
                case REGISTER ->
                    !here.isEmpty()
                            && Locks.of(choice, false).stream()
                                    .allMatch(lock -> here.stream()
                                            .anyMatch(decision -> Locks.of(decision, false)
                                                    .contains(lock)));
                default -> here.stream().anyMatch(decision -> decision.value().equals(choice.value()));
            };
        }

        private List<LockRow> locks() {
            if (state.performance().isEmpty()) return List.of();
            Performance performance = state.performance().get();
            return state.setup().locks().stream()
                    .map(lock -> new LockRow(lock, music.lock(lock, performance, accordion())))
                    .toList();
        }
    }
}
