package org.mantice.reading;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.OptionalInt;
import org.mantice.tune.MusicalTime;

/** Reads the numbers of a file, forgivingly and within bounds. */
final class Numbers {
    private Numbers() {}

    static OptionalInt integer(String text) {
        return text.matches("[+-]?\\d{1,9}") ? OptionalInt.of(Integer.parseInt(text)) : OptionalInt.empty();
    }

    static int integer(String text, int otherwise) {
        return integer(text).orElse(otherwise);
    }

    /** A decimal number below a thousand million, rounded to six places. */
    static Optional<BigDecimal> decimal(String text) {
        if (!text.matches("[+-]?(\\d{1,9}(\\.\\d{0,12})?|\\.\\d{1,12})")) return Optional.empty();
        BigDecimal value = new BigDecimal(text);
        return Optional.of(value.scale() > 6 ? value.setScale(6, RoundingMode.HALF_EVEN) : value);
    }

    /** The same as an exact fraction. */
    static Optional<MusicalTime> fraction(String text) {
        return decimal(text).map(value -> {
            BigDecimal plain = value.stripTrailingZeros();
            int scale = Math.max(0, plain.scale());
            return MusicalTime.of(
                    plain.movePointRight(scale).longValueExact(),
                    BigDecimal.TEN.pow(scale).longValueExact());
        });
    }
}
