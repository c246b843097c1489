package org.mantice.app.window;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.mantice.app.model.Answer;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.PlannerState;
import org.mantice.app.work.Shelved;
import org.mantice.file.PlanFile;
import org.mantice.player.Player;

/** Saves plans and players, and asks before work is lost. */
final class SavingWork {
    private final PlannerModel model;
    private final Papers papers;
    private final Keeping keeping;
    private final Threads threads;
    private final Talk talk;

    SavingWork(PlannerModel model, Papers papers, Keeping keeping, Threads threads, Talk talk) {
        this.model = model;
        this.papers = papers;
        this.keeping = keeping;
        this.threads = threads;
        this.talk = talk;
    }

    /** Whether there is a plan to save that belongs to the present settings. */
    static boolean possible(PlannerState state) {
        return state.chosenOffer().isPresent()
                && (state.answer() instanceof Answer.Ready || state.answer() instanceof Answer.Stopped);
    }

    /** Saves where the plan was saved before, else asks where. */
    void save(Runnable then) {
        papers.savedTo().ifPresentOrElse(file -> write(file, true, then), () -> saveAs(then));
    }

    void saveAs(Runnable then) {
        suggest(papers.baseName()).ifPresent(file -> write(file, true, then));
    }

    /** Writes the chosen plan somewhere; what is open stays as it is. */
    void export() {
        String letter =
                model.state().chosenOffer().map(offer -> "-" + offer.letter()).orElse("");
        suggest(papers.baseName() + letter).ifPresent(file -> write(file, false, () -> {}));
    }

    private Optional<Path> suggest(String name) {
        Path folder = keeping.remembered().folder().orElse(Path.of(System.getProperty("user.home", "")));
        return talk.ask()
                .save(folder.resolve(name + PlanFile.SUFFIX))
                .map(SavingWork::named)
                .filter(file -> !Files.exists(file) || talk.ask().overwrite(file));
    }

    private static Path named(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.endsWith(".json") ? file : file.resolveSibling(name + PlanFile.SUFFIX);
    }

    private void write(Path file, boolean becomesOurs, Runnable then) {
        PlannerState asked = model.state();
        model.planFile(plan -> threads.read(
                () -> Attempt.at(() -> {
                    plan.write(file);
                    return file;
                }),
                done -> done.accept(
                        written -> {
                            written(written, becomesOurs, asked);
                            then.run();
                        },
                        talk::trouble)));
    }

    private void written(Path file, boolean becomesOurs, PlannerState asked) {
        keeping.remember(remembered -> becomesOurs ? remembered.withRecent(file) : remembered.withFolder(folder(file)));
        if (becomesOurs) {
            papers.saved(file);
            PlannerState now = model.state();
            // Who went on deciding meanwhile has something unsaved again.
            if (now.setup().equals(asked.setup()) && now.chosenOffer().equals(asked.chosenOffer())) model.saved();
        }
        talk.note(words -> words.text(becomesOurs ? "window.saved" : "window.exported", file));
    }

    /** Where a file lies. */
    static Path folder(Path file) {
        return Optional.ofNullable(file.toAbsolutePath().getParent()).orElse(file);
    }

    /** Goes on at once if nothing is unsaved, else as the player says; not at all if the player would rather stay. */
    void beforeLosing(Runnable then) {
        if (!papers.isUnsaved()) {
            then.run();
            return;
        }
        Dialogs.Unsaved answer = talk.ask().unsaved();
        if (answer == Dialogs.Unsaved.LOSE) then.run();
        else if (answer == Dialogs.Unsaved.SAVE) {
            if (possible(model.state())) save(then);
            else talk.say(words -> words.text("window.unsaved.noPlan"));
        }
    }

    /** Saves the player with the weights: into a file of the same name after asking, else as a new one. */
    void savePlayer() {
        Player player = model.state().setup().player();
        talk.ask()
                .playerName(player.name())
                .map(String::strip)
                .filter(name -> !name.isEmpty())
                .ifPresent(name -> {
                    Optional<Shelved<Player>> there = keeping.ownPlayer(name);
                    if (there.isEmpty()) savePlayer(player, name, Optional.empty());
                    else if (talk.ask().overwritePlayer(name))
                        savePlayer(player, name, there.get().file());
                });
    }

    private void savePlayer(Player player, String name, Optional<Path> file) {
        threads.read(
                () -> Attempt.at(() -> put(player, name, file)),
                done -> done.accept(
                        saved -> {
                            keeping.refresh();
                            model.setPlayer(saved);
                            talk.note(words -> words.text("window.playerSaved", saved.name()));
                        },
                        talk::trouble));
    }

    private Player put(Player player, String name, Optional<Path> file) {
        String id = file.flatMap(own -> keeping.shelf().player(own.toString()))
                .flatMap(Shelved::profile)
                .map(Player::id)
                .orElseGet(() -> keeping.shelf().freeId(name));
        Player named = new Player(
                id,
                name,
                player.handSpanTenths(),
                player.bassMethod(),
                player.jumps(),
                player.mayTurnInHeldNote(),
                player.taste());
        file.ifPresentOrElse(
                own -> keeping.shelf().save(own, named), () -> keeping.shelf().saveNew(named));
        return named;
    }
}
