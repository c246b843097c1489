package org.mantice.performance;

import java.util.ArrayList;
import java.util.List;
import org.mantice.pattern.PatternChooser;
import org.mantice.pattern.PatternUse;

/**
 * Played measures in a row, all in one pass, in which the left hand plays the same pattern.
 *
 * @param firstMeasure index of the played measure
 * @param lastMeasure index of the played measure
 */
public record PatternSection(int pass, int firstMeasure, int lastMeasure, PatternUse use) {
    /** Of a whole performance, in order of play, without gaps. */
    public static List<PatternSection> of(Performance performance) {
        PatternChooser patterns = chooser(performance);
        List<PatternSection> sections = new ArrayList<>();
        for (PlayedMeasure measure : performance.measures()) {
            PatternUse use = patterns.at(measure.written(), measure.pass());
            PatternSection last = sections.isEmpty() ? null : sections.get(sections.size() - 1);
            if (last != null && last.pass == measure.pass() && last.use.equals(use))
                sections.set(
                        sections.size() - 1, new PatternSection(last.pass, last.firstMeasure, measure.index(), use));
            else sections.add(new PatternSection(measure.pass(), measure.index(), measure.index(), use));
        }
        return List.copyOf(sections);
    }

    /** The choice of patterns under the settings of a performance. */
    public static PatternChooser chooser(Performance performance) {
        return new PatternChooser(
                performance.tune(),
                performance.settings().tempo(),
                performance.settings().leftHand());
    }
}
