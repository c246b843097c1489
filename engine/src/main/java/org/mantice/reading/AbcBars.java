package org.mantice.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.mantice.fault.TextPlace;
import org.mantice.reading.TuneReadException.Reason;
import org.mantice.reading.abc.AbcElement.Bar;
import org.mantice.reading.abc.AbcElement.Ending;
import org.mantice.tune.Meter;

/** Divides a voice into measures at its bar lines, with repeats and variant endings (ABC 2.1, sections 4.8 and 4.9). */
final class AbcBars {
    private static final Pattern RANGE = Pattern.compile("(\\d{1,3})(?:-(\\d{1,3}))?");

    private final AbcVoice voice;
    private final AbcReport report;
    private final List<AbcMeasure> measures = new ArrayList<>();
    private AbcMeasure current;
    private Meter meter = Meter.FREE;
    private boolean meterGiven;
    private boolean endingOpen;
    private boolean wholeMeasure;

    AbcBars(AbcVoice voice, AbcReport report) {
        this.voice = voice;
        this.report = report;
        this.current = new AbcMeasure(voice.pitches.key(), meter);
    }

    AbcMeasure current() {
        return current;
    }

    Meter meter() {
        return meter;
    }

    List<AbcMeasure> measures() {
        return measures;
    }

    void meter(Meter other) {
        if (current.hasItems()) current.findings.add(Finding.of(SkippedWhat.CHANGE_IN_MEASURE, "meter"));
        else setMeter(current, other, true);
        meter = other;
        meterGiven = true;
    }

    private static void setMeter(AbcMeasure measure, Meter meter, boolean given) {
        measure.meter = meter;
        measure.meterGiven = given;
    }

    private AbcMeasure next() {
        AbcMeasure next = new AbcMeasure(voice.pitches.key(), meter);
        next.meterGiven = meterGiven;
        return next;
    }

    void keyChanged() {
        if (current.hasItems()) current.findings.add(Finding.of(SkippedWhat.CHANGE_IN_MEASURE, "key"));
        else current.key = voice.pitches.key();
    }

    void add(AbcItem item) {
        if (wholeMeasure) close(Optional.empty());
        current.layer().add(item);
    }

    /** A rest of one measure; further ones begin measures of their own. */
    void addWhole(AbcItem item, TextPlace place) {
        if (measures.size() >= ReadLimits.MEASURES)
            throw TuneReadException.of(Reason.TOO_MANY_MEASURES, report.at(place), ReadLimits.MEASURES);
        if (current.hasItems()) close(Optional.empty());
        current.layer().add(item);
        wholeMeasure = true;
    }

    /** The same measure once more, for another voice. */
    void overlay() {
        if (wholeMeasure) wholeMeasure = false;
        voice.endRhythm();
        voice.pitches.startMeasure();
        current.startLayer();
    }

    void bar(Bar bar) {
        String text = bar.text();
        int before = colons(text, true);
        int after = colons(text, false);
        if (text.matches(":+")) {
            before = Math.max(1, text.length() / 2);
            after = Math.max(1, text.length() - before);
        }
        boolean thick = text.contains("||") || text.contains("]") || text.contains("[");
        if (measures.size() >= ReadLimits.MEASURES)
            throw TuneReadException.of(Reason.TOO_MANY_MEASURES, report.at(bar.place()), ReadLimits.MEASURES);
        close(Optional.of(bar));
        boolean sections = thick || before > 0 || after > 0;
        if (!measures.isEmpty()) {
            AbcMeasure left = measures.get(measures.size() - 1);
            if (before > 0) left.repeatEnd = Math.max(left.repeatEnd, Math.min(before, ReadLimits.REPEATS - 1) + 1);
            if (thick) left.thickEnd = true;
            if (sections) endEnding(left);
        }
        if (after > 0) current.repeatStart = true;
        if (sections) current.startsSection = true;
    }

    private static int colons(String text, boolean leading) {
        int count = 0;
        while (count < text.length() && text.charAt(leading ? count : text.length() - 1 - count) == ':') count++;
        return count;
    }

    private void endEnding(AbcMeasure left) {
        if (endingOpen) left.endingStop = true;
        endingOpen = false;
    }

    /** An ending that begins in mid-measure divides it. */
    void ending(Ending ending) {
        if (current.hasItems()) close(Optional.empty());
        if (!measures.isEmpty()) endEnding(measures.get(measures.size() - 1));
        current.ending = Optional.of(numbers(ending.text()));
        endingOpen = true;
    }

