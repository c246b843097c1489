package org.mantice.app.window;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.mantice.app.model.ProfileChoices;
import org.mantice.app.work.ProfileShelf;
import org.mantice.app.work.Remembered;
import org.mantice.app.work.RememberedFile;
import org.mantice.app.work.Shelved;
import org.mantice.instrument.Accordion;
import org.mantice.player.Player;

/** What is kept from one start to the next: recent files, profiles, how the window looked. */
final class Keeping implements ProfileChoices {
    private final RememberedFile file;
    private final ProfileShelf shelf;
    private final Threads threads;
    private volatile List<Shelved<Accordion>> accordions;
    private volatile List<Shelved<Player>> players;

    /** Knows the presets; the rest of the shelf once it is {@linkplain #refresh looked through}. */
    Keeping(RememberedFile file, ProfileShelf shelf, Threads threads) {
        this.file = file;
        this.shelf = shelf;
        this.threads = threads;
        this.accordions = ProfileShelf.presetAccordions();
        this.players = ProfileShelf.presetPlayers();
    }

    Remembered remembered() {
        return file.current();
    }

    ProfileShelf shelf() {
        return shelf;
    }

    /** Changes what is remembered, in the background. */
    void remember(UnaryOperator<Remembered> change) {
        threads.files().execute(() -> file.change(change));
    }

    /** The same at once: the program ends. */
    void rememberNow(UnaryOperator<Remembered> change) {
        file.change(change);
    }

    /** Looks through the shelf again, in the background. */
    void refresh() {
        threads.files().execute(() -> {
            accordions = shelf.accordions(remembered().profiles());
            players = shelf.players(remembered().profiles());
        });
    }

    /** What is new is there when the list opens the next time. */
    @Override
    public void lookAgain() {
        refresh();
    }

    /** Those that can be read, as last seen. */
    @Override
    public List<Accordion> accordions() {
        return accordions.stream().flatMap(each -> each.profile().stream()).toList();
    }

    @Override
    public List<Player> players() {
        return players.stream().flatMap(each -> each.profile().stream()).toList();
    }

    /** The player's own file with a player of this name. */
    Optional<Shelved<Player>> ownPlayer(String name) {
        return players.stream()
                .filter(each ->
                        each.origin() == Shelved.Origin.OWN && each.name().equals(name))
                .findFirst();
    }

    /** By which an accordion is found again. */
    Optional<String> keyOf(Accordion accordion) {
        return accordions.stream()
                .filter(each -> each.profile().filter(accordion::equals).isPresent())
                .map(Shelved::key)
                .findFirst();
    }

    /** By which a player is found again; the weights may have moved since. */
    Optional<String> keyOf(Player player) {
        return players.stream()
                .filter(each -> each.profile()
                        .filter(one -> one.id().equals(player.id()))
                        .isPresent())
                .map(Shelved::key)
                .findFirst();
    }
}
