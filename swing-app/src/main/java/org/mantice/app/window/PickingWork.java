package org.mantice.app.window;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.mantice.app.model.BookLine;
import org.mantice.app.model.MelodyModel;
import org.mantice.app.model.OpenTune;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.PlannerState;
import org.mantice.app.work.Opened;
import org.mantice.app.work.TuneContent;
import org.mantice.reading.PartInfo;
import org.mantice.reading.ReadTune;

/** Picks what is played out of a file: a tune of a book, the part with the melody. */
final class PickingWork {
    private final PlannerModel model;
    private final Papers papers;
    private final Keeping keeping;
    private final Threads threads;
    private final Talk talk;

    PickingWork(PlannerModel model, Papers papers, Keeping keeping, Threads threads, Talk talk) {
        this.model = model;
        this.papers = papers;
        this.keeping = keeping;
        this.threads = threads;
        this.talk = talk;
    }

    /** Whether the open tune is one of a book. */
    static boolean hasOthers(PlannerState state) {
        return read(state).flatMap(ReadTune::entry).isPresent();
    }

    /** Whether something can be said or chosen about where the melody comes from. */
    static boolean hasMelodyToChoose(PlannerState state) {
        return read(state).filter(MelodyModel::isOfUse).isPresent();
    }

    private static Optional<ReadTune> read(PlannerState state) {
        return state.tune().map(OpenTune::read);
    }

    /** Asks which tune of the open book is to be played next. */
    void another() {
        papers.content()
                .ifPresent(content -> threads.read(
                        () -> Attempt.at(() -> new Opened.Book(content, BookLine.of(content.entries()))),
                        book -> book.accept(this::pick, talk::trouble)));
    }

    /** Asks which tune of a book is meant, beginning with the one that was last chosen, and opens it. */
    void pick(Opened.Book book) {
        TuneContent content = book.content();
        Optional<String> last = content.file().flatMap(keeping.remembered()::chosenOf);
        talk.ask().tuneOf(book.lines(), open(content).or(() -> last)).ifPresent(entry -> {
            content.file().ifPresent(file -> keeping.remember(all -> all.withChosen(file, entry.handle())));
            open(content, () -> content.open(Optional.empty(), Optional.of(entry.handle())));
        });
    }

    /** The tune of this book that is open. */
    private Optional<String> open(TuneContent content) {
        return papers.content()
                .filter(now -> now.file().isPresent() && now.file().equals(content.file()))
                .flatMap(now -> read(model.state()))
                .flatMap(ReadTune::entry);
    }

    private void open(TuneContent content, Supplier<OpenTune> reading) {
        threads.read(
                () -> Attempt.at(reading),
                found -> found.accept(
                        tune -> {
                            papers.opened(content, Optional.empty());
                            model.open(tune);
                        },
                        talk::trouble));
    }

    /**
     * Shows where the melody was taken from, and takes it from elsewhere if the player says so.
     *
     * @param beforeLosing goes on if what was decided on the old melody may be lost
     */
    void melody(Consumer<Runnable> beforeLosing) {
        Optional<ReadTune> read = read(model.state());
        Optional<TuneContent> content = papers.content();
        if (read.isEmpty() || content.isEmpty()) return;
        ReadTune tune = read.get();
        talk.ask()
                .melodyOf(tune)
                .filter(part -> !part.equals(tune.melody().part()))
                .ifPresent(
                        part -> beforeLosing.accept(() -> open(content.get(), () -> from(part, tune, content.get()))));
    }

    private static OpenTune from(PartInfo part, ReadTune tune, TuneContent content) {
        return content.open(Optional.of(MelodyModel.handle(tune, part)), tune.entry());
    }
}
