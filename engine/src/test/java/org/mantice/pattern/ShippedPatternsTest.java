package org.mantice.pattern;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.mantice.tune.Measure;
import org.mantice.tune.Meter;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tempo;
import org.mantice.tune.Tune;
import org.mantice.tune.Tunes;

/** The shipped patterns against strokes written by hand; all of them common practice, no source. */
class ShippedPatternsTest {
    /**
     * Every pattern in one of its meters, by offset in whole notes: B root, T root and fifth in turns, F fifth, 3 third,
     * R run, C chord, H both.
     */
    private static final String EXPECTED = """
            slow-waltz 3/4: T 0, C 1/4, C 1/2
            waltz 3/4: T 0, C 1/4, C 1/2
            waltz 3/8: T 0, C 1/8, C 1/4
            polka 2/4: T 0, C 1/8, T 1/4, C 3/8
            march 2/4: T 0, C 1/8, T 1/4, C 3/8
            march 2/2: T 0, C 1/4, T 1/2, C 3/4
            habanera 2/4: B 0, C 3/16, T 1/4, C 3/8
            two-beat 2/2: T 0, C 1/4, T 1/2, C 3/4
            march-in-four 4/4: T 0, C 1/4, T 1/2, C 3/4
            foxtrot 4/4: T 0, C 1/4, T 1/2, C 3/4
            tango 4/4: T 0, C 1/4, T 1/2, C 3/4
            tango-marcato 4/4: H 0, H 1/4, H 1/2, H 3/4
            four-beat 4/4: T 0, C 1/4, T 1/2, C 3/4
            six-in-two 6/8: T 0, C 3/8
            six-rocking 6/8: T 0, C 1/4, T 3/8, C 5/8
            six-quarters 6/4: T 0, C 1/4, C 1/2, T 3/4, C 1, C 5/4
            nine-in-three 9/8: T 0, C 3/8, C 3/4
            twelve-in-four 12/8: T 0, C 3/8, T 3/4, C 9/8
            five-3-2 5/4: T 0, C 1/4, C 1/2, T 3/4, C 1
            five-2-3 5/8: T 0, C 1/8, T 1/4, C 3/8, C 1/2
            seven-2-2-3 7/8: T 0, C 1/8, T 1/4, C 3/8, T 1/2, C 5/8, C 3/4
            seven-3-2-2 7/8: T 0, C 1/8, C 1/4, T 3/8, C 1/2, T 5/8, C 3/4
            seven-4-3 7/4: T 0, C 1/4, T 1/2, C 3/4, T 1, C 5/4, C 3/2
            groups 3+2/8: T 0, C 1/8, C 1/4, T 3/8, C 1/2
            groups 2+1/4: T 0, C 1/4, H 1/2
            waltz-with-runs 3/4: T 0, C 1/4, C 1/2; before a change B 0, R 1/4, R 1/2
            two-beat-with-runs 2/4: T 0, C 1/8, T 1/4, C 3/8; before a change B 0, C 1/8, R 1/4, R 3/8
            four-beat-with-runs 4/4: T 0, C 1/4, T 1/2, C 3/4; before a change B 0, C 1/4, R 1/2, R 3/4
            four-beat-third 4/4: B 0, C 1/4, 3 1/2, C 3/4
            walking-bass 4/4: B 0, 3 1/4, F 1/2, 3 3/4; before a change B 0, R 1/4, R 1/2, R 3/4
            stops 5/8: H 0
            sustained free: H 0
            """;

    @Test
    void everyPatternStrikesWhatItsNameSays() {
        for (String line : EXPECTED.lines().toList()) {
            String[] parts = line.split("[ :]", 3);
            BassPattern pattern = Accompaniment.NONE.find(parts[0]).orElseThrow();
            Meter meter = meter(parts[1]);
            String before = pattern.figures()
                    .beforeChange()
                    .map(figure -> "; before a change " + words(pattern, figure, meter))
                    .orElse("");

            assertThat(pattern.fit().fits(meter)).as(line).isTrue();
            assertThat(words(pattern, pattern.figures().plain(), meter) + before)
                    .as(line)
                    .isEqualTo(parts[2].strip());
        }
        assertThat(EXPECTED.lines().map(line -> line.split(" ")[0]).distinct())
                .containsExactlyElementsOf(
                        BassPatterns.shipped().stream().map(BassPattern::id).toList());
    }

    private static String words(BassPattern pattern, Figure figure, Meter meter) {
        return pattern.placed(figure, meter).stream()
                .map(placed -> letter(placed.stroke()) + " " + placed.offset())
                .collect(Collectors.joining(", "));
    }

