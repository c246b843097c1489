package org.mantice.app.window;

import java.nio.file.Path;
import java.util.Optional;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.PlannerState;
import org.mantice.app.work.TuneContent;
import org.mantice.app.work.UnsavedWork;
import org.mantice.file.PlanFile;

/** Which files belong to what is open. Used by the window's thread. */
final class Papers {
    private final PlannerModel model;
    private Optional<TuneContent> content = Optional.empty();
    private Optional<Path> savedTo = Optional.empty();
    private boolean broughtBack;

    Papers(PlannerModel model) {
        this.model = model;
    }

    void opened(TuneContent tune, Optional<Path> plan) {
        content = Optional.of(tune);
        savedTo = plan;
        broughtBack = false;
    }

    /** Unsaved work was brought back: it stays unsaved until it is saved. */
    void broughtBack(TuneContent tune, Optional<Path> plan) {
        opened(tune, plan);
        broughtBack = true;
    }

    void saved(Path plan) {
        savedTo = Optional.of(plan);
        broughtBack = false;
    }

    Optional<TuneContent> content() {
        return content;
    }

    Optional<Path> savedTo() {
        return savedTo;
    }

    boolean isUnsaved() {
        return isUnsaved(model.state());
    }

    boolean isUnsaved(PlannerState state) {
        return content.isPresent() && (broughtBack || state.unsaved());
    }

    /**
     * The name of the tune's file without folder and ending, for names of other files; with the tune's place where the
     * file is a book.
     */
    String baseName() {
        String name = content.map(TuneContent::name).orElse("tune");
        String last = name.substring(Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1);
        int dot = last.indexOf('.');
        Optional<String> entry =
                model.state().tune().flatMap(tune -> tune.read().entry());
        return (dot > 0 ? last.substring(0, dot) : last)
                + entry.map(handle -> handle.replace('#', '-')).orElse("");
    }

    /** All that is needed to go on with it; empty if nothing is unsaved. */
    Optional<UnsavedWork> unsaved(PlannerState state, Optional<PlanFile> plan) {
        if (!isUnsaved(state)) return Optional.empty();
        return state.tune()
                .flatMap(tune -> content.map(bytes -> new UnsavedWork(tune, bytes, state.setup(), plan, savedTo)));
    }
}
