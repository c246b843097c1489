package org.mantice.layer.lefthand;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.mantice.instrument.StradellaBass;
import org.mantice.pattern.Accompaniment;
import org.mantice.pattern.Accompaniment.Choice;
import org.mantice.pattern.BassPattern;
import org.mantice.pattern.BassPatterns;
import org.mantice.performance.HarmonySpan;
import org.mantice.performance.Performance;
import org.mantice.performance.Performer;
import org.mantice.performance.PlayedMeasure;
import org.mantice.performance.SettingsBuilder;
import org.mantice.reading.Corpus;
import org.mantice.reading.TuneReader;
import org.mantice.tune.Measure;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tune;

/**
 * Every measure of every tune of the corpus under every pattern that fits its meter: strokes fill the time of each chord
 * exactly, without overlap, and none sounds beyond its end.
 */
class PatternFillTest {
    private static final StradellaBass BASS = StradellaBass.ofSize(120);

    private int measures;
    private int strokes;
    private final TreeSet<String> meters = new TreeSet<>();

    @Test
    void strokesFillEveryMeasureOfTheLeadSheets() {
        check("mxl-leadsheets-pd", ".mxl");
    }

    @Test
    void strokesFillEveryMeasureOfTheFolkTunes() {
        for (String folder : List.of("abc-nottingham", "abc-flyingcat")) check(folder, ".abc");
    }

    private void check(String folder, String ending) {
        for (Corpus.Numbered file : Corpus.files(folder, ending))
            for (Tune tune : tunes(file)) {
                if (!tune.hasNotes() || !tune.hasChords()) continue;
                for (Optional<String> pattern : patterns(tune)) {
                    Accompaniment asked = pattern.isEmpty()
                            ? Accompaniment.NONE
                            : Accompaniment.NONE.with(Choice.everywhere(pattern, Optional.empty()));
                    check(file.index() + " under " + pattern.orElse("the usual one"), tune, asked);
                }
            }
        System.out.println(
                "patterns over " + folder + ": " + measures + " measures, " + strokes + " strokes, meters " + meters);
        assertThat(measures).isPositive();
    }

    private static List<Tune> tunes(Corpus.Numbered file) {
        return List.of(new TuneReader().read(file.path()).tune());
    }

    /** The usual one, and each that fits the first measure or any. */
    private static List<Optional<String>> patterns(Tune tune) {
        List<Optional<String>> ids = new ArrayList<>(List.of(Optional.empty()));
        for (BassPattern pattern : BassPatterns.shipped())
            if (tune.measures().stream().anyMatch(measure -> pattern.fit().fits(measure.meter())))
                ids.add(Optional.of(pattern.id()));
        return ids;
    }

    private void check(String where, Tune tune, Accompaniment asked) {
        Performance performance = Performer.perform(
                tune, SettingsBuilder.of(tune).timesThrough(1).leftHand(asked).build());
        List<Beat> beats = LeftHandBeats.of(performance, BASS);
        int next = 0;
        for (PlayedMeasure measure : performance.measures()) {
            int first = next;
            while (next < beats.size() && beats.get(next).measure() == measure.index()) next++;
            checkMeasure(where, performance, measure, beats.subList(first, next));
        }
        assertThat(next).as(where).isEqualTo(beats.size());
        for (int i = 0; i < beats.size(); i++) {
            Beat beat = beats.get(i);
            assertThat(beat.releaseMicros()).as("%s, stroke %s", where, i).isGreaterThanOrEqualTo(beat.onsetMicros());
            if (i + 1 < beats.size())
                assertThat(beat.releaseMicros())
                        .as("%s, stroke %s", where, i)
                        .isLessThanOrEqualTo(beats.get(i + 1).onsetMicros());
        }
        strokes += beats.size();
    }

    /** The chords of the measure, equal neighbours as one, against the strokes that begin in them. */
    private void checkMeasure(String where, Performance performance, PlayedMeasure measure, List<Beat> beats) {
        Measure written = performance.tune().measure(measure.written());
        meters.add(written.meter().toString());
        measures++;
        String at = where + ", measure " + measure.index();
        boolean last = measure.index() == performance.measures().size() - 1;
        boolean silentPickup = written.pickup()
                && (measure.index() == 0
                        || measure.length().times(2).isBefore(written.meter().length()));
        MusicalTime end = measure.start().plus(measure.length());
        for (Beat beat : beats) {
            assertThat(beat.onset())
                    .as(at)
                    .isGreaterThanOrEqualTo(measure.start())
                    .isLessThan(end);
        }
        if (silentPickup) {
            assertThat(beats).as(at).isEmpty();
            return;
        }
        List<HarmonySpan> spans = performance.harmony().stream()
                .filter(span -> span.measure() == measure.index())
                .toList();
        HarmonySpan before = null;
        for (HarmonySpan span : spans) {
            boolean sounds = span.chord().isPresent() && !span.chord().get().isSilent();
            List<Beat> own = beats.stream()
                    .filter(beat ->
                            !beat.onset().isBefore(span.start()) && beat.onset().isBefore(span.end()))
                    .toList();
            if (!sounds) assertThat(own).as(at).isEmpty();
            boolean begins = before == null || !before.chord().equals(span.chord());
            if (sounds && begins && !last)
                assertThat(own.isEmpty() ? null : own.get(0).onset())
                        .as("%s, first stroke of %s", at, span.chord().get())
                        .isEqualTo(span.start());
            for (Beat beat : own) {
                if (beat.wanted() instanceof Wanted.OfChord chord)
                    assertThat(Optional.of(chord.chord())).as(at).isEqualTo(span.chord());
            }
            before = span;
        }
        if (!beats.isEmpty())
            assertThat(beats.get(beats.size() - 1).releaseMicros())
                    .as(at)
                    .isLessThanOrEqualTo(endMicros(performance, measure));
    }

    private static long endMicros(Performance performance, PlayedMeasure measure) {
        int next = measure.index() + 1;
        return next < performance.measures().size()
                ? performance.measures().get(next).startMicros()
                : performance.endMicros();
    }
}
