package org.mantice.reading;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.mantice.tune.Mark;

/**
 * Reads "cresc." and "dim." in words as a hairpin up to the next loudness mark or hairpin, where one follows soon; else
 * they stay words. Spellings and reach are common practice, no source.
 */
final class HairpinWords {
    private static final Pattern LOUDER =
            Pattern.compile("((poco|molto) )?cresc(\\.|endo).*", Pattern.CASE_INSENSITIVE);
    private static final Pattern SOFTER =
            Pattern.compile("((poco|molto) )?(dim(\\.|inuendo)|decresc(\\.|endo)).*", Pattern.CASE_INSENSITIVE);
    /** Measures in which the end must come; estimate. */
    private static final int REACH = 8;

    private HairpinWords() {}

    /** @param measures marks by measure, each in order; hairpins are added */
    static void addTo(List<List<Mark>> measures) {
        boolean open = false;
        for (int i = 0; i < measures.size(); i++)
            for (Mark mark : List.copyOf(measures.get(i))) {
                if (mark instanceof Mark.HairpinStart) open = true;
                if (mark instanceof Mark.HairpinEnd) open = false;
                if (!open && mark instanceof Mark.Words words) {
                    boolean louder = LOUDER.matcher(words.text()).matches();
                    if (louder || SOFTER.matcher(words.text()).matches()) add(measures, i, words, louder);
                }
            }
    }

    private static void add(List<List<Mark>> measures, int from, Mark.Words words, boolean louder) {
        for (int i = from; i < Math.min(measures.size(), from + REACH); i++) {
            boolean same = i == from;
            Optional<Mark> end = measures.get(i).stream()
                    .filter(mark -> !same || !mark.offset().isBefore(words.offset()))
                    .filter(mark -> mark instanceof Mark.HairpinStart
                            || mark instanceof Mark.Dynamic
                                    && (!same || words.offset().isBefore(mark.offset())))
                    .findFirst();
            if (end.isEmpty()) continue;
            boolean already = same && end.get().offset().equals(words.offset());
            if (!already) {
                measures.get(from).add(new Mark.HairpinStart(words.offset(), louder));
                measures.get(i).add(new Mark.HairpinEnd(end.get().offset()));
            }
            return;
        }
    }
}
