package org.mantice.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.mantice.reading.TuneReadException.Reason;
import org.mantice.reading.abc.AbcBook;

/** ABC 2.1: one tune of a book. */
final class AbcFormat implements TuneFormat {
    private static final Pattern TUNE = Pattern.compile("(?m)^\\W{0,3}(%abc\\b|X:[ \\t]*\\d)");
    private static final Pattern KEY = Pattern.compile("(?m)^K:[ \\t]*([A-G]|none|H[Pp]|$)");
    private static final Pattern HEAD = Pattern.compile("(?m)^\\W{0,3}[TMLQ]:");
    /** Titles that a message lists. */
    private static final int MOST_LISTED = 20;

    @Override
    public boolean claims(byte[] bytes) {
        String start = AbcText.beginning(bytes);
        if (start.startsWith("MThd")) return false;
        if (start.startsWith("\u00fe\u00ff") || start.startsWith("\u00ff\u00fe")) start = start.replace("\0", "");
        else if (start.indexOf('\0') >= 0) return false;
        return TUNE.matcher(start).find()
                || KEY.matcher(start).find() && HEAD.matcher(start).find();
    }

    @Override
    public List<TuneEntry> list(TuneSource source) {
        return entries(source, book(source, new ReadReport()));
    }

    private static AbcBook book(TuneSource source, ReadReport report) {
        return AbcBook.of(new AbcText(source.place(), report).decode(source.bytes()));
    }

    private static List<TuneEntry> entries(TuneSource source, AbcBook book) {
        List<TuneEntry> entries = new ArrayList<>();
        for (AbcBook.Entry entry : book.entries())
            entries.add(new TuneEntry(
                    entries.size() + 1,
                    entry.number(),
                    entry.titles().stream().findFirst().orElse(""),
                    OptionalInt.of(entry.place().line())));
        if (entries.isEmpty()) throw TuneReadException.of(Reason.NO_TUNES, source.place());
        return entries;
    }

    @Override
    public ReadTune read(TuneSource source, ReadOptions options) {
        ReadReport report = new ReadReport();
        AbcBook book = book(source, report);
        List<TuneEntry> entries = entries(source, book);
        int index = options.tune().isPresent()
                ? chosen(source, book.entries(), options.tune().get())
                : 0;
        if (options.tune().isEmpty() && entries.size() > 1)
            report.add(SkippedWhat.FIRST_OF_BOOK, String.valueOf(entries.size()));
        AbcReport problems = new AbcReport(source.place(), options.strict(), report);
        if (entries.get(index).number().isEmpty())
            problems.add(book.entries().get(index).place(), SkippedWhat.HEAD_FIELD, "X:");
        Score score = new AbcScore(problems).read(book.tune(index));
        if (score.parts().isEmpty())
            throw TuneReadException.of(
                    Reason.NO_MEASURES, problems.at(book.entries().get(index).place()));
        ReadTune read = new TuneBuilder(source, score, report).build(options);
        if (entries.size() == 1) return read;
        return new ReadTune(
                read.tune(),
                read.skipped(),
                read.parts(),
                read.melody(),
                read.fingerprint(),
                Optional.of(entries.get(index).handle()));
    }

    private static int chosen(TuneSource source, List<AbcBook.Entry> entries, String asked) {
        String wanted = asked.strip();
        OptionalInt place = Numbers.integer(wanted.replaceFirst("^#", ""));
        boolean exists = place.isPresent() && place.getAsInt() >= 1 && place.getAsInt() <= entries.size();
        if (wanted.startsWith("#") && exists) return place.getAsInt() - 1;
        OptionalInt found = first(entries, entry -> entry.number().equals(wanted));
        if (found.isEmpty())
            found = first(entries, entry -> entry.titles().stream().anyMatch(wanted::equalsIgnoreCase));
        if (found.isPresent()) return found.getAsInt();
        if (exists) return place.getAsInt() - 1;
        String allowed = entries.stream()
                .limit(MOST_LISTED)
                .map(entry -> entry.number() + " "
                        + entry.titles().stream().findFirst().orElse(""))
                .map(String::strip)
                .collect(Collectors.joining(", "));
        throw TuneReadException.of(Reason.NO_SUCH_TUNE, source.place(), asked, allowed);
    }

    private static OptionalInt first(List<AbcBook.Entry> entries, Predicate<AbcBook.Entry> condition) {
        return IntStream.range(0, entries.size())
                .filter(i -> condition.test(entries.get(i)))
                .findFirst();
    }
}
