package org.mantice.app.model;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.mantice.app.words.MusicWords;
import org.mantice.app.words.Words;
import org.mantice.reading.TuneEntry;
import org.mantice.tune.Key;
import org.mantice.tune.Meter;

/** The tunes of a book to choose from: those that what was typed leaves, one of them selected. */
public final class BookModel {
    /** Nothing is selected where nothing is left. */
    public static final int NONE = -1;

    private final List<BookLine> all;
    private final MusicWords music;
    private final Map<Key, String> keys = new HashMap<>();
    private final Map<Key, String> foldedKeys = new HashMap<>();
    private List<BookLine> shown;
    private int selected;

    /** @param last the tune to begin with, as {@link TuneEntry#handle()}; else the first */
    public BookModel(List<BookLine> lines, Optional<String> last, Words words) {
        this.all = List.copyOf(lines);
        this.music = new MusicWords(words);
        this.shown = all;
        this.selected =
                Math.max(all.isEmpty() ? NONE : 0, last.map(this::placeOf).orElse(NONE));
    }

    private int placeOf(String handle) {
        for (int i = 0; i < shown.size(); i++) if (shown.get(i).entry().handle().equals(handle)) return i;
        return NONE;
    }

    public int total() {
        return all.size();
    }

    /** How many are shown. */
    public int size() {
        return shown.size();
    }

    public TuneEntry entry(int row) {
        return shown.get(row).entry();
    }

    public String meter(int row) {
        return entry(row).meter().map(Meter::toString).orElse("");
    }

    public String key(int row) {
        return entry(row).key().map(this::words).orElse("");
    }

    private String words(Key key) {
        return keys.computeIfAbsent(key, music::key);
    }

    /** Row of the selected tune, or {@link #NONE}. */
    public int selected() {
        return selected;
    }

    public void select(int row) {
        selected = shown.isEmpty() ? NONE : Math.max(0, Math.min(shown.size() - 1, row));
    }

    /** Selects the tune so many rows further, or the last one that way. */
    public void move(int rows) {
        select(selected + rows);
    }

    public Optional<TuneEntry> choice() {
        return selected == NONE ? Optional.empty() : Optional.of(entry(selected));
    }

    /**
     * Shows the tunes that hold every word typed in number, title, meter or key; accents and capitals do not matter. A
     * tune of that very number is selected, else the one that was as long as it is shown, else the first.
     */
    public void filter(String typed) {
        Optional<String> before = choice().map(TuneEntry::handle);
        List<String> wanted = List.of(BookLine.folded(typed).strip().split("\\s+"));
        List<BookLine> left = new ArrayList<>();
        for (BookLine line : all) if (wanted.stream().allMatch(word -> holds(line, word))) left.add(line);
        shown = left;
        int numbered = numbered(typed.strip());
        select(numbered != NONE ? numbered : before.map(this::placeOf).orElse(NONE));
    }

    private boolean holds(BookLine line, String word) {
        return line.folded().contains(word)
                || line.entry().key().filter(key -> folded(key).contains(word)).isPresent();
    }

    /** A book has many tunes and few keys. */
    private String folded(Key key) {
        return foldedKeys.computeIfAbsent(key, each -> BookLine.folded(words(each)));
    }

    private int numbered(String number) {
        for (int i = 0; i < shown.size(); i++)
            if (!number.isEmpty() && entry(i).number().equals(number)) return i;
        return NONE;
    }
}