    private static String letter(Stroke stroke) {
        if (stroke.part() == Stroke.Part.BOTH) return "H";
        return stroke.bass()
                .map(bass -> switch (bass) {
                    case ROOT -> "B";
                    case TURN -> "T";
                    case FIFTH -> "F";
                    case THIRD -> "3";
                    case RUN -> "R";
                })
                .orElse("C");
    }

    private static Meter meter(String text) {
        if (text.equals("free")) return Meter.FREE;
        String[] parts = text.split("/");
        return new Meter(
                List.of(parts[0].split("\\+")).stream().map(Integer::valueOf).toList(), Integer.parseInt(parts[1]));
    }

    @Test
    void everyPatternHasAnEnglishAndAGermanName() {
        for (BassPattern pattern : BassPatterns.shipped()) {
            assertThat(pattern.names()).as(pattern.id()).containsOnlyKeys("en", "de");
            assertThat(pattern.name(Locale.GERMAN)).isEqualTo(pattern.names().get("de"));
            assertThat(pattern.name(Locale.FRENCH)).isEqualTo(pattern.names().get("en"));
        }
    }

    @Test
    void usualPatternOfAMeter() {
        Map<String, String> usual = new TreeMap<>();
        for (String meter : List.of(
                "2/4", "2/2", "3/4", "3/8", "3/2", "4/4", "4/8", "4/2", "6/8", "6/4", "9/8", "12/8", "5/4", "7/8",
                "3+2/8", "1/4", "11/8", "6/16")) usual.put(meter, at(meter, "", "", 120));

        assertThat(usual)
                .containsEntry("2/4", "two-beat METER")
                .containsEntry("2/2", "two-beat METER")
                .containsEntry("3/4", "waltz METER")
                .containsEntry("3/8", "waltz METER")
                .containsEntry("3/2", "waltz METER")
                .containsEntry("4/4", "four-beat METER")
                .containsEntry("4/8", "four-beat METER")
                .containsEntry("4/2", "four-beat METER")
                .containsEntry("6/8", "six-in-two METER")
                .containsEntry("6/16", "six-in-two METER")
                .containsEntry("6/4", "six-quarters METER")
                .containsEntry("9/8", "nine-in-three METER")
                .containsEntry("12/8", "twelve-in-four METER")
                .containsEntry("5/4", "five-3-2 METER")
                .containsEntry("7/8", "seven-2-2-3 METER")
                .containsEntry("3+2/8", "groups METER")
                .containsEntry("1/4", "sustained METER")
                .containsEntry("11/8", "sustained METER");
    }

    @Test
    void danceAndTempoChooseWhereNobodyElseDoes() {
        assertThat(at("3/4", "", "", 99)).isEqualTo("slow-waltz METER");
        assertThat(at("3/4", "", "", 100)).isEqualTo("waltz METER");
        assertThat(at("3/4", "waltz", "", 180)).isEqualTo("waltz DANCE");
        assertThat(at("3/4", "", "The Slow Waltz of the Ferry", 90)).isEqualTo("slow-waltz DANCE");
        assertThat(at("2/4", "polka", "", 100)).isEqualTo("polka DANCE");
        assertThat(at("4/4", "March", "", 100)).isEqualTo("march-in-four DANCE");
        assertThat(at("2/4", "march", "", 100)).isEqualTo("march DANCE");
        assertThat(at("4/4", "", "Tango of the Gate", 100)).isEqualTo("tango DANCE");
        assertThat(at("2/4", "tango", "", 60)).isEqualTo("habanera DANCE");
        assertThat(at("4/4", "foxtrot", "", 120)).isEqualTo("foxtrot DANCE");
        assertThat(at("4/4", "polka", "", 200)).isEqualTo("four-beat METER");
    }

    private static String at(String meter, String dance, String title, int beats) {
        Tune plain = Tunes.melody("3/4", "C4 h.");
        Measure old = plain.measure(0);
        Meter other = meter(meter);
        Tune tune = new Tune(
                title,
                dance.isEmpty() ? Optional.empty() : Optional.of(dance),
                List.of(new Measure(
                        old.number(),
                        other.length(),
                        other,
                        old.key(),
                        false,
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        old.barlines())));
        PatternUse use = new PatternChooser(
                        tune,
                        new Tempo(other.isFree() ? MusicalTime.QUARTER : other.beat(), beats * 1000),
                        Accompaniment.NONE)
                .at(0, 1);
        return use.pattern().id() + " " + use.why();
    }
}
