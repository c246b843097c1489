package org.mantice.reading.abc;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.mantice.fault.TextPlace;
import org.mantice.tune.Key;
import org.mantice.tune.Meter;

/**
 * The text of a file divided into its head and its tunes. A tune begins at X: and ends at an empty line; where lines of
 * music follow that empty line before the next X:, it was a slip and they still belong to the tune.
 */
public final class AbcBook {
    /**
     * A tune of the book, not yet read.
     *
     * @param number as after X:; empty if there is none
     * @param titles in their order; may be empty
     * @param key at its beginning, where its head names one that can be read
     * @param meter the same; that of the file's head where its own names none
     * @param place where it begins
     */
    public record Entry(String number, List<String> titles, Optional<Key> key, Optional<Meter> meter, TextPlace place) {
        public Entry {
            titles = List.copyOf(titles);
        }
    }

    private static final Pattern NUMBER = Pattern.compile("X:.*");
    private static final Pattern KEY = Pattern.compile("K:.*");
    private static final Pattern BODY_FIELD = Pattern.compile("[KLMPQVWw]:.*");
    /** Words of prose are longer than what stands between the signs of music. */
    private static final Pattern MUSIC = Pattern.compile("(?s)(?=.*\\|)(?!.*[h-y]{3,}).*[A-Ga-gz].*");

    private static final Pattern NOT_NOTES = Pattern.compile("\"[^\"]*\"|![^!]*!|\\[[A-Za-z]:[^\\]]*\\]|%.*");

    private final List<AbcLine> head = new ArrayList<>();
    private final List<List<AbcLine>> tunes = new ArrayList<>();

    private AbcBook() {}

    /** Divides a text. */
    public static AbcBook of(String text) {
        AbcBook book = new AbcBook();
        boolean inside = false;
        boolean withKey = false;
        int number = 0;
        for (String line : text.split("\r\n|\n|\r", -1)) {
            AbcLine next = new AbcLine(++number, line);
            if (NUMBER.matcher(line).matches()) {
                book.tunes.add(new ArrayList<>());
                inside = true;
                withKey = false;
            } else if (next.isBlank()) {
                inside = false;
                continue;
            } else if (!inside && !book.tunes.isEmpty() && book.goesOn(line, withKey)) {
                book.last().add(new AbcLine(number - 1, ""));
                inside = true;
            }
            if (KEY.matcher(line).matches()) withKey = true;
            if (inside) book.last().add(next);
            else if (book.tunes.isEmpty()) book.head.add(next);
        }
        if (book.tunes.isEmpty()) book.readAsOne();
        return book;
    }

    private List<AbcLine> last() {
        return tunes.get(tunes.size() - 1);
    }

    private boolean goesOn(String line, boolean withKey) {
        if (BODY_FIELD.matcher(line).matches()) return true;
        if (!withKey || line.startsWith("%")) return false;
        return MUSIC.matcher(NOT_NOTES.matcher(line).replaceAll("")).matches();
    }

    /** Without any X:, a text with a key is one tune. */
    private void readAsOne() {
        if (head.stream().noneMatch(line -> KEY.matcher(line.text()).matches())) return;
        tunes.add(new ArrayList<>(head));
        head.clear();
    }

    /** The tunes in the order of the file. */
    public List<Entry> entries() {
        Optional<Meter> usual = Optional.empty();
        for (AbcLine line : head)
            if (line.text().startsWith("M:"))
                usual = AbcMeter.meter(field(line.withoutComment().text()));
        List<Entry> entries = new ArrayList<>();
        for (List<AbcLine> tune : tunes) entries.add(entry(tune, usual));
        return entries;
    }

    private static Entry entry(List<AbcLine> lines, Optional<Meter> usual) {
        String number = "";
        List<String> titles = new ArrayList<>();
        Optional<Meter> meter = usual;
        Optional<Key> key = Optional.empty();
        for (AbcLine line : lines) {
            String text = line.withoutComment().text();
            if (text.startsWith("X:")) number = field(text);
            if (text.startsWith("T:")) titles.add(AbcEscapes.read(field(text)));
            if (text.startsWith("M:")) meter = AbcMeter.meter(field(text));
            if (!text.startsWith("K:")) continue;
            key = AbcKey.read(field(text)).flatMap(AbcKey::signature);
            break;
        }
        return new Entry(number, titles, key, meter, lines.get(0).place());
    }

    private static String field(String text) {
        return text.substring(2).strip();
    }

    /** @param index in {@link #entries()} */
    public AbcTune tune(int index) {
        List<AbcLine> lines = tunes.get(index);
        AbcTuneParser parser = new AbcTuneParser(lines.get(0).place(), new AbcMarks());
        parser.readFileHead(head);
        return parser.read(lines);
    }
}
