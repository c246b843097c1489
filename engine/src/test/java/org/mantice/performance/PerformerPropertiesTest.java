package org.mantice.performance;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.mantice.tune.Measure;
import org.mantice.tune.MelodyEvent;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tempo;
import org.mantice.tune.Tune;
import org.mantice.tune.Tunes;

/** What must hold for any tune, on seeded random ones with repeats, ties, chords, tuplets, graces and tempo changes. */
class PerformerPropertiesTest {
    private static final List<String> SIGNS = List.of(
            "",
            "",
            "",
            "",
            "@start",
            "@end",
            "@end3",
            "@ending1 @end @stop",
            "@ending2 @stop",
            "@dc",
            "@fine",
            "@segno",
            "@ds",
            "@coda",
            "@tocoda",
            "@double",
            "!tempo=77",
            "!tempo=131",
            "!p",
            "!ff",
            "!<",
            "!>",
            "!end",
            "!phrase");
    private static final List<String> MARKS =
            List.of("", "", "", "", "(", ")", "stacc", "ten", "breath", "fermata", "{D4}", "{D4;F4+A4}", "after{G4}");
    private static final List<String> CHORDS = List.of("", "", "", "\"C\"", "\"Am7\"", "\"G7/B\"", "\"N.C.\"");

    private static Tune random(Random random) {
        List<String> measures = new ArrayList<>();
        for (int i = 1 + random.nextInt(12); i > 0; i--) {
            List<String> events = new ArrayList<>();
            int left = 8;
            while (left > 0) {
                int eighths = 1 + random.nextInt(Math.min(3, left));
                left -= eighths;
                if (random.nextInt(5) == 0) for (int k = 0; k < 3; k++) events.add(event(random, eighths + "/24"));
                else events.add(event(random, eighths + "/8"));
            }
            measures.add(pick(random, SIGNS) + " " + String.join(", ", events));
        }
        return Tunes.melody("4/4", String.join(" | ", measures));
    }

    private static String event(Random random, String duration) {
        if (random.nextInt(8) == 0) return pick(random, CHORDS) + " R " + duration;
        List<String> keys = new ArrayList<>();
        for (int i = random.nextInt(4) == 0 ? 2 : 1; i > 0; i--)
            keys.add((random.nextInt(3) == 0 ? "~" : "") + "CDEFG".charAt(random.nextInt(5)) + "4"
                    + (random.nextInt(3) == 0 ? "~" : ""));
        return pick(random, CHORDS) + " " + String.join("+", keys) + " " + duration + " " + pick(random, MARKS);
    }

    private static String pick(Random random, List<String> from) {
        return from.get(random.nextInt(from.size()));
    }

    private static Performance performance(RepetitionInfo info) {
        Random random = new Random(info.getCurrentRepetition());
        Tune tune = random(random);
        while (!tune.hasNotes()) tune = random(random);
        return Performer.perform(tune);
    }

    @RepeatedTest(80)
    void measures_follow_each_other_and_add_up_to_the_end(RepetitionInfo info) {
        Performance performance = performance(info);

        MusicalTime start = MusicalTime.ZERO;
        long micros = 0;
        for (PlayedMeasure measure : performance.measures()) {
            assertThat(measure.start()).isEqualTo(start);
            assertThat(measure.startMicros()).isGreaterThanOrEqualTo(micros);
            start = start.plus(measure.length());
            micros = measure.startMicros();
        }
        assertThat(performance.endMicros()).isGreaterThan(micros);
    }

    @RepeatedTest(80)
    void moments_never_overlap(RepetitionInfo info) {
        Performance performance = performance(info);

        TrebleMoment before = null;
        for (TrebleMoment moment : performance.treble()) {
            assertThat(moment.duration().isPositive()).isTrue();
            assertThat(moment.releaseMicros()).isGreaterThan(moment.onsetMicros());
            assertThat(moment.notes()).extracting(PlayedNote::midi).isSorted().doesNotHaveDuplicates();
            assertThat(moment.notes()).anyMatch(note -> !note.held());
            if (before != null) {
                assertThat(before.onset().plus(before.duration())).isLessThanOrEqualTo(moment.onset());
                assertThat(before.releaseMicros()).isLessThanOrEqualTo(moment.onsetMicros());
                assertThat(moment.index()).isEqualTo(before.index() + 1);
            }
            before = moment;
        }
        assertThat(before.releaseMicros()).isLessThanOrEqualTo(performance.endMicros());
    }

    @RepeatedTest(80)
    void a_held_key_was_down_in_the_moment_before(RepetitionInfo info) {
        List<TrebleMoment> moments = performance(info).treble();

        for (int i = 0; i < moments.size(); i++)
            for (PlayedNote note : moments.get(i).notes())
                if (note.held()) {
                    TrebleMoment before = moments.get(i - 1);
                    assertThat(before.notes()).extracting(PlayedNote::midi).contains(note.midi());
                    assertThat(before.releaseMicros()).isEqualTo(moments.get(i).onsetMicros());
                }
    }

