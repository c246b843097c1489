package org.mantice.reading.abc;

import java.util.List;
import org.mantice.fault.TextPlace;
import org.mantice.tune.MusicalTime;

/** Reads lengths such as 2, 3/2, / and //. */
final class AbcLength {
    /** Largest numerator and denominator; longer and shorter notes are slips of the pen. */
    private static final int MOST = 1024;

    private AbcLength() {}

    static MusicalTime read(AbcCursor cursor, List<AbcElement> flaws) {
        TextPlace place = cursor.place();
        int from = cursor.position();
        long count = number(cursor.takeDigits(), 1);
        long parts = 1;
        while (cursor.take('/')) parts = Math.min(MOST + 1, parts * number(cursor.takeDigits(), 2));
        if (count >= 1 && count <= MOST && parts >= 1 && parts <= MOST) return MusicalTime.of(count, parts);
        flaws.add(new AbcElement.Flaw(place, AbcElement.Flaw.Kind.LENGTH, cursor.since(from)));
        return MusicalTime.WHOLE;
    }

    private static long number(String digits, int otherwise) {
        if (digits.isEmpty()) return otherwise;
        return digits.length() > 6 ? MOST + 1 : Long.parseLong(digits);
    }
}
