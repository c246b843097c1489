package org.mantice.reading;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.mantice.tune.Mark;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tempo;

/**
 * Reads a tempo from metronome marks and playback tempo (quarters a minute). The metronome mark counts where it is
 * exact; a mark that is not ("60-72", "c. 80") gives way to the playback tempo, and where there is none the middle of
 * its numbers is taken and reported.
 */
final class TempoReader {
    private static final Pattern NUMBER = Pattern.compile("\\d{1,4}(\\.\\d{1,3})?");

    private final MusicalTime onset;
    private final List<ScoreSign> signs = new ArrayList<>();

    TempoReader(MusicalTime onset) {
        this.onset = onset;
    }

    List<ScoreSign> read(List<XmlNode> metronomes, String quarters) {
        Optional<Tempo> playback = Numbers.decimal(quarters).flatMap(value -> tempo(MusicalTime.QUARTER, value));
        Optional<Tempo> taken = Optional.empty();
        for (XmlNode metronome : metronomes) {
            Optional<Tempo> read = fromMark(metronome, playback.isPresent());
            if (taken.isEmpty()) taken = read;
        }
        if (!quarters.isEmpty() && playback.isEmpty() && taken.isEmpty()) unused(quarters);
        Optional<Tempo> tempo = taken.isPresent() ? taken : playback;
        tempo.ifPresent(value -> signs.add(new ScoreSign.Plain(new Mark.TempoChange(onset, value))));
        return signs;
    }

    private Optional<Tempo> fromMark(XmlNode metronome, boolean otherKnown) {
        List<XmlNode> units = metronome.children("beat-unit").toList();
        String text = metronome.text("per-minute");
        Optional<MusicalTime> beat = units.size() == 1 ? beat(metronome) : Optional.empty();
        Optional<Tempo> exact = beat.flatMap(unit -> Numbers.decimal(text).flatMap(value -> tempo(unit, value)));
        if (exact.isPresent()) return exact;
        Optional<Tempo> middle = beat.flatMap(unit -> middle(text).flatMap(value -> tempo(unit, value)));
        if (otherKnown || middle.isEmpty()) {
            unused(text.isEmpty() ? "between two note values" : text);
            return Optional.empty();
        }
        signs.add(new ScoreSign.Unused(
                onset, Finding.of(SkippedWhat.TEMPO_READ, text, middle.get().toString())));
        return middle;
    }

    /** A note value and those tied to it. */
    private static Optional<MusicalTime> beat(XmlNode metronome) {
        Optional<MusicalTime> sum = unit(metronome);
        for (XmlNode tied : metronome.children("beat-unit-tied").toList())
            sum = sum.flatMap(length -> unit(tied).map(length::plus));
        return sum;
    }

    private static Optional<MusicalTime> unit(XmlNode node) {
        return NoteLength.unit(
                node.text("beat-unit"), (int) node.children("beat-unit-dot").count());
    }

    /** The middle of the smallest and the largest number in the text. */
    private static Optional<BigDecimal> middle(String text) {
        Matcher matcher = NUMBER.matcher(text);
        List<BigDecimal> found = new ArrayList<>();
        while (matcher.find() && found.size() < 10) found.add(new BigDecimal(matcher.group()));
        if (found.isEmpty()) return Optional.empty();
        BigDecimal low = found.stream().reduce(BigDecimal::min).orElseThrow();
        BigDecimal high = found.stream().reduce(BigDecimal::max).orElseThrow();
        return Optional.of(low.add(high).divide(BigDecimal.valueOf(2), 3, RoundingMode.HALF_UP));
    }

    private static Optional<Tempo> tempo(MusicalTime beat, BigDecimal perMinute) {
        BigDecimal thousandths = perMinute.movePointRight(3).setScale(0, RoundingMode.HALF_UP);
        if (thousandths.compareTo(BigDecimal.valueOf(5_000)) < 0) return Optional.empty();
        if (thousandths.compareTo(BigDecimal.valueOf(1_000_000)) > 0) return Optional.empty();
        return Optional.of(new Tempo(beat, thousandths.intValueExact()));
    }

    private void unused(String text) {
        signs.add(new ScoreSign.Unused(onset, Finding.of(SkippedWhat.TEMPO, text)));
    }
}
