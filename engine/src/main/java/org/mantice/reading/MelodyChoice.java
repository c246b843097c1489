package org.mantice.reading;

/**
 * Where the melody was taken from, and why.
 *
 * @param part the part
 * @param staff staff of the part, from 1
 * @param rule the rule that chose the part
 */
public record MelodyChoice(PartInfo part, int staff, Rule rule) {
    /** The rules in the order they are tried; the first that fits a part chooses the first such part. */
    public enum Rule {
        ASKED_FOR("the part that was asked for"),
        ONLY_PART("the only part with pitched notes"),
        CARRIES_CHORDS("the first part in a treble clef that carries chord symbols"),
        TREBLE("the first part in a treble clef"),
        FIRST("the first part with pitched notes"),
        MELODIC("the part most like a melody: high, one note at a time, named or sung as one");

        private final String sentence;

        Rule(String sentence) {
            this.sentence = sentence;
        }

        public String sentence() {
            return sentence;
        }
    }

    /** As {@code "P1 (Voice), staff 1: the first part ...; its first voice with notes in each measure"}. */
    @Override
    public String toString() {
        String where = part.label() + ", staff " + staff + ": " + rule.sentence();
        return rule == Rule.MELODIC ? where : where + "; its first voice with notes in each measure";
    }
}