    /** "1-3" and "1,3" become "1, 2, 3" and "1, 3"; other text stays. */
    private static String numbers(String text) {
        List<String> numbers = new ArrayList<>();
        for (String part : text.split(",")) {
            Matcher range = RANGE.matcher(part.strip());
            if (!range.matches()) return text;
            int from = Integer.parseInt(range.group(1));
            int to = range.group(2) == null ? from : Integer.parseInt(range.group(2));
            if (to < from || to > ReadLimits.REPEATS) return text;
            for (int i = from; i <= to; i++) numbers.add(String.valueOf(i));
        }
        return String.join(", ", numbers);
    }

    /** A part of the tune begins. */
    void label(String text) {
        if (current.hasItems()) close(Optional.empty());
        current.label = Optional.of(text);
        current.startsSection = true;
    }

    /** Ends the measure if it holds anything; else what stands in it belongs to the one before. */
    private void close(Optional<Bar> bar) {
        voice.endRhythm();
        voice.pending().endMeasure();
        wholeMeasure = false;
        if (current.hasItems()) {
            measures.add(current);
            voice.pitches.startMeasure();
            current = next();
        } else if (bar.isPresent() && !measures.isEmpty()) {
            AbcMeasure empty = current;
            current = next();
            current.repeatStart = empty.repeatStart;
            current.startsSection = empty.startsSection;
            current.ending = empty.ending;
            current.label = empty.label;
            measures.get(measures.size() - 1).takeOver(empty, true);
        }
    }

    void finish() {
        AbcMeasure open = current;
        close(Optional.empty());
        if (!open.hasItems() && !measures.isEmpty())
            measures.get(measures.size() - 1).takeOver(open, true);
        if (!measures.isEmpty()) endEnding(measures.get(measures.size() - 1));
        if (current.repeatStart) report.list().add(SkippedWhat.REPEAT, "that begins at the end");
        voice.pending().finish();
        startRepeats();
        tieIntoEndings();
        number();
    }

    /** A repeat without a start goes back to where its part of the tune begins, if nothing was repeated since. */
    private void startRepeats() {
        boolean open = false;
        int start = 0;
        for (int i = 0; i < measures.size(); i++) {
            AbcMeasure measure = measures.get(i);
            if (measure.label.isPresent()) start = i;
            if (measure.repeatStart) open = true;
            if (measure.repeatEnd == 0) continue;
            if (!open && start > 0) measures.get(start).repeatStart = true;
            open = false;
            start = 0;
        }
    }

    /** A tie before the first ending reaches into every ending that begins with the same pitch. */
    private void tieIntoEndings() {
        Optional<AbcItem> before = Optional.empty();
        boolean inside = false;
        for (int i = 1; i < measures.size(); i++) {
            AbcMeasure measure = measures.get(i);
            List<AbcItem> left = measures.get(i - 1).first();
            if (measure.ending.isPresent() && !inside)
                before = left.isEmpty() ? Optional.empty() : Optional.of(left.get(left.size() - 1));
            else if (measure.ending.isPresent() && !measure.first().isEmpty())
                before.ifPresent(tied -> tieInto(tied, measure.first().get(0)));
            boolean adjoins =
                    i + 1 < measures.size() && measures.get(i + 1).ending.isPresent();
            if (measure.ending.isPresent()) inside = true;
            if (measure.endingStop && !adjoins) inside = false;
        }
    }

    private static void tieInto(AbcItem tied, AbcItem item) {
        for (AbcItem.Tone tone : item.tones)
            tone.tiedBack = tied.tones.stream()
                    .anyMatch(other -> other.tie && other.pitch.isPresent() && other.pitch.equals(tone.pitch));
    }

    /** Numbers the measures; what does not fill its meter at the start of a section does not count. */
    private void number() {
        int number = 0;
        for (int i = 0; i < measures.size(); i++) {
            AbcMeasure measure = measures.get(i);
            boolean isShort = !measure.meter.isFree()
                    && measure.length().isPositive()
                    && measure.length().isBefore(measure.meter.length());
            boolean pickup = isShort && (i == 0 || measure.startsSection);
            boolean rest = isShort && i > 0 && completes(measures.get(i - 1), measure);
            measure.implicit = pickup || rest;
            if (!measure.implicit) number++;
            measure.number = String.valueOf(number);
        }
    }

    private static boolean completes(AbcMeasure before, AbcMeasure measure) {
        return !before.implicit
                && before.meter.equals(measure.meter)
                && before.length().plus(measure.length()).equals(measure.meter.length());
    }
}
