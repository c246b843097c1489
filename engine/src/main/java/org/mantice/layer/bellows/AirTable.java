package org.mantice.layer.bellows;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import org.mantice.instrument.Accordion;
import org.mantice.instrument.BassButton;
import org.mantice.instrument.Bellows;
import org.mantice.instrument.ReedBank;
import org.mantice.instrument.RegisterSwitch;
import org.mantice.performance.Performance;
import org.mantice.performance.TrebleMoment;
import org.mantice.plan.LeftHandPlan;
import org.mantice.plan.VariationPlan;
import org.mantice.tune.Loudness;

/**
 * Air that the music takes, in whole millilitres between neighbouring places.
 *
 * <p>What sounds: every key of the right hand with the reeds of its pass's switch, from onset to release; every bass
 * and chord button of the left hand, as pressed. All by the appetites of the instrument, times the factor of the
 * loudness of the moment that sounds or sounded last (one pressure serves both hands). The mean reed of a bank stands for
 * all its reeds; how low the single note is, is not counted.
 *
 * <p>Counted exactly in units of one millionth of a second of one per mille of an 8' reed at one hundred-thousandth of
 * the loudness of mf; {@link #millilitres} is the one place where units become millilitres, rounded up once for each
 * stretch between places. So a stroke never takes more than is counted for it. A turn takes its time from the note
 * before; the air which that note spares is not deducted, the air of the turn itself is therefore none.
 */
final class AirTable {
    /** Units of air that one 8' reed takes at mf in a second. */
    private static final BigInteger UNITS_PER_REED_SECOND = BigInteger.valueOf(1_000_000L * 1_000 * 100_000);

    private final Bellows bellows;
    /** By stretch: from the place of the same number to the next. */
    private final long[] units;

    private final int[] prefix;

    private AirTable(Bellows bellows, long[] units) {
        this.bellows = bellows;
        this.units = units;
        this.prefix = new int[units.length + 1];
        for (int i = 0; i < units.length; i++) prefix[i + 1] = Math.addExact(prefix[i], millilitres(units[i]));
    }

    /** @param micros of all places, not falling */
    static AirTable of(
            Performance performance,
            VariationPlan variation,
            LeftHandPlan leftHand,
            Accordion accordion,
            long[] micros) {
        return new AirTable(
                accordion.bellows(), new Sweep(changes(performance, variation, leftHand, accordion)).cut(micros));
    }

    /** Millilitres from one place to a later one: exact sums of the stretches. */
    int between(int from, int to) {
        return prefix[to] - prefix[from];
    }

    int total() {
        return prefix[units.length];
    }

    /** Units from one place to a later one, not rounded. */
    long unitsBetween(int from, int to) {
        long sum = 0;
        for (int i = from; i < to; i++) sum = Math.addExact(sum, units[i]);
        return sum;
    }

    /** The one place where air is rounded: up. */
    private int millilitres(long count) {
        if (count == 0) return 0;
        BigInteger air = BigInteger.valueOf(count).multiply(BigInteger.valueOf(bellows.comfortableMillilitres()));
        BigInteger unit = UNITS_PER_REED_SECOND.multiply(BigInteger.valueOf(bellows.capacityReedSeconds()));
        return air.add(unit).subtract(BigInteger.ONE).divide(unit).intValueExact();
    }

    /** Appetite of one key with these banks, in per mille of an 8' reed. */
    static int appetite(Bellows.Appetites appetites, RegisterSwitch register) {
        int sum = 0;
        for (ReedBank bank : register.banks()) sum += appetites.banks().getOrDefault(bank, 1_000);
        return sum;
    }

