package org.mantice.app.sheet;

import java.util.ArrayList;
import java.util.List;
import org.mantice.app.words.MusicWords;
import org.mantice.instrument.BassButton;
import org.mantice.instrument.BassRow;
import org.mantice.plan.LeftHandPlan;

/**
 * Buttons as letters: C the bass, underlined the counterbass, CM Cm C7 Cd the chords, each with its finger small beside
 * it.
 */
final class PressLetters {
    private static final Lettering LARGE = new Lettering(Lettering.Face.PLAIN, 1.7);
    private static final Lettering SMALL = new Lettering(Lettering.Face.PLAIN, 1.4);
    private static final Lettering FINGER = new Lettering(Lettering.Face.PLAIN, 1.3);
    private static final double BAR_GAP = 0.2;
    private static final double MOST_SHIFT = 1;
    private static final String AS_BEFORE = "·";
    private static final String NO_ROOM = "…";

    /** How much is shown, from most to least. */
    enum Detail {
        WITH_FINGERS(LARGE, true),
        /** A press like the one before in its measure has no fingers. */
        FINGERS_ONCE(LARGE, true),
        SMALL_FINGERS_ONCE(SMALL, true),
        /** A press like the one before in its measure is a dot. */
        CHANGES_WITH_FINGERS(SMALL, true),
        CHANGES(SMALL, false),
        /** The first press of a measure has letters; another than the one before has three dots. */
        FIRST(SMALL, false);

        private final Lettering lettering;
        private final boolean fingers;

        Detail(Lettering lettering, boolean fingers) {
            this.lettering = lettering;
            this.fingers = fingers;
        }

        private boolean dots() {
            return compareTo(CHANGES_WITH_FINGERS) >= 0;
        }
    }

    /**
     * One button of a press.
     *
     * @param lane from the bottom, 0
     * @param x of the middle of its letters
     * @param finger beside it; empty if left out
     */
    record Entry(int lane, double x, String letters, Lettering lettering, String finger, boolean underlined) {
        double left() {
            return x - lettering.width(letters) / 2;
        }

        double right() {
            return x + lettering.width(letters) / 2 + (finger.isEmpty() ? 0 : 0.1 + FINGER.width(finger));
        }

        /** Moved a little to the left where it would stand on the barline. */
        Entry before(double bar) {
            double over = right() + BAR_GAP - bar;
            return over <= 0 || over > MOST_SHIFT
                    ? this
                    : new Entry(lane, x - over, letters, lettering, finger, underlined);
        }

        Entry as(String sign) {
            return new Entry(lane, x, sign, LARGE, "", false);
        }

        /** @param y the middle of its lane */
        List<Item> items(double y) {
            List<Item> items = new ArrayList<>();
            double baseline = y + lettering.capital() / 2;
            items.add(Item.Text.at(left(), baseline, letters, lettering, Ink.INK));
            if (!finger.isEmpty())
                items.add(
                        Item.Text.at(x + lettering.width(letters) / 2 + 0.1, baseline + 0.35, finger, FINGER, Ink.INK));
            if (underlined)
                items.add(Item.Drawn.of(
                        Signs.open(left(), baseline + 0.22, left() + lettering.width(letters), baseline + 0.22),
                        Ink.INK,
                        0.13));
            return items;
        }
    }

    private PressLetters() {}

    /** How many lanes a press needs: chords never stand in the lowest. */
    static int lanes(LeftHandPlan.Event event) {
        int basses = (int) event.buttons().stream()
                .filter(button -> !button.row().isChord())
                .count();
        int chords = event.buttons().size() - basses;
        return chords == 0 ? basses : Math.max(1, basses) + chords;
    }

    /** The entries of a measure's presses, in order. */
    static List<Entry> of(List<ButtonStrip.Press> measure, Detail detail, MusicWords music) {
        List<Entry> entries = new ArrayList<>();
        for (int i = 0; i < measure.size(); i++) {
            boolean repeated =
                    i > 0 && isAlike(measure.get(i).event(), measure.get(i - 1).event());
            boolean fingers = detail.fingers && (!repeated || detail == Detail.WITH_FINGERS);
            List<Entry> full = of(measure.get(i), detail.lettering, fingers, music);
            if (repeated && detail.dots()) entries.add(full.get(0).as(AS_BEFORE));
            else if (i > 0 && detail == Detail.FIRST) entries.add(full.get(0).as(NO_ROOM));
            else entries.addAll(full);
        }
        return entries;
    }

    private static boolean isAlike(LeftHandPlan.Event one, LeftHandPlan.Event other) {
        return one.buttons().equals(other.buttons()) && one.fingers().equals(other.fingers());
    }

    private static List<Entry> of(ButtonStrip.Press press, Lettering lettering, boolean fingers, MusicWords music) {
        List<Entry> entries = new ArrayList<>();
        int lane = 0;
        for (boolean chords : List.of(false, true)) {
            if (chords) lane = Math.max(1, lane);
            for (int i = 0; i < press.event().buttons().size(); i++) {
                BassButton button = press.event().buttons().get(i);
                if (button.row().isChord() != chords) continue;
                String finger = fingers ? press.event().fingers().get(i).toString() : "";
                boolean counterbass = button.row() == BassRow.COUNTERBASS;
                Entry entry = new Entry(lane++, press.x(), letters(button, music), lettering, finger, counterbass);
                entries.add(entry.before(press.bar()));
            }
        }
        return entries;
    }

    static String letters(BassButton button, MusicWords music) {
        return music.note(button.noteName())
                + switch (button.row()) {
                    case COUNTERBASS, BASS -> "";
                    case MAJOR -> "M";
                    case MINOR -> "m";
                    case SEVENTH -> "7";
                    case DIMINISHED -> "d";
                };
    }
}
