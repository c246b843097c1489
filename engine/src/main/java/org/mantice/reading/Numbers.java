package org.mantice.reading;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import org.mantice.tune.MusicalTime;

/** Reads the numbers of a file, forgivingly and within bounds. */
final class Numbers {
    private static final Pattern DECIMAL = Pattern.compile("[+-]?(\\d{1,9}(\\.\\d{0,12})?|\\.\\d{1,12})");

    private Numbers() {}

    /** A sign, if any, and 1 to 9 digits. Voices are sorted by it: no pattern, for it is asked so often. */
    static OptionalInt integer(String text) {
        boolean signed = text.startsWith("+") || text.startsWith("-");
        int first = signed ? 1 : 0;
        if (text.length() == first || text.length() > first + 9) return OptionalInt.empty();
        for (int i = first; i < text.length(); i++)
            if (text.charAt(i) < '0' || text.charAt(i) > '9') return OptionalInt.empty();
        return OptionalInt.of(Integer.parseInt(text));
    }

    static int integer(String text, int otherwise) {
        return integer(text).orElse(otherwise);
    }

    /** A decimal number below a thousand million, rounded to six places. */
    static Optional<BigDecimal> decimal(String text) {
        if (!DECIMAL.matcher(text).matches()) return Optional.empty();
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
