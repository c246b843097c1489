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

    /** Knows the presets at once, all that is on the shelf a little later. */
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

    /** Those that can be read, as last seen; looks again for the next time. */
    @Override
    public List<Accordion> accordions() {
        refresh();
        return accordions.stream().flatMap(each -> each.profile().stream()).toList();
    }

    @Override
    public List<Player> players() {
        refresh();
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
