package org.mantice.reading;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.mantice.fault.FilePlace;
import org.mantice.reading.MelodyChoice.Rule;
import org.mantice.reading.TuneReadException.Reason;

/**
 * Chooses the part that holds the melody. Where none is asked for, of the parts with pitched notes: the only one; else
 * the first in a treble clef that carries chord symbols, unless the format writes the melody first; else the
 * first in a treble clef; else the first. A treble clef
 * is any sign but F, percussion and TAB at the beginning of the staff.
 */
final class MelodyChooser {
    private final FilePlace place;
    private final Score score;

    MelodyChooser(FilePlace place, Score score) {
        this.place = place;
        this.score = score;
    }

    MelodyChoice choose(ReadOptions options) {
        List<ScorePart> sounding =
                score.parts().stream().filter(part -> part.info().notes() > 0).toList();
        if (sounding.isEmpty()) throw TuneReadException.of(Reason.NO_NOTES, place);
        if (options.part().isPresent()) return choice(askedFor(options.part().get(), sounding), Rule.ASKED_FOR);
        if (sounding.size() == 1) return choice(sounding.get(0), Rule.ONLY_PART);
        Optional<ScorePart> first = first(
                sounding,
                part -> !score.melodyFirst() && isTreble(part) && part.info().chordSymbols() > 0);
        if (first.isPresent()) return choice(first.get(), Rule.CARRIES_CHORDS);
        first = first(sounding, MelodyChooser::isTreble);
        return first.map(part -> choice(part, Rule.TREBLE)).orElseGet(() -> choice(sounding.get(0), Rule.FIRST));
    }

    private static Optional<ScorePart> first(List<ScorePart> parts, Predicate<ScorePart> condition) {
        return parts.stream().filter(condition).findFirst();
    }

    private ScorePart askedFor(String wanted, List<ScorePart> sounding) {
        OptionalInt index = Numbers.integer(wanted);
        ScorePart part = first(score.parts(), each -> each.id().equals(wanted))
                .or(() -> first(score.parts(), each -> each.name().equalsIgnoreCase(wanted)))
                .or(() -> index.isPresent()
                                && index.getAsInt() >= 1
                                && index.getAsInt() <= score.parts().size()
                        ? Optional.of(score.parts().get(index.getAsInt() - 1))
                        : Optional.empty())
                .orElseThrow(() -> TuneReadException.of(Reason.NO_SUCH_PART, place, wanted, labels(score.parts())));
        if (!sounding.contains(part))
            throw TuneReadException.of(
                    Reason.NO_NOTES_IN_PART, place, part.info().label(), labels(sounding));
        return part;
    }

    private static String labels(List<ScorePart> parts) {
        return parts.stream().map(part -> part.info().label()).collect(Collectors.joining(", "));
    }

    private static MelodyChoice choice(ScorePart part, Rule rule) {
        return new MelodyChoice(part.info(), topStaff(part), rule);
    }

    /** The first staff that is home to a voice with pitched notes. */
    static int topStaff(ScorePart part) {
        return part.measures().stream()
                .flatMapToInt(measure -> new VoicePicker(measure).stavesWithNotes())
                .min()
                .orElse(1);
    }

    private static boolean isTreble(ScorePart part) {
        String clef = clef(part, topStaff(part));
        return !clef.equals("F") && !clef.equals("percussion") && !clef.equals("TAB");
    }

    /** Sign of the clef that a staff begins with; G where there is none. */
    static String clef(ScorePart part, int staff) {
        return part.measures().stream()
                .filter(measure -> measure.clefs().containsKey(staff))
                .map(measure -> measure.clefs().get(staff))
                .findFirst()
                .orElse("G");
    }
}
