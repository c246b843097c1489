package org.mantice.instrument;

import static org.mantice.instrument.ReedBank.HIGH_4;
import static org.mantice.instrument.ReedBank.LOW_16;
import static org.mantice.instrument.ReedBank.MIDDLE_8;
import static org.mantice.instrument.ReedBank.TREMOLO_LOWER_8;
import static org.mantice.instrument.ReedBank.TREMOLO_UPPER_8;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The treble register signs of SMuFL for three ranks: name, code point and the reed banks that the glyph's description
 * lists.
 */
public enum RegisterSign {
    PICCOLO("piccolo", "Piccolo", 0xE8A0, HIGH_4),
    CLARINET("clarinet", "Clarinet", 0xE8A1, MIDDLE_8),
    UPPER_TREMOLO_8("upper tremolo 8'", "UpperTremolo8", 0xE8A2, TREMOLO_UPPER_8),
    LOWER_TREMOLO_8("lower tremolo 8'", "LowerTremolo8", 0xE8A3, TREMOLO_LOWER_8),
    BASSOON("bassoon", "Bassoon", 0xE8A4, LOW_16),
    OBOE("oboe", "Oboe", 0xE8A5, HIGH_4, MIDDLE_8),
    VIOLIN("violin", "Violin", 0xE8A6, MIDDLE_8, TREMOLO_UPPER_8),
    IMITATION_MUSETTE("imitation musette", "ImitationMusette", 0xE8A7, HIGH_4, MIDDLE_8, TREMOLO_UPPER_8),
    AUTHENTIC_MUSETTE("musette", "AuthenticMusette", 0xE8A8, TREMOLO_LOWER_8, MIDDLE_8, TREMOLO_UPPER_8),
    ORGAN("organ", "Organ", 0xE8A9, HIGH_4, LOW_16),
    HARMONIUM("harmonium", "Harmonium", 0xE8AA, HIGH_4, MIDDLE_8, LOW_16),
    BANDONEON("bandoneon", "Bandoneon", 0xE8AB, MIDDLE_8, LOW_16),
    ACCORDION("accordion", "Accordion", 0xE8AC, MIDDLE_8, TREMOLO_UPPER_8, LOW_16),
    MASTER("master", "Master", 0xE8AD, HIGH_4, TREMOLO_LOWER_8, TREMOLO_UPPER_8, LOW_16),
    TWO_CHOIRS("two choirs", "TwoChoirs", 0xE8AE, TREMOLO_LOWER_8, TREMOLO_UPPER_8),
    TREMOLO_LOWER_OCTAVE("tremolo, lower octave", "TremoloLower8ve", 0xE8AF, TREMOLO_LOWER_8, TREMOLO_UPPER_8, LOW_16),
    TREMOLO_UPPER_OCTAVE("tremolo, upper octave", "TremoloUpper8ve", 0xE8B0, HIGH_4, TREMOLO_LOWER_8, TREMOLO_UPPER_8),
    DOUBLE_TREMOLO_LOWER_OCTAVE(
            "double tremolo, lower octave",
            "DoubleTremoloLower8ve",
            0xE8B1,
            TREMOLO_LOWER_8,
            MIDDLE_8,
            TREMOLO_UPPER_8,
            LOW_16),
    DOUBLE_TREMOLO_UPPER_OCTAVE(
            "double tremolo, upper octave",
            "DoubleTremoloUpper8ve",
            0xE8B2,
            HIGH_4,
            TREMOLO_LOWER_8,
            MIDDLE_8,
            TREMOLO_UPPER_8),
    FULL("full", "FullFactory", 0xE8B3, HIGH_4, TREMOLO_LOWER_8, MIDDLE_8, TREMOLO_UPPER_8, LOW_16);

    /**
     * How MusicXML writes a register in {@code accordion-registration}: how many banks sound at 4', 8' and 16'.
     *
     * @param high 0 or 1
     * @param middle 0 to 3
     * @param low 0 or 1
     */
    public record Triple(int high, int middle, int low) {
        public Triple {
            if (high < 0 || high > 1) throw new IllegalArgumentException("high is " + high + "; allowed: 0 or 1");
            if (middle < 0 || middle > 3)
                throw new IllegalArgumentException("middle is " + middle + "; allowed: 0 to 3");
            if (low < 0 || low > 1) throw new IllegalArgumentException("low is " + low + "; allowed: 0 or 1");
            if (high + middle + low == 0)
                throw new IllegalArgumentException("high, middle and low are all 0; allowed: at least one bank");
        }

        /** Of one or more banks. */
        public static Triple of(Set<ReedBank> banks) {
            int middle =
                    (int) banks.stream().filter(bank -> bank.semitones() == 0).count();
            return new Triple(banks.contains(HIGH_4) ? 1 : 0, middle, banks.contains(LOW_16) ? 1 : 0);
        }

        public int reedsPerKey() {
            return high + middle + low;
        }
    }

    private static final String PREFIX = "accdnRH3Ranks";

    private final String text;
    private final String glyphEnd;
    private final int codePoint;
    private final Set<ReedBank> banks;

    RegisterSign(String text, String glyphEnd, int codePoint, ReedBank... banks) {
        this.text = text;
        this.glyphEnd = glyphEnd;
        this.codePoint = codePoint;
        EnumSet<ReedBank> set = EnumSet.noneOf(ReedBank.class);
        set.addAll(List.of(banks));
        this.banks = Collections.unmodifiableSet(set);
    }

    /** The register's name as players say it. */
    public String text() {
        return text;
    }

    /** The glyph's canonical name in SMuFL. */
    public String glyphName() {
        return PREFIX + glyphEnd;
    }

    /** The glyph's Unicode code point, in the private use area. */
    public int codePoint() {
        return codePoint;
    }

    public Set<ReedBank> banks() {
        return banks;
    }

    public Triple triple() {
        return Triple.of(banks);
    }

    /** The sign that means exactly these banks. */
    public static Optional<RegisterSign> exactly(Set<ReedBank> banks) {
        for (RegisterSign sign : values()) if (sign.banks.equals(banks)) return Optional.of(sign);
        return Optional.empty();
    }

    /**
     * The sign to print for these banks: the exact one, else the first of the same octaves and number of reeds. The
     * common master of four ranks (16', 8', one tremolo, 4') has no exact sign and gets the one for master.
     */
    public static Optional<RegisterSign> closest(Set<ReedBank> banks) {
        if (banks.isEmpty()) return Optional.empty();
        return exactly(banks).or(() -> {
            List<RegisterSign> alike = ofTriple(Triple.of(banks));
            return alike.isEmpty() ? Optional.empty() : Optional.of(alike.get(0));
        });
    }

    /** The signs that MusicXML writes alike, in the order of their code points: none, one or several. */
    public static List<RegisterSign> ofTriple(Triple triple) {
        return List.of(values()).stream()
                .filter(sign -> sign.triple().equals(triple))
                .toList();
    }
}
