package org.mantice.app.model;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.mantice.reading.TuneEntry;
import org.mantice.tune.Meter;

/**
 * A tune of a book and what it is found by.
 *
 * @param folded number, title and meter as {@link #folded(String)} makes them
 */
public record BookLine(TuneEntry entry, String folded) {
    private static final Pattern MARKS = Pattern.compile("\\p{M}+");
    private static final Pattern APOSTROPHES = Pattern.compile("[\u2018\u2019\u02bc\u00b4`]");

    /** Takes a moment for a book of thousands: not for the window's thread. */
    public static List<BookLine> of(List<TuneEntry> entries) {
        return entries.stream()
                .map(entry -> new BookLine(
                        entry,
                        folded(entry.number() + " " + entry.title() + " "
                                + entry.meter().map(Meter::toString).orElse(""))))
                .toList();
    }

    /** In small letters, without accents, every apostrophe the same: as people type when they look for something. */
    static String folded(String text) {
        String plain =
                MARKS.matcher(Normalizer.normalize(text, Normalizer.Form.NFD)).replaceAll("");
        return APOSTROPHES.matcher(plain).replaceAll("'").toLowerCase(Locale.ROOT);
    }
}
