package org.mantice.reading;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.mantice.reading.ScoreSign.Order;
import org.mantice.tune.BassChordType;
import org.mantice.tune.BellowsEffect;
import org.mantice.tune.MusicalTime;

/** Recognises words that mean something for the tune; spellings are common practice, no source. */
final class DirectionWords {
    private static final Pattern DA_CAPO = words("d\\. ?c\\.?(?!\\w).*|dc( al .*)?|da capo.*");
    private static final Pattern DAL_SEGNO = words("d\\. ?s\\.?(?!\\w).*|ds( al .*)?|(dal|del) segno.*");
    private static final Pattern TO_CODA =
            words("(al|to|da|alla|zur)( the)? coda\\b.*|to \uD834\uDD0C|al \uD834\uDD0C");
    private static final Pattern CODA = words("(the )?coda|\uD834\uDD0C( coda)?");
    private static final Pattern CODA_GLYPH = words("\uD834\uDD0C|\uE048");
    private static final Pattern SEGNO_GLYPH = words("segno|\uD834\uDD0B|\uE047");
    private static final Pattern FINE = words("fine|fin|ende");
    private static final Pattern NO_CHORD = words("n\\.? ?c\\.?|no chords?");
    private static final Pattern SHAKE = words("bellows? shake|b\\. ?s\\.");
    private static final Pattern SHAKE_END = words("n\\. ?b\\.( ?s\\.)?|normal( bellows?)?|(end|no) bellows? shake");
    private static final Pattern RICOCHET = words("(triple |quadruple |\\d )?ricochet|accdnRicochet(Stem)?[2-6]( .*)?");

    private final MusicalTime onset;
    private final int staff;

    DirectionWords(MusicalTime onset, int staff) {
        this.onset = onset;
        this.staff = staff;
    }

    private static Pattern words(String pattern) {
        return Pattern.compile(
                "[\\s(\\[]*(" + pattern + ")[\\s)\\].,:]*", Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    /** What the words mean; empty if nothing in particular. */
    List<ScoreSign> read(String text) {
        if (is(DA_CAPO, text)) return order(Order.What.DA_CAPO);
        if (is(DAL_SEGNO, text)) return order(Order.What.DAL_SEGNO);
        if (is(TO_CODA, text)) return order(Order.What.TO_CODA);
        if (is(CODA_GLYPH, text)) return order(Order.What.CODA_SIGN);
        if (is(CODA, text)) return order(Order.What.CODA_START);
        if (is(SEGNO_GLYPH, text)) return order(Order.What.SEGNO);
        if (is(FINE, text)) return order(Order.What.FINE);
        if (is(NO_CHORD, text)) return List.of(new ScoreSign.NoChord(onset));
        if (is(SHAKE_END, text)) return List.of(new ScoreSign.EffectEnd(onset));
        Optional<BellowsEffect> effect = effect(text);
        if (effect.isPresent()) return List.of(new ScoreSign.Effect(onset, effect.get()));
        Optional<BassChordType> letter = staff > 1 ? letter(text) : Optional.empty();
        return letter.<List<ScoreSign>>map(type -> List.of(new ScoreSign.Letter(onset, type)))
                .orElse(List.of());
    }

    private List<ScoreSign> order(Order.What what) {
        return List.of(new Order(onset, what));
    }

    private static boolean is(Pattern pattern, String text) {
        return pattern.matcher(text).matches();
    }

    /** A bellows effect by SMuFL glyph name or in words. */
    static Optional<BellowsEffect> effect(String text) {
        if (is(SHAKE, text)) return Optional.of(BellowsEffect.SHAKE);
        if (is(RICOCHET, text)) return Optional.of(BellowsEffect.RICOCHET);
        return Optional.empty();
    }

    /** The letter of a chord button. M and m differ only in case. */
    static Optional<BassChordType> letter(String text) {
        return switch (text.strip().replaceAll("[.()]", "")) {
            case "M", "Maj", "maj" -> Optional.of(BassChordType.MAJOR);
            case "m", "Min", "min" -> Optional.of(BassChordType.MINOR);
            case "7", "7th" -> Optional.of(BassChordType.SEVENTH);
            case "d", "D", "Dim", "dim", "d7", "dim7" -> Optional.of(BassChordType.DIMINISHED);
            default -> Optional.empty();
        };
    }
}
