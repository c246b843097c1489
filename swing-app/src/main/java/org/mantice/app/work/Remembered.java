package org.mantice.app.work;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the app remembers from one start to the next.
 *
 * @param recent tunes and plans, newest first, each once, at most {@value #MOST_RECENT}
 * @param folder where the last file was opened or saved
 * @param picked accordion and player of last time
 * @param profiles files of profiles that were opened or saved, newest first, each once, at most {@value #MOST_PROFILES}
 * @param books the tune last chosen of each book, newest first, each book once, at most {@value #MOST_BOOKS}
 * @param appearance how the window looked
 */
public record Remembered(
        List<Recent> recent,
        Optional<Path> folder,
        Picked picked,
        List<Path> profiles,
        List<Book> books,
        Appearance appearance) {
    static final int MOST_RECENT = 10;
    static final int MOST_PROFILES = 30;
    static final int MOST_BOOKS = 30;

    /**
     * The tune last chosen of a book.
     *
     * @param file absolute
     * @param entry as {@link org.mantice.reading.TuneEntry#handle()}
     */
    public record Book(Path file, String entry) {}

    /**
     * A file that was opened or saved.
     *
     * @param file absolute
     * @param missing whether it was not there when it was last asked for
     */
    public record Recent(Path file, boolean missing) {}

    /** Accordion and player by their keys on the {@link ProfileShelf}. */
    public record Picked(Optional<String> accordion, Optional<String> player) {
        public Picked withAccordion(String key) {
            return new Picked(Optional.of(key), player);
        }

        public Picked withPlayer(String key) {
            return new Picked(accordion, Optional.of(key));
        }
    }

    public static final Remembered NOTHING = new Remembered(
            List.of(),
            Optional.empty(),
            new Picked(Optional.empty(), Optional.empty()),
            List.of(),
            List.of(),
            Appearance.USUAL);

    public Remembered {
        recent = List.copyOf(recent.subList(0, Math.min(recent.size(), MOST_RECENT)));
        profiles = List.copyOf(profiles.subList(0, Math.min(profiles.size(), MOST_PROFILES)));
        books = List.copyOf(books.subList(0, Math.min(books.size(), MOST_BOOKS)));
    }

    /** A tune or plan was opened or saved: it comes first, and its folder is the last one. */
    public Remembered withRecent(Path file) {
        Path opened = absolute(file);
        List<Recent> files = new ArrayList<>();
        files.add(new Recent(opened, false));
        for (Recent other : recent) if (!other.file.equals(opened)) files.add(other);
        return new Remembered(files, Optional.ofNullable(opened.getParent()), picked, profiles, books, appearance);
    }

    /** A recent file was asked for and is not there; it stays where it is in the list. */
    public Remembered withMissing(Path file) {
        Path gone = absolute(file);
        List<Recent> files = new ArrayList<>();
        for (Recent other : recent) files.add(other.file.equals(gone) ? new Recent(gone, true) : other);
        return new Remembered(files, folder, picked, profiles, books, appearance);
    }

    public Remembered withoutRecent() {
        return new Remembered(List.of(), folder, picked, profiles, books, appearance);
    }

    public Remembered withFolder(Path last) {
        return new Remembered(recent, Optional.of(absolute(last)), picked, profiles, books, appearance);
    }

    public Remembered withAccordion(String key) {
        return new Remembered(recent, folder, picked.withAccordion(key), profiles, books, appearance);
    }

    public Remembered withPlayer(String key) {
        return new Remembered(recent, folder, picked.withPlayer(key), profiles, books, appearance);
    }

    /** A profile was opened or saved. */
    public Remembered withProfile(Path file) {
        Path opened = absolute(file);
        List<Path> files = new ArrayList<>();
        files.add(opened);
        for (Path other : profiles) if (!other.equals(opened)) files.add(other);
        return new Remembered(recent, folder, picked, files, books, appearance);
    }

    /** A tune of a book was chosen. */
    public Remembered withChosen(Path book, String entry) {
        Path chosen = absolute(book);
        List<Book> all = new ArrayList<>();
        all.add(new Book(chosen, entry));
        for (Book other : books) if (!other.file.equals(chosen)) all.add(other);
        return new Remembered(recent, folder, picked, profiles, all, appearance);
    }

    /** The tune last chosen of a book. */
    public Optional<String> chosenOf(Path book) {
        Path asked = absolute(book);
        return books.stream()
                .filter(each -> each.file.equals(asked))
                .map(Book::entry)
                .findFirst();
    }

    public Remembered withAppearance(Appearance changed) {
        return new Remembered(recent, folder, picked, profiles, books, changed);
    }

    private static Path absolute(Path file) {
        return file.toAbsolutePath().normalize();
    }
}
