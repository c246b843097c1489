package org.mantice.app.window;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.mantice.app.model.Background;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.PlannerState;
import org.mantice.app.work.AbandonedCopy;
import org.mantice.app.work.RecoveryCopy;
import org.mantice.app.work.RecoveryWriter;
import org.mantice.app.work.Restored;
import org.mantice.app.work.UnsavedWork;
import org.mantice.file.PlanFile;

/** Keeps a copy of unsaved work while there is some, and brings back what other starts have left behind. */
final class RecoveryWork {
    private static final Duration QUIET = Duration.ofMillis(1_500);

    private final PlannerModel model;
    private final Papers papers;
    private final Threads threads;
    private final Talk talk;
    private final Copies copies;
    private final List<Background.Running> waiting = new ArrayList<>();
    private volatile Optional<UnsavedWork> latest = Optional.empty();
    private Optional<PlannerState> seen = Optional.empty();
    private Optional<PlanFile> lastPlan = Optional.empty();

    /**
     * Where copies go.
     *
     * @param clock waits until nothing has changed for a while
     */
    record Copies(RecoveryCopy copy, RecoveryWriter writer, Background clock) {}

    RecoveryWork(PlannerModel model, Papers papers, Threads threads, Talk talk, Copies copies) {
        this.model = model;
        this.papers = papers;
        this.threads = threads;
        this.talk = talk;
        this.copies = copies;
        model.addListener(this::changed);
    }

    /** Only what is decided matters: not what is looked at. */
    private void changed(PlannerState state) {
        boolean same = seen.filter(before -> before.setup().equals(state.setup())
                        && before.chosenOffer().equals(state.chosenOffer())
                        && before.tune().equals(state.tune())
                        && before.unsaved() == state.unsaved())
                .isPresent();
        if (same) return;
        if (seen.filter(before -> before.tune().equals(state.tune())).isEmpty()) lastPlan = Optional.empty();
        seen = Optional.of(state);
        waiting.forEach(Background.Running::cancel);
        waiting.clear();
        if (!papers.isUnsaved(state)) {
            latest = Optional.empty();
            copies.writer().saved();
            return;
        }
        keep();
        waiting.add(copies.clock().later(QUIET, () -> {
            if (SavingWork.possible(model.state()))
                model.planFile(plan -> {
                    lastPlan = Optional.of(plan);
                    keep();
                });
        }));
    }

    private void keep() {
        papers.unsaved(model.state(), lastPlan).ifPresent(work -> {
            latest = Optional.of(work);
            copies.writer().changed(work);
        });
    }

    /** Writes the copy here and now, on whatever thread: something went wrong. */
    void writeNow() {
        latest.ifPresent(copies.copy()::write);
    }

    /** The program ends as the player wants it to. */
    void close() {
        copies.copy().close();
    }

    /** Asks about the copies that other starts left, one by one. */
    void offer(List<AbandonedCopy> found, Runnable otherwise) {
        List<AbandonedCopy> left = new ArrayList<>(found);
        while (!left.isEmpty()) {
            Dialogs.RecoveryAnswer answer = talk.ask()
                    .recover(left.stream().map(RecoveryWork::forPeople).toList());
            if (answer.what() == Dialogs.Recovery.LATER) break;
            AbandonedCopy copy = left.remove(answer.copy());
            if (answer.what() == Dialogs.Recovery.THROW_AWAY) threads.files().execute(copy::discard);
            else {
                left.forEach(AbandonedCopy::close);
                bringBack(copy, otherwise);
                return;
            }
        }
        left.forEach(AbandonedCopy::close);
        otherwise.run();
    }

    private static Dialogs.Copy forPeople(AbandonedCopy copy) {
        return new Dialogs.Copy(copy.title(), copy.tuneFile(), copy.writtenAt());
    }

    private void bringBack(AbandonedCopy copy, Runnable otherwise) {
        threads.read(() -> copies.copy().restore(copy), restored -> {
            if (restored.isEmpty()) otherwise.run();
            else took(copy, restored.get(), otherwise);
        });
    }

    private void took(AbandonedCopy copy, Restored restored, Runnable otherwise) {
        if (restored instanceof Restored.Work work) take(work.work());
        else {
            String wanted = restored instanceof Restored.TuneMissing missing
                    ? missing.wanted().toString()
                    : ((Restored.TuneChanged) restored).file().toString();
            Optional<Path> tune = talk.ask().findTune(wanted, Optional.empty());
            if (tune.isEmpty()) {
                copy.close();
                otherwise.run();
                return;
            }
            threads.read(() -> copies.copy().restore(copy, tune.get()), again -> {
                if (again.isEmpty()) otherwise.run();
                else took(copy, again.get(), otherwise);
            });
        }
    }

    private void take(UnsavedWork work) {
        papers.broughtBack(work.content(), work.savedTo());
        if (work.plan().isPresent()) model.reopen(work.tune(), work.plan().get().document());
        else model.open(work.tune());
        model.goOn(work.setup());
        talk.note(words -> words.text("window.broughtBack"));
    }
}