    @RepeatedTest(80)
    void every_written_note_of_a_pass_sounds(RepetitionInfo info) {
        Performance performance = performance(info);

        Set<String> sounding = new HashSet<>();
        for (TrebleMoment moment : performance.treble())
            for (PlayedNote note : moment.notes()) sounding.add(moment.onset() + " " + note.midi());
        for (PlayedMeasure played : performance.measures()) {
            Measure written = performance.tune().measure(played.written());
            for (MelodyEvent event : written.melody())
                event.notes().stream().filter(note -> !note.tiedBack()).forEach(note -> {
                    int graces = event.graces().notes().size();
                    MusicalTime grace = graces == 0
                            ? MusicalTime.ZERO
                            : MusicalTime.of(1, 32)
                                    .min(event.duration().dividedBy(2L * graces))
                                    .times(graces);
                    MusicalTime onset = played.start().plus(event.offset()).plus(grace);
                    assertThat(sounding).contains(onset + " " + note.pitch().midi());
                });
        }
    }

    @RepeatedTest(80)
    void harmony_has_no_gaps_and_crosses_no_barline(RepetitionInfo info) {
        Performance performance = performance(info);

        MusicalTime end = MusicalTime.ZERO;
        long micros = 0;
        for (HarmonySpan span : performance.harmony()) {
            PlayedMeasure measure = performance.measures().get(span.measure());
            assertThat(span.start()).isEqualTo(end);
            assertThat(span.startMicros()).isEqualTo(micros);
            assertThat(span.start()).isGreaterThanOrEqualTo(measure.start());
            assertThat(span.end())
                    .isLessThanOrEqualTo(measure.start().plus(measure.length()))
                    .isGreaterThan(span.start());
            end = span.end();
            micros = span.endMicros();
        }
        assertThat(micros).isEqualTo(performance.endMicros());
    }

    @RepeatedTest(80)
    void passes_cover_all_measures(RepetitionInfo info) {
        Performance performance = performance(info);

        int next = 0;
        for (Pass pass : performance.passes()) {
            assertThat(pass.firstMeasure()).isEqualTo(next);
            for (int i = pass.firstMeasure(); i <= pass.lastMeasure(); i++)
                assertThat(performance.measures().get(i).pass()).isEqualTo(pass.number());
            next = pass.lastMeasure() + 1;
        }
        assertThat(next).isEqualTo(performance.measures().size());
    }

    @RepeatedTest(20)
    void performing_twice_gives_the_same(RepetitionInfo info) {
        assertThat(performance(info)).isEqualTo(performance(info));
    }

    /** Against decimal arithmetic with 60 places. */
    @RepeatedTest(100)
    void the_clock_agrees_with_long_decimals(RepetitionInfo info) {
        Random random = new Random(info.getCurrentRepetition());
        Clock clock = new Clock();
        MusicalTime time = MusicalTime.ZERO;
        BigDecimal micros = BigDecimal.ZERO;
        for (int i = 0; i < 30; i++) {
            Tempo tempo = new Tempo(MusicalTime.of(1 + random.nextInt(3), 8), 20_000 + random.nextInt(200_000));
            MusicalTime step = MusicalTime.of(1 + random.nextInt(100), random.nextBoolean() ? 56 : 60);
            clock.goOn(time, tempo.microsPerWholeNote());
            time = time.plus(step);
            micros = micros.add(decimal(tempo.microsPerWholeNote().numerator())
                    .multiply(decimal(step.numerator()))
                    .divide(
                            decimal(tempo.microsPerWholeNote().denominator()).multiply(decimal(step.denominator())),
                            60,
                            RoundingMode.HALF_EVEN));

            assertThat(BigInteger.valueOf(clock.micros(time)))
                    .isBetween(
                            micros.subtract(BigDecimal.ONE).toBigInteger(),
                            micros.add(BigDecimal.ONE).toBigInteger());
            if (i < 8)
                assertThat(clock.micros(time))
                        .isEqualTo(micros.setScale(0, RoundingMode.HALF_UP).longValueExact());
        }
    }

    private static BigDecimal decimal(long value) {
        return BigDecimal.valueOf(value);
    }

    @Test
    void equal_notes_of_whole_microseconds_last_equally_long() {
        Tune tune = Tunes.melody("3/4", "C4 q, D4 q, E4 q | @end3 F4 q, G4 q, A4 q");
        Performance performance = Performer.perform(
                tune, SettingsBuilder.of(tune).beatsPerMinute(96).build());

        assertThat(performance.treble()).allMatch(m -> m.releaseMicros() - m.onsetMicros() == 625_000);
    }

    @Test
    void twenty_thousand_measures_are_played_in_little_time() {
        StringBuilder text = new StringBuilder("@start \"C\" C4 e, D4 e, E4 et, F4 et, G4 et, {B4} A4 q");
        for (int i = 0; i < 999; i++) text.append(" | \"G7\" G4 q, F4 e, E4 e, D4 q");
        Tune tune = Tunes.melody("3/4", text.toString());

        long start = System.nanoTime();
        Performance performance = Performer.perform(
                tune, SettingsBuilder.of(tune).timesThrough(20).build());
        long millis = (System.nanoTime() - start) / 1_000_000;

        System.out.println("20,000 played measures, " + performance.treble().size() + " moments: " + millis + " ms");
        assertThat(performance.measures()).hasSize(20_000);
        assertThat(performance.treble()).hasSize(20 * (999 * 4 + 7));
        assertThat(millis).isLessThan(10_000);
    }
}
