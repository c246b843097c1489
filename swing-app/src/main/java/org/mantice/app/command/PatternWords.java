package org.mantice.app.command;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.mantice.pattern.Accompaniment;
import org.mantice.pattern.Accompaniment.Choice;
import org.mantice.pattern.Accompaniment.Hand;
import org.mantice.pattern.BassPattern;
import org.mantice.tune.Tune;

/** Patterns and parts of the left hand as typed on the command line: {@code waltz@5-8/2}. Measures as printed. */
final class PatternWords {
    static final String FORM_WORDS = "WHAT, WHAT@MEASURE, WHAT@FROM-TO, each with /PASS behind it for one pass only";

    private static final Pattern FORM =
            Pattern.compile("([a-z0-9-]{1,64})(?:@([^/@-]+)(?:-([^/@-]+))?)?(?:/(\\d{1,3}))?");

    private PatternWords() {}

    /** @throws IllegalArgumentException if the words ask for no pattern in any tune */
    static void checkPattern(String words, Accompaniment known) {
        pattern(words, known);
    }

    /** @throws IllegalArgumentException if the words name no part of the left hand */
    static void checkHand(String words) {
        hand(words);
    }

    /** @throws IllegalArgumentException if the tune has no such measures, or none of them a meter that the pattern fits */
    static Choice patternIn(String words, Accompaniment known, Tune tune) {
        BassPattern pattern = pattern(words, known);
        Choice choice = choice("pattern", words, tune, Optional.of(pattern.id()), Optional.empty());
        List<String> meters = new ArrayList<>();
        for (int i = choice.firstMeasure();
                i <= Math.min(choice.lastMeasure(), tune.measures().size() - 1);
                i++) {
            if (pattern.fit().fits(tune.measure(i).meter())) return choice;
            meters.add(tune.measure(i).meter().toString());
        }
        String fitting = known.patterns().stream()
                .filter(other ->
                        tune.measures().stream().anyMatch(measure -> other.fit().fits(measure.meter())))
                .map(BassPattern::id)
                .collect(Collectors.joining(", "));
        throw new IllegalArgumentException("pattern is " + words + ", which fits no measure in "
                + String.join(", ", meters.stream().distinct().toList()) + "; allowed: " + fitting);
    }

    static Choice handIn(String words, Tune tune) {
        return choice("left-hand", words, tune, Optional.empty(), Optional.of(hand(words)));
    }

    private static Matcher parts(String option, String words) {
        Matcher parts = FORM.matcher(words);
        if (!parts.matches()) throw new IllegalArgumentException(option + " is " + words + "; allowed: " + FORM_WORDS);
        return parts;
    }

    private static BassPattern pattern(String words, Accompaniment known) {
        String id = parts("pattern", words).group(1);
        return known.find(id)
                .orElseThrow(() -> new IllegalArgumentException("pattern is " + id + "; allowed: "
                        + known.patterns().stream().map(BassPattern::id).collect(Collectors.joining(", "))));
    }

    private static Hand hand(String words) {
        String name = parts("left-hand", words).group(1);
        return Arrays.stream(Hand.values())
                .filter(hand -> word(hand).equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("left-hand is " + name + "; allowed: "
                        + Arrays.stream(Hand.values()).map(PatternWords::word).collect(Collectors.joining(", "))));
    }

    /** As {@code bass-only}. */
    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static Choice choice(
            String option, String words, Tune tune, Optional<String> pattern, Optional<Hand> hand) {
        Matcher parts = parts(option, words);
        OptionalInt pass =
                parts.group(4) == null ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(parts.group(4)));
        if (parts.group(2) == null) return new Choice(0, Choice.TO_THE_END, pass, pattern, hand);
        int first = measure(option, parts.group(2), 0, tune);
        int last = measure(option, parts.group(3) == null ? parts.group(2) : parts.group(3), first, tune);
        while (last + 1 < tune.measures().size()
                && tune.measure(last + 1).number().equals(tune.measure(last).number())) last++;
        return new Choice(first, last, pass, pattern, hand);
    }

    /** The first measure with a printed number, from another on. */
    private static int measure(String option, String number, int from, Tune tune) {
        for (int i = from; i < tune.measures().size(); i++)
            if (tune.measure(i).number().equals(number)) return i;
        throw new IllegalArgumentException("measure in " + option + " is " + number + "; allowed: "
                + tune.measure(from).number() + " to "
                + tune.measure(tune.measures().size() - 1).number());
    }
}
