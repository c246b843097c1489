package org.mantice.layer.bellows;

import java.util.ArrayList;
import java.util.List;
import org.mantice.performance.Performance;
import org.mantice.performance.PlayedMeasure;
import org.mantice.performance.PlayedNote;
import org.mantice.performance.Punctuation;
import org.mantice.performance.TrebleMoment;
import org.mantice.plan.LeftHandPlan;
import org.mantice.rule.TurnPlace;
import org.mantice.rule.TurnPlace.Mark;
import org.mantice.rule.TurnPlace.Pickup;
import org.mantice.tune.Articulation;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.WrittenPlace;

/**
 * Where the bellows may turn: just before every onset of the melody (before its grace notes, if any) and, in a rest, at
 * every beat, or at every barline if the rest is longer than two measures. Inside a held note only where the player
 * allows it, at the beats.
 */
final class TurnCandidates {
    /** A rest of more than this is cut at barlines only. */
    private static final int REST_MEASURES_BY_BEAT = 2;

    private final Performance performance;
    private final MeasureLine line;
    private final LeftHandLine left;
    private final boolean mayTurnInHeldNote;
    private final int turnMillis;
    private final boolean[] insidePickups;
    private final List<Candidate> candidates = new ArrayList<>();

    private TurnCandidates(Performance performance, LeftHandPlan leftHand, boolean mayTurnInHeldNote, int turnMillis) {
        this.performance = performance;
        this.line = new MeasureLine(performance);
        this.left = new LeftHandLine(leftHand);
        this.mayTurnInHeldNote = mayTurnInHeldNote;
        this.turnMillis = turnMillis;
        this.insidePickups = insidePickups();
    }

    /** All places in order of play, the start first and the end last. */
    static List<Candidate> of(
            Performance performance, LeftHandPlan leftHand, boolean mayTurnInHeldNote, int turnMillis) {
        return new TurnCandidates(performance, leftHand, mayTurnInHeldNote, turnMillis).all();
    }

    private List<Candidate> all() {
        List<TrebleMoment> treble = performance.treble();
        add(0, MusicalTime.ZERO, line.played(0).startMicros(), plain());
        silence(new Gap(
                MusicalTime.ZERO, 0, treble.get(0).onset(), treble.get(0).onsetMicros(), 0, false, Punctuation.NONE));
        for (int i = 0; i < treble.size(); i++) {
            TrebleMoment moment = treble.get(i);
            if (i > 0) before(treble.get(i - 1), moment);
            if (mayTurnInHeldNote)
                inside(moment, i + 1 < treble.size() ? treble.get(i + 1).onset() : end());
            MusicalTime over = moment.onset().plus(moment.duration());
            boolean last = i + 1 == treble.size();
            MusicalTime next = last ? end() : treble.get(i + 1).onset();
            long nextMicros = last ? performance.endMicros() : treble.get(i + 1).onsetMicros();
            if (over.isBefore(next))
                silence(new Gap(
                        over,
                        moment.releaseMicros(),
                        next,
                        nextMicros,
                        millis(moment.onsetMicros(), moment.releaseMicros()),
                        moment.breathAfter(),
                        moment.punctuation()));
        }
        int last = line.count() - 1;
        add(last, line.played(last).length(), performance.endMicros(), plain());
        return inOrder();
    }

    private MusicalTime end() {
        PlayedMeasure last = line.played(line.count() - 1);
        return last.start().plus(last.length());
    }

    /** Silence of the melody by rests. */
    private record Gap(
            MusicalTime from,
            long fromMicros,
            MusicalTime to,
            long toMicros,
            int beforeMillis,
            boolean breath,
            Punctuation words) {}

    private void silence(Gap gap) {
        boolean byBeat = gap.to()
                        .minus(gap.from())
                        .compareTo(line.written(measureAt(gap.from()))
                                .meter()
                                .length()
                                .times(REST_MEASURES_BY_BEAT))
                <= 0;
        for (int measure = measureAt(gap.from()); measure < line.count(); measure++) {
            MusicalTime start = line.played(measure).start();
            if (!start.isBefore(gap.to())) break;
            for (MusicalTime offset : byBeat ? line.beats(measure, MusicalTime.ZERO) : List.of(MusicalTime.ZERO)) {
                MusicalTime at = start.plus(offset);
                if (at.isBefore(gap.from()) || !at.isBefore(gap.to()) || at.isZero()) continue;
                long micros = Math.max(gap.fromMicros(), Math.min(gap.toMicros(), line.microsAt(measure, offset)));
                int rest = millis(gap.fromMicros(), gap.toMicros());
                TurnPlace facts = facts(measure, offset, micros, gap.breath() && at.equals(gap.from()), gap.words())
                        .rest(rest, rest)
                        .lengths(gap.beforeMillis(), millis(micros, gap.toMicros()))
                        .done();
                add(measure, offset, micros, facts);
            }
        }
    }

