package org.mantice.writing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import org.mantice.tune.Mark;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tempo;

/** Writes marks as directions. */
final class Directions {
    /** What a phrase start is called: a direction that is not printed and that other programs pass over. */
    static final String PHRASE_START = "phrase start";

    private final XmlOut out;

    Directions(XmlOut out) {
        this.out = out;
    }

    /** @param offset in divisions from where the file stands */
    void write(Mark mark, long offset) {
        if (mark instanceof Mark.Dynamic it)
            write("below", offset, each -> each.open("dynamics")
                    .empty(it.level().name().toLowerCase(Locale.ROOT))
                    .close());
        if (mark instanceof Mark.HairpinStart it)
            write("below", offset, each -> each.empty("wedge", "type", it.crescendo() ? "crescendo" : "diminuendo"));
        if (mark instanceof Mark.HairpinEnd) write("below", offset, each -> each.empty("wedge", "type", "stop"));
        if (mark instanceof Mark.Rehearsal it) write("above", offset, each -> each.leaf("rehearsal", it.text()));
        if (mark instanceof Mark.Words it) write("above", offset, each -> each.leaf("words", it.text()));
        if (mark instanceof Mark.PhraseStart)
            write("", offset, each -> each.leaf("other-direction", PHRASE_START, "print-object", "no"));
        if (mark instanceof Mark.TempoChange it) writeTempo(it.tempo(), offset);
        if (mark instanceof Mark.Registration it) writeRegistration(it, offset);
    }

    /** A sign or words about the order of play, with what playback does. */
    void writeOrder(Consumer<XmlOut> type, String sound, String value) {
        out.open("direction", "placement", "above").open("direction-type");
        type.accept(out);
        out.close().empty("sound", sound, value).close();
    }

    private void write(String placement, long offset, Consumer<XmlOut> type) {
        start(placement, offset, type);
        out.close();
    }

    private void start(String placement, long offset, Consumer<XmlOut> type) {
        out.open("direction", "placement", placement).open("direction-type");
        type.accept(out);
        out.close();
        if (offset != 0) out.leaf("offset", String.valueOf(offset), "sound", "yes");
    }

    /** A beat that no note values show is written for playback alone, as quarters. */
    private void writeTempo(Tempo tempo, long offset) {
        List<NoteValue> beat = NoteValue.plain(tempo.beat());
        BigDecimal perMinute = BigDecimal.valueOf(tempo.milliBeatsPerMinute(), 3);
        MusicalTime quarters = tempo.beat().dividedBy(MusicalTime.QUARTER);
        String playback = perMinute
                .multiply(BigDecimal.valueOf(quarters.numerator()))
                .divide(BigDecimal.valueOf(quarters.denominator()), 6, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
        if (beat.isEmpty()) {
            out.open("sound", "tempo", playback);
            if (offset != 0) out.leaf("offset", offset);
            out.close();
            return;
        }
        start(
                "above",
                offset,
                each -> writeMetronome(beat, perMinute.stripTrailingZeros().toPlainString()));
        out.empty("sound", "tempo", playback).close();
    }

    private void writeMetronome(List<NoteValue> beat, String perMinute) {
        out.open("metronome");
        writeBeat(beat.get(0));
        for (NoteValue more : beat.subList(1, beat.size())) {
            out.open("beat-unit-tied");
            writeBeat(more);
            out.close();
        }
        out.leaf("per-minute", perMinute).close();
    }

    private void writeBeat(NoteValue value) {
        out.leaf("beat-unit", value.type());
        for (int i = 0; i < value.dots(); i++) out.empty("beat-unit-dot");
    }

    /** A register without any dot has no sign and is left out. */
    private void writeRegistration(Mark.Registration register, long offset) {
        if (!register.high() && !register.low() && register.middle() == 0) return;
        write("above", offset, each -> {
            each.open("accordion-registration");
            if (register.high()) each.empty("accordion-high");
            if (register.middle() > 0) each.leaf("accordion-middle", register.middle());
            if (register.low()) each.empty("accordion-low");
            each.close();
        });
    }
}
