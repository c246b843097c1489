package org.mantice.app.model;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.mantice.app.words.MusicWords;
import org.mantice.app.words.RuleWords;
import org.mantice.app.words.Words;
import org.mantice.layer.Choice;
import org.mantice.plan.Lock;
import org.mantice.tune.Tune;

/**
 * Why the plan decides as it does at the selected place, and what else was possible there, in words.
 *
 * @param heading the place, what is decided there and what it pays; how to ask where nothing is selected
 * @param costs the part of the plan's costs that this place has; empty while it is worked out, and where nothing is
 *     selected
 * @param choices cheapest first
 * @param note what is to be said of the choices, or instead of them; may be empty
 * @param locks all that the player has locked
 */
public record WhyModel(String heading, Optional<CostTree> costs, List<Row> choices, String note, List<LockRow> locks) {
    /**
     * Something that was possible.
     *
     * @param extra by how much the best plan with it is dearer than the best of all
     * @param own whether it is what the plan does
     */
    public record Row(Choice choice, String value, String extra, boolean own) {
        /** The value, with the plan's own called so. */
        public String words(Words words) {
            return own ? words.text("why.own", value) : value;
        }
    }

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
        List<LockRow> locks = locks(state, words);
        if (state.performance().isEmpty() || state.selection().isEmpty())
            return new WhyModel(unasked(state, words), Optional.empty(), List.of(), "", locks);
        WhyPlace place =
                new WhyPlace(state, state.performance().get(), state.selection().get(), words, new MusicWords(words));
        List<Row> rows = place.rows();
        return new WhyModel(place.heading(), place.costs(rules), rows, place.note(rows), locks);
    }

    /** The same about the place of the chord line that is pointed at. */
    public static WhyModel ofChord(PlannerState state, TuneEditor editor, Words words) {
        WhyChord chord = new WhyChord(editor, editor.selected().orElseThrow(), words);
        return new WhyModel(chord.heading(), chord.reasons(), List.of(), chord.note(), locks(state, words));
    }

    private static String unasked(PlannerState state, Words words) {
        if (!state.offers().isEmpty()) return words.text("why.ask");
        Answer answer = state.answer();
        if (answer instanceof Answer.Working) return words.text("why.planning");
        if (answer instanceof Answer.NotPlayable)
            return words.text(state.setup().locks().isEmpty() ? "why.unplayable" : "why.unplayable.locks");
        return words.text("why.noPlans");
    }

    private static List<LockRow> locks(PlannerState state, Words words) {
        if (state.editedTune().isEmpty()) return List.of();
        Tune tune = state.editedTune().get();
        MusicWords music = new MusicWords(words);
        return state.setup().locks().stream()
                .map(lock ->
                        new LockRow(lock, music.lock(lock, tune, state.setup().accordion())))
                .toList();
    }

    /**
     * All of it as plain text, to be copied.
     *
     * @param tree the costs in view: those of the place, or of the whole plan
     */
    public String text(Optional<CostTree> tree, Words words) {
        StringBuilder text = new StringBuilder(heading).append('\n');
        tree.ifPresent(found -> text.append('\n').append(found.lines()));
        if (!choices.isEmpty())
            text.append(choices.stream()
                    .map(row -> "  " + row.extra() + "  " + row.words(words))
                    .collect(Collectors.joining("\n", "\n" + words.text("why.choices.text") + "\n", "\n")));
        if (!note.isEmpty()) text.append(note).append('\n');
        return text.toString();
    }
}
