package org.mantice.app.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.mantice.app.model.Answer;
import org.mantice.app.model.PlannerState;
import org.mantice.app.words.MusicWords;
import org.mantice.app.words.Words;
import org.mantice.plan.Obstacle;

/**
 * What the player must be told about the answer.
 *
 * @param title what is the matter, in a few words
 * @param lines why, and what can be done about it
 * @param withoutRule the rule without which it would go on; empty if it is none
 * @param freeing whether freeing the locks may help
 */
record Message(String title, List<String> lines, Optional<String> withoutRule, boolean freeing) {
    private static final String REMEDY = "   → ";

    Message {
        lines = List.copyOf(lines);
    }

    /** Empty if all is well. */
    static Optional<Message> of(PlannerState state, Words words) {
        Answer answer = state.answer();
        if (answer instanceof Answer.NotPlayable unplayable) return Optional.of(unplayable(unplayable, state, words));
        if (answer instanceof Answer.Failed failed) return Optional.of(failed(failed, words));
        return Optional.empty();
    }

    private static Message unplayable(Answer.NotPlayable answer, PlannerState state, Words words) {
        MusicWords music = new MusicWords(words);
        List<String> lines = new ArrayList<>();
        for (Obstacle obstacle : answer.obstacles()) {
            lines.add(music.obstacle(obstacle));
            for (String remedy : music.remedies(obstacle)) lines.add(REMEDY + remedy);
        }
        if (!answer.before().isEmpty()) lines.add(words.text("window.message.before"));
        return new Message(
                words.text("window.message.unplayable"),
                lines,
                Optional.empty(),
                !state.setup().locks().isEmpty());
    }

    private static Message failed(Answer.Failed answer, Words words) {
        List<String> lines = new ArrayList<>();
        lines.add(new MusicWords(words).trouble(answer.cause()));
        if (!answer.before().isEmpty()) lines.add(words.text("window.message.before"));
        return new Message(
                words.text("window.message.failed"),
                lines,
                Optional.of(answer.ruleId()).filter(rule -> !rule.isEmpty()),
                false);
    }

    String text() {
        return String.join("\n", lines);
    }
}
