package org.mantice.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.mantice.reading.TuneReadException.Reason;
import org.mantice.reading.abc.AbcBook;

/** A text of ABC divided into tunes: lists them, finds the one that is asked for, reads it. */
final class AbcTunes {
    /** Titles that a message lists. */
    private static final int MOST_LISTED = 20;

    private final TuneSource source;
    private final AbcBook book;
    private final List<AbcBook.Entry> found;
    private final List<Finding> aboutText;

    /** @param aboutText what is listed with every tune */
    AbcTunes(TuneSource source, AbcBook book, List<Finding> aboutText) {
        this.source = source;
        this.book = book;
        this.found = book.entries();
        this.aboutText = List.copyOf(aboutText);
        if (found.isEmpty()) throw TuneReadException.of(Reason.NO_TUNES, source.place());
    }

    List<TuneEntry> entries() {
        List<TuneEntry> entries = new ArrayList<>();
        for (AbcBook.Entry entry : found)
            entries.add(new TuneEntry(
                    entries.size() + 1,
                    entry.number(),
                    title(entry),
                    entry.key(),
                    entry.meter(),
                    OptionalInt.of(entry.place().line())));
        return entries;
    }

    private static String title(AbcBook.Entry entry) {
        return entry.titles().stream().findFirst().orElse("");
    }

    ReadTune read(ReadOptions options) {
        ReadReport report = new ReadReport();
        aboutText.forEach(report::add);
        int index = options.tune().map(this::chosen).orElse(0);
        if (options.tune().isEmpty() && found.size() > 1)
            report.add(SkippedWhat.FIRST_OF_BOOK, String.valueOf(found.size()));
        AbcReport problems = new AbcReport(source.place(), options.strict(), report);
        AbcBook.Entry entry = found.get(index);
        if (entry.number().isEmpty()) problems.add(entry.place(), SkippedWhat.HEAD_FIELD, "X:");
        Score score = new AbcScore(problems).read(book.tune(index));
        if (score.parts().isEmpty()) throw TuneReadException.of(Reason.NO_MEASURES, problems.at(entry.place()));
        ReadTune read = new TuneBuilder(source, score, report).build(options);
        if (found.size() == 1) return read;
        return new ReadTune(
                read.tune(),
                read.skipped(),
                read.parts(),
                read.melody(),
                read.fingerprint(),
                Optional.of(TuneEntry.handle(index + 1)));
    }

    private int chosen(String asked) {
        String wanted = asked.strip();
        OptionalInt place = Numbers.integer(wanted.replaceFirst("^#", ""));
        boolean exists = place.isPresent() && place.getAsInt() >= 1 && place.getAsInt() <= found.size();
        if (wanted.startsWith("#") && exists) return place.getAsInt() - 1;
        OptionalInt first = first(entry -> entry.number().equals(wanted));
        if (first.isEmpty()) first = first(entry -> entry.titles().stream().anyMatch(wanted::equalsIgnoreCase));
        if (first.isPresent()) return first.getAsInt();
        if (exists) return place.getAsInt() - 1;
        String allowed = found.stream()
                .limit(MOST_LISTED)
                .map(entry -> (entry.number() + " " + title(entry)).strip())
                .collect(Collectors.joining(", "));
        throw TuneReadException.of(Reason.NO_SUCH_TUNE, source.place(), asked, allowed);
    }

    private OptionalInt first(Predicate<AbcBook.Entry> condition) {
        return IntStream.range(0, found.size())
                .filter(i -> condition.test(found.get(i)))
                .findFirst();
    }
}
