package org.mantice.app.window;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.work.Opened;
import org.mantice.app.work.Shelved;
import org.mantice.app.work.TuneOpening;
import org.mantice.fault.ManticeException;
import org.mantice.file.AccordionFile;
import org.mantice.file.PlanDocument;
import org.mantice.file.PlayerFile;

/** Opens tunes, plans and profiles, wherever they are named: chooser, drop, recent files, command line. */
final class OpeningWork {
    private final PlannerModel model;
    private final Papers papers;
    private final Keeping keeping;
    private final Threads threads;
    private final Talk talk;
    private final PickingWork picking;

    /** What became of several files of which one was wanted. */
    private record Found(Optional<Opened> opened, Optional<Path> file, List<Throwable> failures, List<Path> rest) {}

    OpeningWork(PlannerModel model, Papers papers, Keeping keeping, Threads threads, Talk talk) {
        this.picking = new PickingWork(model, papers, keeping, threads, talk);
        this.model = model;
        this.papers = papers;
        this.keeping = keeping;
        this.threads = threads;
        this.talk = talk;
    }

    PickingWork picking() {
        return picking;
    }

    /** Opens the first of the files that can be opened, and says what becomes of the others. */
    void open(List<Path> files) {
        List<Path> wanted = new ArrayList<>();
        for (Path file : files) if (!openedProfile(file)) wanted.add(file);
        if (wanted.isEmpty()) return;
        threads.read(() -> first(wanted, TuneOpening::open), this::found);
    }

    /** Opens the file that the program was started with, or the example without one; at once if it is read already. */
    void openFirst(Optional<Path> file, EarlyReading early) {
        Optional<Opened.Tune> ready = early.tuneIfRead();
        if (ready.isPresent()) found(new Found(Optional.of(ready.get()), file, List.of(), List.of()));
        else if (file.isEmpty()) threads.read(early::get, this::take);
        else if (!openedProfile(file.get()))
            threads.read(() -> first(List.of(file.get()), same -> early.get()), this::found);
    }

    private static Found first(List<Path> files, Function<Path, Opened> open) {
        List<Throwable> failures = new ArrayList<>();
        for (int i = 0; i < files.size(); i++) {
            try {
                Opened opened = open.apply(files.get(i));
                return new Found(
                        Optional.of(opened), Optional.of(files.get(i)), failures, files.subList(i + 1, files.size()));
            } catch (ManticeException | IllegalArgumentException e) {
                failures.add(e);
            }
        }
        return new Found(Optional.empty(), Optional.empty(), failures, List.of());
    }

    private void found(Found found) {
        found.failures().forEach(talk::trouble);
        if (!found.rest().isEmpty()) talk.say(words -> words.text("window.oneAtATime", names(found.rest())));
        found.opened().ifPresent(opened -> {
            found.file().ifPresent(file -> keeping.remember(remembered -> remembered.withRecent(file)));
            take(opened);
        });
    }

    private static String names(List<Path> files) {
        return String.join(
                ", ",
                files.stream().map(file -> String.valueOf(file.getFileName())).toList());
    }

    private void take(Opened opened) {
        if (opened instanceof Opened.Tune tune) {
            papers.opened(tune.content(), Optional.empty());
            model.open(tune.tune());
        } else if (opened instanceof Opened.Book book) {
            picking.pick(book);
        } else if (opened instanceof Opened.PlanWithTune plan) {
            papers.opened(plan.content(), Optional.of(plan.file()));
            model.reopen(plan.tune(), plan.plan());
        } else if (opened instanceof Opened.TuneMissing missing) {
            talk.ask()
                    .findTune(missing.wanted(), keeping.remembered().folder())
                    .ifPresent(tune -> openWith(missing.plan(), missing.file(), tune));
        } else if (opened instanceof Opened.TuneChanged changed
                && talk.ask().planAnew(changed.plan().tune().file())) {
            papers.opened(changed.content(), Optional.empty());
            model.open(changed.tune());
        }
    }

    private void openWith(PlanDocument plan, Path file, Path tune) {
        threads.read(
                () -> Attempt.at(() -> TuneOpening.open(plan, file, tune)),
                found -> found.accept(this::take, talk::trouble));
    }

    private boolean openedProfile(Path file) {
        String name = file.toString();
        if (name.endsWith(AccordionFile.SUFFIX)) {
            openProfile(file, key -> keeping.shelf().accordion(key), model::setAccordion);
            return true;
        }
        if (name.endsWith(PlayerFile.SUFFIX)) {
            openProfile(file, key -> keeping.shelf().player(key), model::setPlayer);
            return true;
        }
        return false;
    }

    private <P> void openProfile(Path file, Function<String, Optional<Shelved<P>>> shelf, Consumer<P> use) {
        threads.read(
                () -> Attempt.at(() -> shelf.apply(file.toString())
                        .orElseThrow(() ->
                                new IllegalArgumentException("file is " + file + "; allowed: a profile that is there"))
                        .load()),
                found -> found.accept(
                        profile -> {
                            keeping.remember(remembered -> remembered.withProfile(file));
                            keeping.refresh();
                            use.accept(profile);
                        },
                        talk::trouble));
    }

    /** A recent file: said and marked if it is gone. */
    void openRecent(Path file) {
        threads.read(() -> Files.exists(file), there -> {
            if (there) open(List.of(file));
            else {
                keeping.remember(remembered -> remembered.withMissing(file));
                talk.say(words -> words.text("window.recent.gone", file));
            }
        });
    }
}