    /** Just before a moment that follows another. */
    private void before(TrebleMoment previous, TrebleMoment moment) {
        if (moment.graceIndex() < 0 || moment.graceIndex() > 1) return;
        boolean afterItsGrace = moment.graceIndex() == 0
                && previous.graceIndex() > 0
                && previous.measure() == moment.measure()
                && previous.place().equals(moment.place());
        if (afterItsGrace) return;
        boolean held = moment.notes().stream().anyMatch(PlayedNote::held);
        if (held && !mayTurnInHeldNote) return;
        boolean rest = previous.onset().plus(previous.duration()).isBefore(moment.onset());
        int gap = Math.max(0, millis(previous.releaseMicros(), moment.onsetMicros()));
        int before = millis(previous.onsetMicros(), rest ? previous.releaseMicros() : moment.onsetMicros());
        Facts facts = facts(
                        moment.measure(),
                        moment.place().offset(),
                        moment.onsetMicros(),
                        previous.breathAfter(),
                        previous.punctuation())
                .rest(rest ? gap : 0, gap)
                .lengths(before, millis(moment.onsetMicros(), moment.releaseMicros()));
        facts.phrase(moment.startsPhrase());
        facts.touch(previous, moment, held);
        add(moment.measure(), moment.place().offset(), moment.onsetMicros(), facts.done());
    }

    /** At the beats inside a note that sounds on. */
    private void inside(TrebleMoment moment, MusicalTime next) {
        MusicalTime over = moment.onset().plus(moment.duration()).min(next);
        for (int measure = moment.measure(); measure < line.count(); measure++) {
            MusicalTime start = line.played(measure).start();
            if (!start.isBefore(over)) break;
            for (MusicalTime offset : line.beats(measure, MusicalTime.ZERO)) {
                MusicalTime at = start.plus(offset);
                long micros = line.microsAt(measure, offset);
                if (!moment.onset().isBefore(at) || !at.isBefore(over)) continue;
                if (micros <= moment.onsetMicros() || micros >= moment.releaseMicros()) continue;
                Facts facts = facts(measure, offset, micros, false, Punctuation.NONE)
                        .lengths(millis(moment.onsetMicros(), micros), millis(micros, moment.releaseMicros()));
                facts.held = true;
                add(measure, offset, micros, facts.done());
            }
        }
    }

