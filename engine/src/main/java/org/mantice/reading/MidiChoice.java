package org.mantice.reading;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.mantice.fault.FilePlace;
import org.mantice.reading.MelodyChoice.Rule;
import org.mantice.reading.TuneReadException.Reason;
import org.mantice.reading.midi.MelodyScore;
import org.mantice.reading.midi.MidiPart;

/** Chooses the melody among the parts of a MIDI file: what was asked for, else what is most like one; never drums. */
final class MidiChoice {
    private static final int BASS_CENTS = 5_200;
    private static final int CROWDED_PERMILLE = 500;
    private final FilePlace place;
    private final List<MidiPart> parts;

    MidiChoice(FilePlace place, List<MidiPart> parts) {
        this.place = place;
        this.parts = parts;
    }

    List<PartInfo> infos() {
        return parts.stream().map(MidiChoice::info).toList();
    }

    static PartInfo info(MidiPart part) {
        return new PartInfo(
                part.id(), part.name(), part.isDrums() ? 0 : part.notes().size(), 0);
    }

    /** @param syllables where syllables are sung, in ticks */
    MidiPart melody(ReadOptions options, List<Long> syllables) {
        List<MidiPart> pitched = pitched();
        if (pitched.isEmpty()) throw TuneReadException.of(Reason.NO_NOTES, place);
        if (options.part().isPresent()) return askedFor(options.part().get(), pitched);
        int most = pitched.stream().mapToInt(part -> part.notes().size()).max().orElseThrow();
        MidiPart best = pitched.get(0);
        long points = Long.MIN_VALUE;
        for (MidiPart part : pitched) {
            long score = MelodyScore.of(part, most, syllables);
            if (score > points) best = part;
            points = Math.max(points, score);
        }
        return best;
    }

    Rule rule(ReadOptions options) {
        if (options.part().isPresent()) return Rule.ASKED_FOR;
        return pitched().size() == 1 ? Rule.ONLY_PART : Rule.MELODIC;
    }

    private List<MidiPart> pitched() {
        return parts.stream().filter(part -> !part.isDrums()).toList();
    }

    /** The parts that accompany: in chords or low. */
    List<MidiPart> accompaniment(MidiPart melody) {
        return pitched().stream()
                .filter(part -> !part.equals(melody))
                .filter(part -> part.meanPitchCents() < BASS_CENTS
                        || part.crowdedPermille() >= CROWDED_PERMILLE
                                && part.meanPitchCents() < melody.meanPitchCents() + 1_200)
                .toList();
    }

    private MidiPart askedFor(String wanted, List<MidiPart> pitched) {
        OptionalInt index = Numbers.integer(wanted);
        for (MidiPart part : parts) if (part.id().equalsIgnoreCase(wanted)) return sounding(part, pitched);
        for (MidiPart part : parts) if (part.name().equalsIgnoreCase(wanted)) return sounding(part, pitched);
        if (index.isPresent() && index.getAsInt() >= 1 && index.getAsInt() <= parts.size())
            return sounding(parts.get(index.getAsInt() - 1), pitched);
        throw TuneReadException.of(Reason.NO_SUCH_PART, place, wanted, labels(parts));
    }

    private MidiPart sounding(MidiPart part, List<MidiPart> pitched) {
        if (!part.isDrums()) return part;
        throw TuneReadException.of(Reason.NO_NOTES_IN_PART, place, info(part).label(), labels(pitched));
    }

    private static String labels(List<MidiPart> parts) {
        return parts.stream().map(part -> info(part).label()).collect(Collectors.joining(", "));
    }
}
