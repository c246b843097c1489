package org.mantice.app.model;

import org.mantice.app.words.MusicWords;
import org.mantice.app.words.Words;

/**
 * How far the planning is, in words.
 *
 * @param text one sentence
 * @param found plans found so far; in the run under way while there is one
 * @param asked how many at most; 0 where nothing was asked for
 */
public record PlanningProgress(String text, int found, int asked, boolean working) {
    public static PlanningProgress of(PlannerState state, Words words) {
        Answer answer = state.answer();
        int found = answer.offers().size();
        MusicWords music = new MusicWords(words);
        if (answer instanceof Answer.Working working)
            return new PlanningProgress(
                    words.text("setup.progress.working", working.fresh(), working.asked()),
                    working.fresh(),
                    working.asked(),
                    true);
        if (answer instanceof Answer.Ready ready)
            return new PlanningProgress(
                    found < ready.asked()
                            ? words.text("setup.progress.fewer", found, ready.asked())
                            : words.text("setup.progress.ready", found),
                    found,
                    ready.asked(),
                    false);
        if (answer instanceof Answer.Stopped) return still(words.text("setup.progress.stopped", found), found, state);
        if (answer instanceof Answer.NotPlayable unplayable)
            return still(
                    unplayable.obstacles().isEmpty()
                            ? words.text("setup.progress.unplayable")
                            : words.text(
                                    "setup.progress.unplayableBecause",
                                    music.obstacle(unplayable.obstacles().get(0)),
                                    unplayable.obstacles().size() - 1),
                    found,
                    state);
        if (answer instanceof Answer.Failed failed)
            return still(words.text("setup.progress.failed", music.trouble(failed.cause())), found, state);
        return new PlanningProgress(words.text("setup.progress.nothing"), 0, 0, false);
    }

    private static PlanningProgress still(String text, int found, PlannerState state) {
        return new PlanningProgress(text, found, state.setup().wishes().plans(), false);
    }
}