    private int measureAt(MusicalTime onset) {
        int low = 0;
        int high = line.count() - 1;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (line.played(middle).start().compareTo(onset) <= 0) low = middle;
            else high = middle - 1;
        }
        return low;
    }

    private void add(int measure, MusicalTime offset, long micros, TurnPlace facts) {
        PlayedMeasure played = line.played(measure);
        candidates.add(new Candidate(
                measure,
                played.pass(),
                new WrittenPlace(played.written(), offset),
                played.start().plus(offset),
                micros,
                facts.pickup() == Pickup.BEFORE || candidates.isEmpty() && line.isPickup(measure)
                        ? line.microBeatsAfter(measure)
                        : line.microBeatsAt(measure, offset),
                line.measureHalfBeats(measure),
                facts));
    }

    /** Sorted by time, one for each time and written place, the first one added kept. */
    private List<Candidate> inOrder() {
        List<Candidate> sorted = new ArrayList<>(candidates);
        Candidate start = sorted.remove(0);
        Candidate end = sorted.remove(sorted.size() - 1);
        sorted.sort((a, b) -> a.micros() != b.micros()
                ? Long.compare(a.micros(), b.micros())
                : a.onset().compareTo(b.onset()));
        List<Candidate> kept = new ArrayList<>();
        kept.add(start);
        for (Candidate one : sorted) {
            Candidate before = kept.get(kept.size() - 1);
            boolean same = one.onset().equals(before.onset()) || one.micros() <= before.micros();
            if (!same && one.micros() < end.micros()) kept.add(one);
        }
        kept.add(end);
        return List.copyOf(kept);
    }

    private static int millis(long fromMicros, long toMicros) {
        return (int) Math.min(Integer.MAX_VALUE, Math.max(0, toMicros - fromMicros) / 1_000);
    }

    private static TurnPlace plain() {
        return new TurnPlace(
                Mark.NONE,
                TurnPlace.Strength.BARLINE,
                Pickup.NONE,
                0,
                false,
                false,
                false,
                false,
                false,
                false,
                TurnPlace.Jump.NONE,
                0,
                0,
                0,
                0,
                0,
                0);
    }

    private Facts facts(int measure, MusicalTime offset, long micros, boolean breath, Punctuation words) {
        return new Facts(measure, offset, micros, breath, words);
    }

    /** The facts of one place while they are gathered. */
    private final class Facts {
        private final int measure;
        private final MusicalTime offset;
        private final long micros;
        private final boolean breath;
        private final Punctuation words;
        private boolean phrase;
        private boolean slurred;
        private boolean endsSlur;
        private boolean detached;
        private boolean repeated;
        private boolean held;
        private int restMillis;
        private int gapMillis;
        private int beforeMillis;
        private int afterMillis;

        Facts(int measure, MusicalTime offset, long micros, boolean breath, Punctuation words) {
            this.measure = measure;
            this.offset = offset;
            this.micros = micros;
            this.breath = breath;
            this.words = words;
        }

        Facts rest(int rest, int gap) {
            restMillis = rest;
            gapMillis = gap;
            return this;
        }

        Facts lengths(int before, int after) {
            beforeMillis = before;
            afterMillis = after;
            return this;
        }

        void phrase(boolean starts) {
            phrase = starts;
        }

        void touch(TrebleMoment previous, TrebleMoment moment, boolean heldOn) {
            held = heldOn;
            slurred = previous.slurredToNext();
            endsSlur = previous.endsSlur() && !slurred;
            detached = previous.articulations().contains(Articulation.STACCATO)
                    || previous.articulations().contains(Articulation.STACCATISSIMO);
            repeated = !held && keys(previous).equals(keys(moment));
        }

        private List<Integer> keys(TrebleMoment moment) {
            return moment.notes().stream().map(PlayedNote::midi).toList();
        }

        TurnPlace done() {
            Pickup pickup = pickup();
            int barline = barlineAhead(pickup);
            return new TurnPlace(
                    mark(pickup, barline),
                    line.strengthAt(measure, offset),
                    pickup,
                    barline < 0 ? -1 : line.measureOfSection(barline),
                    slurred,
                    endsSlur,
                    detached,
                    repeated,
                    held,
                    left.isHeldAcross(micros),
                    left.jumpAt(micros, turnMillis),
                    restMillis,
                    gapMillis,
                    beforeMillis,
                    afterMillis,
                    line.beatMillis(measure),
                    turnMillis);
        }

        private Pickup pickup() {
            if (offset.isZero()) {
                if (line.isPickup(measure)) return Pickup.BEFORE;
                if (measure == 0 || line.written(measure).pickup()) return Pickup.NONE;
                if (line.isPickup(measure - 1)) return Pickup.AFTER;
                return isPickupInside(measure - 1) ? Pickup.AFTER : Pickup.NONE;
            }
            boolean here = isPickupInside(measure)
                    && offset.plus(line.pickupOf(measure))
                            .equals(line.played(measure).length());
            return here ? Pickup.BEFORE : Pickup.NONE;
        }

        private boolean isPickupInside(int of) {
            return insidePickups[of];
        }

        /** The measure that the barline here, or after the pickup here, begins; -1 if neither. */
        private int barlineAhead(Pickup pickup) {
            if (pickup == Pickup.BEFORE) return Math.min(measure + 1, line.count() - 1);
            return offset.isZero() && !line.written(measure).pickup() ? measure : -1;
        }

        private Mark mark(Pickup pickup, int barline) {
            Mark written = Mark.NONE;
            if (offset.isZero()) written = line.markAt(measure);
            if (pickup == Pickup.BEFORE && written == Mark.NONE && barline >= 0) written = line.markAt(barline);
            if (written == Mark.NONE && phrase) written = Mark.PHRASE;
            if (written != Mark.NONE) return written;
            if (breath) return Mark.BREATH;
            return switch (words) {
                case STOP -> Mark.STOP;
                case COMMA -> Mark.COMMA;
                case NONE -> Mark.NONE;
            };
        }
    }

    /** Measures at whose end, by the length of the section's pickup, a new phrase is taken up. */
    private boolean[] insidePickups() {
        boolean[] pickups = new boolean[line.count()];
        List<TrebleMoment> treble = performance.treble();
        for (int i = 1; i < treble.size(); i++) {
            TrebleMoment moment = treble.get(i);
            int measure = moment.measure();
            MusicalTime upbeat = line.pickupOf(measure);
            MusicalTime offset = moment.place().offset();
            if (!upbeat.isPositive() || offset.isZero() || measure + 1 >= line.count()) continue;
            if (!offset.plus(upbeat).equals(line.played(measure).length())) continue;
            if (line.written(measure + 1).pickup()) continue;
            if (takesUp(treble.get(i - 1), moment, line.markAt(measure + 1) != Mark.NONE)) pickups[measure] = true;
        }
        return pickups;
    }

    /** A pickup follows a rest, a breath, a note twice as long or of two beats; at a section's end anything goes. */
    private boolean takesUp(TrebleMoment previous, TrebleMoment moment, boolean section) {
        if (previous.slurredToNext() || moment.notes().stream().anyMatch(PlayedNote::held)) return false;
        MusicalTime over = previous.onset().plus(previous.duration());
        MusicalTime beat = line.written(moment.measure()).meter().beat();
        return section
                || previous.breathAfter()
                || previous.punctuation() == Punctuation.STOP
                || over.isBefore(moment.onset())
                || previous.duration().compareTo(moment.duration().times(2)) >= 0
                        && previous.duration().compareTo(beat) >= 0
                || previous.duration().compareTo(beat.times(2)) >= 0;
    }
}
