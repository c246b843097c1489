package org.mantice.app.work;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Function;
import org.mantice.fault.ManticeException;
import org.mantice.file.AccordionFile;
import org.mantice.file.PlayerFile;
import org.mantice.instrument.Accordion;
import org.mantice.instrument.AccordionPresets;
import org.mantice.player.Player;
import org.mantice.player.PlayerPresets;

/**
 * The accordions and players one can pick from: presets, shipped examples, the player's own files. A file that cannot be
 * read is on the shelf with its problem; one that is gone is not. Reads files, so it belongs off the event thread.
 */
public final class ProfileShelf {
    private static final int LONGEST_ID = 64;

    private final AppFolder folder;
    private final AtomicBoolean saidUnreadable = new AtomicBoolean();

    public ProfileShelf(AppFolder folder) {
        this.folder = folder;
    }

    /** Those that no file need be read for. */
    public static List<Shelved<Accordion>> presetAccordions() {
        return AccordionPresets.all().stream()
                .map(preset -> Shelved.preset(preset.id(), preset.name(), preset))
                .toList();
    }

    /** Those that no file need be read for. */
    public static List<Shelved<Player>> presetPlayers() {
        return PlayerPresets.all().stream()
                .map(preset -> Shelved.preset(preset.id(), preset.name(), preset))
                .toList();
    }

    /** @param remembered files opened or saved before, wherever they are */
    public List<Shelved<Accordion>> accordions(List<Path> remembered) {
        List<Shelved<Accordion>> shelf = new ArrayList<>(presetAccordions());
        shelf.addAll(exampleAccordions());
        shelf.addAll(own(remembered, AccordionFile.SUFFIX, ProfileShelf::ownAccordion));
        return List.copyOf(shelf);
    }

    /** @param remembered files opened or saved before, wherever they are */
    public List<Shelved<Player>> players(List<Path> remembered) {
        List<Shelved<Player>> shelf = new ArrayList<>(presetPlayers());
        shelf.addAll(examplePlayers());
        shelf.addAll(own(remembered, PlayerFile.SUFFIX, ProfileShelf::ownPlayer));
        return List.copyOf(shelf);
    }

    /** The accordion of a key, read now; empty if there is none. One that cannot be read has its problem. */
    public Optional<Shelved<Accordion>> accordion(String key) {
        return AccordionPresets.find(key)
                .map(preset -> Shelved.preset(preset.id(), preset.name(), preset))
                .or(() -> withKey(exampleAccordions(), key))
                .or(() -> file(key).map(ProfileShelf::ownAccordion));
    }

    /** The player of a key, read now; empty if there is none. One that cannot be read has its problem. */
    public Optional<Shelved<Player>> player(String key) {
        return PlayerPresets.find(key)
                .map(preset -> Shelved.preset(preset.id(), preset.name(), preset))
                .or(() -> withKey(examplePlayers(), key))
                .or(() -> file(key).map(ProfileShelf::ownPlayer));
    }

    private static <P> Optional<Shelved<P>> withKey(List<Shelved<P>> shelf, String key) {
        return shelf.stream().filter(entry -> entry.key().equals(key)).findFirst();
    }

    private static Optional<Path> file(String key) {
        try {
            return Optional.of(Path.of(key)).filter(Files::isRegularFile).map(ProfileShelf::absolute);
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    /**
     * Saves a player with the weights into the file that it came from; what else the file holds is kept.
     *
     * @throws ManticeException if the file cannot be read any more or cannot be written; it is then unchanged
     */
    public void save(Path file, Player player) {
        PlayerFile.read(file).with(player).write(file);
    }

    /**
     * Saves a player as a new profile of the player's own.
     *
     * @return where it is
     * @throws IllegalArgumentException if another player has the id
     * @throws ManticeException if it cannot be written
     */
    public Path saveNew(Player player) {
        Path file = folder.profiles().resolve(player.id() + PlayerFile.SUFFIX);
        if (takenIds().contains(player.id()))
            throw new IllegalArgumentException("id is " + player.id() + "; allowed: one that no other player has");
        AppFolder.makeFolder(folder.profiles());
        PlayerFile.of(player).write(file);
        return absolute(file);
    }

    /** An id that no other player has, made from a name: "Åse Lund" gives {@code ase-lund}. */
    public String freeId(String name) {
        String plain = Normalizer.normalize(name.toLowerCase(Locale.ROOT), Normalizer.Form.NFKD)
                .replaceAll("\\p{M}", "")
                .replaceAll("[^a-z0-9]+", "-");
        String base =
                plain.substring(0, Math.min(plain.length(), LONGEST_ID - 4)).replaceAll("^-|-$", "");
        if (base.isEmpty()) base = "player";
        Set<String> taken = takenIds();
        String id = base;
        for (int copy = 2; taken.contains(id); copy++) id = base + "-" + copy;
        return id;
    }

    private Set<String> takenIds() {
        Set<String> ids = new TreeSet<>();
        for (Player preset : PlayerPresets.all()) ids.add(preset.id());
        for (Shelved<Player> example : examplePlayers()) ids.add(example.key());
        for (Path file : filesIn(folder.profiles())) {
            String name = file.getFileName().toString();
            if (name.endsWith(PlayerFile.SUFFIX))
                ids.add(name.substring(0, name.length() - PlayerFile.SUFFIX.length()));
        }
        return ids;
    }

    private static List<Shelved<Accordion>> exampleAccordions() {
        return ShippedFiles.readAll("examples/accordions", file -> {
            Accordion example = AccordionFile.read(file).accordion();
            return Shelved.example(example.id(), example.name(), example);
        });
    }

    private static List<Shelved<Player>> examplePlayers() {
        return ShippedFiles.readAll("examples/players", file -> {
            Player example = PlayerFile.read(file).player();
            return Shelved.example(example.id(), example.name(), example);
        });
    }

    private static Shelved<Accordion> ownAccordion(Path file) {
        try {
            Accordion accordion = AccordionFile.read(file).accordion();
            return Shelved.own(file, accordion.name(), accordion);
        } catch (ManticeException e) {
            return Shelved.broken(file, e);
        }
    }

    private static Shelved<Player> ownPlayer(Path file) {
        try {
            Player player = PlayerFile.read(file).player();
            return Shelved.own(file, player.name(), player);
        } catch (ManticeException e) {
            return Shelved.broken(file, e);
        }
    }

    /** Of files with other endings those count that can be read as such a profile. */
    private <P> List<Shelved<P>> own(List<Path> remembered, String suffix, Function<Path, Shelved<P>> read) {
        Set<Path> files = new LinkedHashSet<>(filesIn(folder.profiles()));
        for (Path file : remembered) files.add(absolute(file));
        List<Shelved<P>> shelf = new ArrayList<>();
        for (Path file : files) {
            if (!Files.isRegularFile(file)) continue;
            Shelved<P> entry = read.apply(file);
            if (entry.profile().isPresent() || file.toString().endsWith(suffix)) shelf.add(entry);
        }
        return shelf;
    }

    private List<Path> filesIn(Path profiles) {
        List<Path> files = new ArrayList<>();
        if (!Files.isDirectory(profiles)) return files;
        try (DirectoryStream<Path> all = Files.newDirectoryStream(profiles, "*.json")) {
            all.forEach(file -> files.add(absolute(file)));
        } catch (IOException | DirectoryIteratorException e) {
            if (saidUnreadable.compareAndSet(false, true)) folder.tell(Notice.of("work.profiles-unreadable", profiles));
        }
        files.sort(null);
        return files;
    }

    private static Path absolute(Path file) {
        return file.toAbsolutePath().normalize();
    }
}
