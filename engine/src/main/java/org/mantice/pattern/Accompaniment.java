package org.mantice.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What a player asks of the left hand, by section and pass; what is not asked for is chosen by dance, meter and tempo.
 *
 * @param own patterns besides the shipped ones, 0 to {@link PatternJson#MOST_PATTERNS}
 * @param choices where two speak of one measure the later one holds
 */
public record Accompaniment(List<BassPattern> own, List<Choice> choices) {
    public static final Accompaniment NONE = new Accompaniment(List.of(), List.of());

    private static final int MOST_CHOICES = 1_000;

    /** What the left hand plays of a pattern; a player of another bass may leave the rest to it. */
    public enum Hand {
        FULL,
        BASS_ONLY,
        CHORDS_ONLY,
        SILENT
    }

    /**
     * What is asked for a section. Its pattern counts in the measures whose meter it fits.
     *
     * @param firstMeasure index of the written measure, from 0
     * @param lastMeasure not before the first; may lie behind the end of the tune
     * @param pass from 1; empty for every pass
     * @param pattern id; empty for no wish
     * @param hand empty for no wish
     */
    public record Choice(
            int firstMeasure, int lastMeasure, OptionalInt pass, Optional<String> pattern, Optional<Hand> hand) {
        /** Behind every tune. */
        public static final int TO_THE_END = 1_000_000;

        public Choice {
            if (firstMeasure < 0 || firstMeasure > TO_THE_END)
                throw new IllegalArgumentException("firstMeasure is " + firstMeasure + "; allowed: 0 to " + TO_THE_END);
            if (lastMeasure < firstMeasure || lastMeasure > TO_THE_END)
                throw new IllegalArgumentException(
                        "lastMeasure is " + lastMeasure + "; allowed: " + firstMeasure + " to " + TO_THE_END);
            if (pass.isPresent() && (pass.getAsInt() < 1 || pass.getAsInt() > 1_000))
                throw new IllegalArgumentException("pass is " + pass.getAsInt() + "; allowed: 1 to 1000");
            if (pattern.isEmpty() && hand.isEmpty())
                throw new IllegalArgumentException("pattern is not there; allowed: a pattern, a hand, or both");
        }

        /** For the whole tune and every pass. */
        public static Choice everywhere(Optional<String> pattern, Optional<Hand> hand) {
            return new Choice(0, TO_THE_END, OptionalInt.empty(), pattern, hand);
        }

        boolean speaksOf(int measure, int played) {
            return firstMeasure <= measure && measure <= lastMeasure && (pass.isEmpty() || pass.getAsInt() == played);
        }
    }

    public Accompaniment {
        own = List.copyOf(own);
        choices = List.copyOf(choices);
        if (own.size() > PatternJson.MOST_PATTERNS)
            throw new IllegalArgumentException(
                    "patterns is " + own.size() + " long; allowed: 0 to " + PatternJson.MOST_PATTERNS);
        if (choices.size() > MOST_CHOICES)
            throw new IllegalArgumentException("choices is " + choices.size() + " long; allowed: 0 to " + MOST_CHOICES);
        List<String> known = new ArrayList<>();
        for (BassPattern shipped : BassPatterns.shipped()) known.add(shipped.id());
        for (int i = 0; i < own.size(); i++) {
            if (known.contains(own.get(i).id()))
                throw new IllegalArgumentException(
                        "patterns[" + i + "].id is " + own.get(i).id() + "; allowed: one that no other pattern has");
            known.add(own.get(i).id());
        }
        for (int i = 0; i < choices.size(); i++) {
            String id = choices.get(i).pattern().orElse("");
            if (!id.isEmpty() && !known.contains(id))
                throw new IllegalArgumentException(
                        "choices[" + i + "].pattern is " + id + "; allowed: " + String.join(", ", known));
        }
    }

    /** The shipped patterns and the player's own. */
    public List<BassPattern> patterns() {
        List<BassPattern> all = new ArrayList<>(BassPatterns.shipped());
        all.addAll(own);
        return List.copyOf(all);
    }

    /** The pattern with this id. */
    public Optional<BassPattern> find(String id) {
        return patterns().stream().filter(pattern -> pattern.id().equals(id)).findFirst();
    }

    /** The same with one more choice, which holds over those before; one for the same section and pass gives way. */
    public Accompaniment with(Choice choice) {
        List<Choice> changed = new ArrayList<>();
        for (Choice old : choices) without(old, choice).ifPresent(changed::add);
        changed.add(choice);
        return new Accompaniment(own, changed);
    }

    /** The same without any choice of a pattern; what the hand plays of it stays. */
    public Accompaniment withoutPatterns() {
        List<Choice> left = new ArrayList<>();
        for (Choice choice : choices)
            if (choice.hand().isPresent())
                left.add(new Choice(
                        choice.firstMeasure(), choice.lastMeasure(), choice.pass(), Optional.empty(), choice.hand()));
        return new Accompaniment(own, left);
    }

    /** What is left of an older choice beside a newer one. */
    private static Optional<Choice> without(Choice old, Choice newer) {
        boolean covered = newer.firstMeasure() <= old.firstMeasure()
                && old.lastMeasure() <= newer.lastMeasure()
                && (newer.pass().isEmpty() || newer.pass().equals(old.pass()));
        if (!covered) return Optional.of(old);
        Optional<String> pattern = newer.pattern().isPresent() ? Optional.empty() : old.pattern();
        Optional<Hand> hand = newer.hand().isPresent() ? Optional.empty() : old.hand();
        if (pattern.isEmpty() && hand.isEmpty()) return Optional.empty();
        return Optional.of(new Choice(old.firstMeasure(), old.lastMeasure(), old.pass(), pattern, hand));
    }
}
