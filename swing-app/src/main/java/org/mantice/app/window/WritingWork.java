package org.mantice.app.window;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import org.mantice.app.files.PlayedScore;
import org.mantice.app.files.ScoreFormat;
import org.mantice.app.model.Offer;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.PlannerState;
import org.mantice.file.AtomicFile;
import org.mantice.performance.Performer;
import org.mantice.tune.Tune;

/** Writes the tune as MusicXML, as written or with every time through written out. */
final class WritingWork {
    private final PlannerModel model;
    private final Papers papers;
    private final Keeping keeping;
    private final Threads threads;
    private final Talk talk;

    WritingWork(PlannerModel model, Papers papers, Keeping keeping, Threads threads, Talk talk) {
        this.model = model;
        this.papers = papers;
        this.keeping = keeping;
        this.threads = threads;
        this.talk = talk;
    }

    static boolean possible(PlannerState state) {
        return state.tune().isPresent();
    }

    /** Asks where, and writes the tune with the edits there; what is open stays as it is. */
    void write() {
        Optional<Tune> tune = model.state().editedTune();
        if (tune.isEmpty()) return;
        Path folder = keeping.remembered().folder().orElse(Path.of(System.getProperty("user.home", "")));
        talk.ask()
                .saveScore(
                        folder.resolve(papers.baseName() + "." + ScoreFormat.musicxml),
                        planned(model.state()).isPresent())
                .map(score -> score.at(ScoreFormat.named(score.file())))
                .filter(score -> mayReplace(score.file()))
                .ifPresent(score -> write(score.file(), content(score, tune.get())));
    }

    /** A tune that is read from a file is never written over itself; any other file only after asking. */
    private boolean mayReplace(Path file) {
        if (!Files.exists(file)) return true;
        Optional<Path> own = papers.content().flatMap(content -> content.file());
        if (own.filter(source -> source.equals(file.toAbsolutePath().normalize()))
                .isPresent()) {
            talk.say(words -> words.text("window.score.own", file));
            return false;
        }
        return talk.ask().overwrite(file);
    }

    /** The chosen plan's registers go with the passes; without a plan the tune is performed here. */
    private Supplier<Tune> content(Dialogs.Score score, Tune tune) {
        if (!score.writtenOut()) return () -> tune;
        PlannerState state = model.state();
        Optional<Offer> chosen = planned(state);
        return () -> chosen.flatMap(offer -> state.performance()
                        .map(performance -> PlayedScore.of(
                                performance, offer.plan(), state.setup().accordion(), score.bassStaff())))
                .orElseGet(() -> PlayedScore.of(
                        Performer.perform(tune, state.setup().wishes().settings(tune))))
                .tune();
    }

    private static Optional<Offer> planned(PlannerState state) {
        return state.chosenOffer().filter(offer -> SavingWork.possible(state));
    }

    private void write(Path file, Supplier<Tune> tune) {
        threads.read(
                () -> Attempt.at(() -> {
                    AtomicFile.write(file, ScoreFormat.of(file).bytes(tune.get()));
                    return file;
                }),
                done -> done.accept(
                        written -> {
                            keeping.remember(all -> all.withFolder(SavingWork.folder(written)));
                            talk.note(words -> words.text("window.score.written", written));
                        },
                        talk::trouble));
    }
}
