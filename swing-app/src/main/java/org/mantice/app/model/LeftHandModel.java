package org.mantice.app.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.mantice.app.words.Words;
import org.mantice.fault.ManticeException;
import org.mantice.pattern.Accompaniment;
import org.mantice.pattern.Accompaniment.Choice;
import org.mantice.pattern.Accompaniment.Hand;
import org.mantice.pattern.BassPattern;
import org.mantice.pattern.PatternChooser;
import org.mantice.pattern.PatternUse;
import org.mantice.performance.Settings;
import org.mantice.tune.Measure;
import org.mantice.tune.Tune;

/**
 * Which pattern the left hand plays in the whole tune, and how much of it; each with what there is to choose from.
 *
 * @param open whether a tune is open
 * @param patterns those that fit some measure, after what holds without a choice
 */
public record LeftHandModel(
        boolean open, List<PatternOption> patterns, PatternOption pattern, List<HandOption> hands, HandOption hand) {
    /**
     * A pattern in words.
     *
     * @param id empty for what holds without a choice, and where sections differ
     */
    public record PatternOption(Optional<String> id, String name) {
        /** Whether both stand for the same choice. */
        public boolean isSame(PatternOption other) {
            return id.equals(other.id);
        }
    }

    /** A part of the pattern in words. */
    public record HandOption(Hand hand, String name) {}

    public LeftHandModel {
        patterns = List.copyOf(patterns);
        hands = List.copyOf(hands);
    }

    public static LeftHandModel of(PlannerState state, Words words) {
        Accompaniment asked = state.setup().wishes().leftHand();
        List<HandOption> hands = Arrays.stream(Hand.values())
                .map(hand -> new HandOption(hand, name(hand, words)))
                .toList();
        HandOption hand = hands.get(handOf(asked).ordinal());
        Optional<Tune> tune = state.tune().map(open -> open.read().tune());
        if (tune.isEmpty()) {
            PatternOption none = new PatternOption(Optional.empty(), words.text("setup.noTune"));
            return new LeftHandModel(false, List.of(none), none, hands, hand);
        }
        List<PatternOption> patterns = new ArrayList<>();
        patterns.add(new PatternOption(
                Optional.empty(), unchosen(tune.get(), state.setup().wishes(), words)));
        for (BassPattern pattern : asked.patterns())
            if (tune.get().measures().stream().anyMatch(measure -> pattern.fit().fits(measure.meter())))
                patterns.add(new PatternOption(Optional.of(pattern.id()), pattern.name(words.locale())));
        return new LeftHandModel(true, patterns, current(asked, patterns, words), hands, hand);
    }

    private static PatternOption current(Accompaniment asked, List<PatternOption> patterns, Words words) {
        List<Choice> choices = asked.choices().stream()
                .filter(choice -> choice.pattern().isPresent())
                .toList();
        if (choices.isEmpty()) return patterns.get(0);
        Choice last = choices.get(choices.size() - 1);
        if (choices.size() == 1 && isEverywhere(last))
            for (PatternOption option : patterns) if (option.id().equals(last.pattern())) return option;
        return new PatternOption(Optional.of(""), words.text("setup.pattern.sections"));
    }

    private static boolean isEverywhere(Choice choice) {
        return choice.firstMeasure() == 0
                && choice.lastMeasure() == Choice.TO_THE_END
                && choice.pass().isEmpty();
    }

    /** What holds for the whole tune; where sections differ, what the last choice says. */
    private static Hand handOf(Accompaniment asked) {
        Hand hand = Hand.FULL;
        for (Choice choice : asked.choices()) hand = choice.hand().orElse(hand);
        return hand;
    }

    /** What holds in the first full measure without a choice. */
    private static String unchosen(Tune tune, Wishes wishes, Words words) {
        int first = 0;
        for (Measure measure : tune.measures()) {
            if (!measure.pickup()) break;
            if (first + 1 < tune.measures().size()) first++;
        }
        PatternUse use = new PatternChooser(tune, settings(tune, wishes).tempo(), Accompaniment.NONE).at(first, 1);
        return use.why() == PatternUse.Why.WRITTEN
                ? words.text("setup.pattern.written")
                : words.text("setup.assumedValue", use.pattern().name(words.locale()));
    }

    private static Settings settings(Tune tune, Wishes wishes) {
        try {
            return wishes.settings(tune);
        } catch (ManticeException tooLong) {
            return wishes.withTimes(OptionalInt.of(1)).settings(tune);
        }
    }

    private static String name(Hand hand, Words words) {
        return switch (hand) {
            case FULL -> words.text("setup.hand.full");
            case BASS_ONLY -> words.text("setup.hand.bassOnly");
            case CHORDS_ONLY -> words.text("setup.hand.chordsOnly");
            case SILENT -> words.text("setup.hand.silent");
        };
    }

    /** What is asked for once a pattern is chosen for the whole tune, in place of all other choices of patterns. */
    public static Accompaniment choosing(Accompaniment asked, PatternOption option) {
        if (option.id().equals(Optional.of(""))) return asked;
        Accompaniment without = asked.withoutPatterns();
        return option.id().isEmpty() ? without : without.with(Choice.everywhere(option.id(), Optional.empty()));
    }

    /** What is asked for once a part of the pattern is chosen for the whole tune. */
    public static Accompaniment choosing(Accompaniment asked, HandOption option) {
        if (handOf(asked) == option.hand()) return asked;
        return asked.with(Choice.everywhere(Optional.empty(), Optional.of(option.hand())));
    }
}
