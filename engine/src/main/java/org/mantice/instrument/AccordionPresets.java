package org.mantice.instrument;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Ready-made accordions, from a beginner's to the largest. Ranges and bass layouts are the usual ones of each size;
 * everything about air is an estimate ({@link Bellows#measured} is false) from {@link BellowsEstimate}.
 */
public final class AccordionPresets {
    /** 489 mm over 24 white keys, as published for full-size keyboards; other instruments measure 19.6 to 20.5. */
    public static final int FULL_WHITE_KEY_MICRONS = 20_375;
    /** 314 mm over 16 white keys, as measured on a student's instrument. */
    public static final int STUDENT_WHITE_KEY_MICRONS = 19_625;

    /** Time for a free hand to press a switch and be back; an estimate. */
    private static final int REACH_MILLIS = 400;

    private static final List<Accordion> ALL = List.of(
            beginner26of8(),
            beginner26(),
            student26of24(),
            student26of32(),
            student26of40(),
            student26(),
            student30(),
            standard34of60(),
            standard34(),
            worn37(),
            standard37(),
            musette41(),
            full41(),
            displaced41(),
            concert45());

    private AccordionPresets() {}

    /** All presets from small to large. */
    public static List<Accordion> all() {
        return ALL;
    }

    public static Optional<Accordion> find(String id) {
        return ALL.stream().filter(accordion -> accordion.id().equals(id)).findFirst();
    }

    /** The preset of an id; an unknown one is refused with the list of those that there are. */
    public static Accordion get(String id) {
        return find(id).orElseThrow(() -> new IllegalArgumentException("accordion preset is '" + id + "'; allowed: "
                + String.join(", ", ALL.stream().map(Accordion::id).toList())));
    }

    private static Accordion beginner26of8() {
        return new Accordion(
                "beginner-26-key-8-bass",
                "Beginner, 26 keys, 8 bass",
                treble(59, 84, STUDENT_WHITE_KEY_MICRONS, RegisterSign.CLARINET),
                StradellaBass.ofSize(8),
                new BellowsEstimate(0.040, 150, 220).bellows(2, 3, 40));
    }

    private static Accordion beginner26() {
        return new Accordion(
                "beginner-26-key-12-bass",
                "Beginner, 26 keys, 12 bass",
                treble(59, 84, STUDENT_WHITE_KEY_MICRONS, RegisterSign.CLARINET),
                StradellaBass.ofSize(12),
                new BellowsEstimate(0.040, 150, 220).bellows(2, 3, 40));
    }

    private static Accordion student26of24() {
        return new Accordion(
                "student-26-key-24-bass",
                "Student, 26 keys, 24 bass",
                treble(59, 84, STUDENT_WHITE_KEY_MICRONS, RegisterSign.VIOLIN),
                StradellaBass.ofSize(24),
                new BellowsEstimate(0.045, 160, 240).bellows(2, 3, 40));
    }

    private static Accordion student26of32() {
        return new Accordion(
                "student-26-key-32-bass",
                "Student, 26 keys, 32 bass",
                treble(59, 84, STUDENT_WHITE_KEY_MICRONS, RegisterSign.VIOLIN),
                StradellaBass.ofSize(32),
                new BellowsEstimate(0.045, 160, 240).bellows(2, 3, 40));
    }

    private static Accordion student26of40() {
        return new Accordion(
                "student-26-key-40-bass",
                "Student, 26 keys, 40 bass without diminished",
                treble(59, 84, STUDENT_WHITE_KEY_MICRONS, RegisterSign.CLARINET, RegisterSign.VIOLIN),
                StradellaBass.ofSize(40),
                new BellowsEstimate(0.050, 170, 260).bellows(2, 3, 40));
    }

    private static Accordion student26() {
        return new Accordion(
                "student-26-key-48-bass",
                "Student, 26 keys, 48 bass without sevenths",
                treble(
                        59,
                        84,
                        STUDENT_WHITE_KEY_MICRONS,
                        RegisterSign.CLARINET,
                        RegisterSign.BANDONEON,
                        RegisterSign.BASSOON),
                StradellaBass.ofSize(48),
                new BellowsEstimate(0.050, 170, 260).bellows(2, 3, 40));
    }

    private static Accordion student30() {
        return new Accordion(
                "student-30-key-48-bass-six-rows",
                "Student, 30 keys, 48 bass in six rows",
                treble(55, 84, STUDENT_WHITE_KEY_MICRONS, RegisterSign.CLARINET, RegisterSign.VIOLIN),
                StradellaBass.ofRows(8, EnumSet.allOf(BassRow.class)),
                new BellowsEstimate(0.052, 180, 270).bellows(2, 3, 40));
    }

    private static Accordion standard34of60() {
        return new Accordion(
                "standard-34-key-60-bass",
                "Standard, 34 keys, 60 bass without diminished",
                treble(
                        55,
                        88,
                        STUDENT_WHITE_KEY_MICRONS,
                        RegisterSign.CLARINET,
                        RegisterSign.BASSOON,
                        RegisterSign.BANDONEON),
                StradellaBass.ofSize(60),
                new BellowsEstimate(0.060, 200, 300).bellows(4, 6, 50));
    }

    private static Accordion standard34() {
        return new Accordion(
                "standard-34-key-72-bass",
                "Standard, 34 keys, 72 bass",
                treble(
                        55,
                        88,
                        20_000,
                        RegisterSign.CLARINET,
                        RegisterSign.VIOLIN,
                        RegisterSign.BANDONEON,
                        RegisterSign.BASSOON,
                        RegisterSign.ACCORDION),
                StradellaBass.ofSize(72),
                new BellowsEstimate(0.065, 210, 310).bellows(4, 6, 50));
    }

    private static Accordion worn37() {
        return new Accordion(
                "worn-37-key-80-bass",
                "Old and clunky, 37 keys, 80 bass",
                treble(53, 89, 20_000, RegisterSign.CLARINET, RegisterSign.VIOLIN, RegisterSign.BANDONEON),
                StradellaBass.ofSize(80),
                new BellowsEstimate(0.070, 210, 320).bellows(4, 6, 80));
    }

    private static Accordion standard37() {
        return new Accordion(
                "standard-37-key-96-bass",
                "Standard, 37 keys, 96 bass",
                treble(
                        53,
                        89,
                        20_000,
                        RegisterSign.CLARINET,
                        RegisterSign.BASSOON,
                        RegisterSign.VIOLIN,
                        RegisterSign.BANDONEON,
                        RegisterSign.ACCORDION,
                        RegisterSign.OBOE,
                        RegisterSign.MASTER),
                StradellaBass.ofSize(96),
                new BellowsEstimate(0.075, 230, 340).bellows(4, 6, 50));
    }

    private static Accordion musette41() {
        return new Accordion(
                "musette-41-key-120-bass",
                "Musette, 41 keys, 120 bass",
                treble(
                        53,
                        93,
                        FULL_WHITE_KEY_MICRONS,
                        RegisterSign.CLARINET,
                        RegisterSign.BASSOON,
                        RegisterSign.VIOLIN,
                        RegisterSign.AUTHENTIC_MUSETTE,
                        RegisterSign.BANDONEON,
                        RegisterSign.ACCORDION,
                        RegisterSign.DOUBLE_TREMOLO_LOWER_OCTAVE),
                StradellaBass.ofSize(120),
                new BellowsEstimate(0.080, 240, 350).bellows(4, 6, 50));
    }

    private static Accordion full41() {
        return new Accordion(
                "full-41-key-120-bass",
                "Full size, 41 keys, 120 bass",
                treble(
                        53,
                        93,
                        FULL_WHITE_KEY_MICRONS,
                        RegisterSign.PICCOLO,
                        RegisterSign.CLARINET,
                        RegisterSign.BASSOON,
                        RegisterSign.OBOE,
                        RegisterSign.VIOLIN,
                        RegisterSign.IMITATION_MUSETTE,
                        RegisterSign.ORGAN,
                        RegisterSign.HARMONIUM,
                        RegisterSign.BANDONEON,
                        RegisterSign.ACCORDION,
                        RegisterSign.MASTER),
                StradellaBass.ofSize(120),
                new BellowsEstimate(0.080, 240, 350).bellows(4, 6, 45));
    }

    /** As some makers lay it out (an encyclopaedia article names Russian ones): C diminished in the place of F. */
    private static Accordion displaced41() {
        Accordion usual = full41();
        return new Accordion(
                "full-41-key-120-bass-moved-diminished",
                "Full size, 41 keys, 120 bass, diminished row one column lower",
                usual.treble(),
                usual.bass().displaced(BassRow.DIMINISHED, -1),
                usual.bellows());
    }

    private static Accordion concert45() {
        return new Accordion(
                "concert-45-key-120-bass",
                "Concert, 45 keys, 120 bass",
                treble(
                        52,
                        96,
                        FULL_WHITE_KEY_MICRONS,
                        RegisterSign.PICCOLO,
                        RegisterSign.CLARINET,
                        RegisterSign.BASSOON,
                        RegisterSign.OBOE,
                        RegisterSign.VIOLIN,
                        RegisterSign.IMITATION_MUSETTE,
                        RegisterSign.AUTHENTIC_MUSETTE,
                        RegisterSign.ORGAN,
                        RegisterSign.HARMONIUM,
                        RegisterSign.BANDONEON,
                        RegisterSign.ACCORDION,
                        RegisterSign.DOUBLE_TREMOLO_LOWER_OCTAVE,
                        RegisterSign.FULL),
                StradellaBass.ofSize(120),
                new BellowsEstimate(0.088, 250, 360).bellows(4, 6, 30));
    }

    private static TrebleKeyboard treble(int lowest, int highest, int whiteKeyMicrons, RegisterSign... signs) {
        List<RegisterSwitch> switches = new ArrayList<>();
        Collection<ReedBank> all = EnumSet.noneOf(ReedBank.class);
        for (RegisterSign sign : signs) if (sign != RegisterSign.MASTER) all.addAll(sign.banks());
        for (RegisterSign sign : signs) {
            Set<ReedBank> banks = sign == RegisterSign.MASTER ? Set.copyOf(all) : sign.banks();
            String id = sign.text().replaceAll("[^a-z0-9]+", "-");
            switches.add(new RegisterSwitch(id, sign.text(), banks, true, REACH_MILLIS));
        }
        return new TrebleKeyboard(lowest, highest, whiteKeyMicrons, switches);
    }
}