    /** Factor of a loudness between two marks, straight line, in hundred-thousandths of mf. */
    static long loudnessFactor(SortedMap<Loudness, Integer> factors, int loudness) {
        Loudness[] marks = Loudness.values();
        int low = Math.max(0, Math.min(marks.length - 1, Math.floorDiv(loudness, 100)));
        int high = Math.min(marks.length - 1, low + 1);
        int share = Math.max(0, Math.min(100, loudness - 100 * low));
        return (100L - share) * factors.getOrDefault(marks[low], 1_000)
                + (long) share * factors.getOrDefault(marks[high], 1_000);
    }

    /** From {@code micros} on the appetite changes by so much, and the loudness factor is this unless negative. */
    private record Change(long micros, int appetite, long factor) {}

    private static List<Change> changes(
            Performance performance, VariationPlan variation, LeftHandPlan leftHand, Accordion accordion) {
        Bellows.Appetites appetites = accordion.bellows().appetites();
        List<Change> changes = new ArrayList<>();
        List<TrebleMoment> treble = performance.treble();
        for (int i = 0; i < treble.size(); i++) {
            TrebleMoment moment = treble.get(i);
            String id = variation.pass(performance.passOf(moment)).switchId();
            int keys = appetite(appetites, switchOf(accordion, id))
                    * moment.notes().size();
            long factor = loudnessFactor(appetites.loudness(), moment.loudness());
            changes.add(new Change(moment.onsetMicros(), keys, factor));
            changes.add(new Change(soundsUntil(treble, i), -keys, -1));
        }
        for (LeftHandPlan.Event event : leftHand.events()) {
            int buttons = 0;
            for (BassButton button : event.buttons())
                buttons += button.row().isChord() ? appetites.chordButton() : appetites.bassButton();
            changes.add(new Change(event.onsetMicros(), buttons, -1));
            changes.add(new Change(Math.max(event.onsetMicros(), event.releaseMicros()), -buttons, -1));
        }
        changes.sort(Comparator.comparingLong(Change::micros));
        return changes;
    }

    /** A key held into the next moment is counted there again. */
    private static long soundsUntil(List<TrebleMoment> treble, int i) {
        TrebleMoment moment = treble.get(i);
        long release = Math.max(moment.onsetMicros(), moment.releaseMicros());
        if (i + 1 == treble.size()) return release;
        TrebleMoment next = treble.get(i + 1);
        boolean heldOn = next.notes().stream().anyMatch(note -> note.held());
        return heldOn ? Math.max(moment.onsetMicros(), Math.min(release, next.onsetMicros())) : release;
    }

    private static RegisterSwitch switchOf(Accordion accordion, String id) {
        return accordion.treble().switches().stream()
                .filter(register -> register.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("switch is " + id + "; allowed: "
                        + accordion.treble().switches().stream()
                                .map(RegisterSwitch::id)
                                .toList()));
    }

    /** Adds up what sounds over time. */
    private static final class Sweep {
        private final List<Change> changes;
        private int next;
        private long now = Long.MIN_VALUE;
        private long appetite;
        private long factor;

        Sweep(List<Change> changes) {
            this.changes = changes;
            for (Change change : changes)
                if (change.factor() >= 0) {
                    factor = change.factor();
                    break;
                }
        }

        /** Everything before the first place belongs to the first stretch, everything after the last to the last. */
        long[] cut(long[] places) {
            long[] units = new long[places.length - 1];
            for (int i = 0; i < units.length; i++)
                units[i] = until(i + 1 == units.length ? Long.MAX_VALUE : places[i + 1]);
            return units;
        }

        private long until(long end) {
            long sum = 0;
            while (next < changes.size() && changes.get(next).micros() < end) {
                Change change = changes.get(next++);
                sum = Math.addExact(sum, pass(change.micros()));
                appetite += change.appetite();
                if (change.factor() >= 0) factor = change.factor();
            }
            return end == Long.MAX_VALUE ? sum : Math.addExact(sum, pass(end));
        }

        private long pass(long time) {
            long micros = now == Long.MIN_VALUE ? 0 : time - now;
            now = time;
            return Math.multiplyExact(Math.multiplyExact(micros, appetite), factor);
        }
    }
}
