package org.mantice.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.IntConsumer;
import org.mantice.fault.FilePlace;
import org.mantice.reading.ScoreBarline.Location;
import org.mantice.reading.ScoreSign.Order;
import org.mantice.reading.TuneReadException.Reason;
import org.mantice.tune.Barlines;
import org.mantice.tune.Barlines.Jump;
import org.mantice.tune.MusicalTime;

/** Gathers repeats, endings, signs and jumps of a part into the barlines of its measures. */
final class PlayOrderSigns {
    /** The barlines of one measure while they are put together. */
    private static final class Draft {
        private boolean repeatStart;
        private Optional<Integer> repeatEnd = Optional.empty();
        private boolean afterJump;
        private List<Integer> endingStart = List.of();
        private boolean endingStop;
        private boolean segno;
        private boolean coda;
        private Optional<Jump> jump = Optional.empty();
        private boolean toCoda;
        private boolean fine;
        private boolean doubleBar;

        private Barlines barlines() {
            return new Barlines(
                    repeatStart,
                    repeatEnd,
                    afterJump,
                    endingStart,
                    endingStop,
                    segno,
                    coda,
                    jump,
                    toCoda,
                    fine,
                    doubleBar);
        }
    }

    private final FilePlace place;
    private final List<ScoreMeasure> measures;
    private final List<MusicalTime> lengths;
    private final ReadReport report;
    private final List<Draft> drafts = new ArrayList<>();

    PlayOrderSigns(FilePlace place, List<ScoreMeasure> measures, List<MusicalTime> lengths, ReadReport report) {
        this.place = place;
        this.measures = measures;
        this.lengths = lengths;
        this.report = report;
        measures.forEach(measure -> drafts.add(new Draft()));
    }

    /** Whether a part says anything about the order of play. */
    static boolean areIn(ScorePart part) {
        return part.measures().stream()
                .anyMatch(measure -> measure.signs().stream().anyMatch(sign -> sign instanceof Order)
                        || measure.barlines().stream().anyMatch(PlayOrderSigns::isOrder));
    }

    private static boolean isOrder(ScoreBarline barline) {
        return !barline.repeat().isEmpty() || barline.ending().isPresent() || barline.segno() || barline.coda();
    }

    /** @param verbatim nothing is missing, so nothing is mended */
    List<Barlines> read(boolean verbatim) {
        Endings endings = new Endings(measures, report);
        for (int i = 0; i < measures.size(); i++)
            for (ScoreBarline barline : measures.get(i).barlines()) {
                readRepeat(i, barline);
                readStyle(i, barline);
                if (barline.segno()) segno(barline.location() == Location.RIGHT ? i + 1 : i);
                if (barline.ending().isPresent()) endings.add(i, barline);
                if (barline.fermata()) report(i, SkippedWhat.DIRECTION, "fermata over a barline");
            }
        for (int i = 0; i < measures.size(); i++)
            for (ScoreSign sign : measures.get(i).signs()) if (sign instanceof Order order) readOrder(i, order);
        new CodaSigns(measures, lengths).settle(this::hasJump).forEach(this::readCoda);
        if (verbatim) {
            endings.written().forEach((measure, numbers) -> drafts.get(measure).endingStart = numbers);
            endings.stops().forEach(measure -> drafts.get(measure).endingStop = true);
        } else mend(endings);
        return drafts.stream().map(Draft::barlines).toList();
    }

    private void mend(Endings endings) {
        for (int end : endings.lostRepeats(i -> drafts.get(i).repeatEnd.isPresent(), this::hasJump)) {
            report(end, SkippedWhat.REPEAT_CHANGED, "missing after ending 1, added");
            drafts.get(end).repeatEnd = Optional.of(2);
            drafts.get(end).afterJump = true;
        }
        for (Endings.Ending ending : endings.settle(i -> drafts.get(i).repeatEnd.isPresent(), this::hasJump)) {
            drafts.get(ending.start()).endingStart = ending.numbers();
            drafts.get(ending.stop()).endingStop = true;
        }
        dropJumpsWithoutTarget();
    }

    private boolean hasJump(int measure) {
        return drafts.get(measure).jump.isPresent();
    }

    private void report(int measure, SkippedWhat what, String... args) {
        report.addAt(measures.get(measure).number(), what, args);
    }

    private void readRepeat(int i, ScoreBarline barline) {
        if (barline.repeat().isEmpty()) return;
        boolean forward = barline.repeat().equals("forward");
        boolean atStart = barline.location() == Location.LEFT
                || barline.location() == Location.MIDDLE && barline.onset().isZero();
        if (forward) atMeasure(atStart ? i : i + 1, start -> drafts.get(start).repeatStart = true);
        else atMeasure(atStart ? i - 1 : i, end -> readRepeatEnd(end, barline));
    }

    /** Does nothing for a place before the first or after the last measure. */
    private void atMeasure(int measure, IntConsumer action) {
        if (measure >= 0 && measure < measures.size()) action.accept(measure);
    }

    private void readRepeatEnd(int i, ScoreBarline barline) {
        OptionalInt times = Numbers.integer(barline.times());
        if (times.isPresent() && times.getAsInt() > ReadLimits.REPEATS)
            throw TuneReadException.of(
                    Reason.TOO_MANY_REPEATS,
                    place.atMeasure(measures.get(i).number()),
                    barline.times(),
                    ReadLimits.REPEATS);
        if (times.isPresent() && times.getAsInt() == 1) {
            report(i, SkippedWhat.REPEAT, "played once");
            return;
        }
        boolean readable = times.isPresent() && times.getAsInt() > 1;
        if (!readable && !barline.times().isEmpty())
            report(i, SkippedWhat.REPEAT_CHANGED, "\"" + barline.times() + "\" times read as 2");
        int played = readable ? times.getAsInt() : 2;
        drafts.get(i).repeatEnd =
                Optional.of(Math.max(played, drafts.get(i).repeatEnd.orElse(2)));
        drafts.get(i).afterJump |= barline.afterJump();
    }

    private void readStyle(int i, ScoreBarline barline) {
        boolean left = barline.location() == Location.LEFT;
        boolean thick =
                switch (barline.style()) {
                    case "light-light", "heavy-heavy" -> true;
                    case "light-heavy", "heavy-light", "heavy" -> !left;
                    default -> false;
                };
        if (thick && barline.location() != Location.MIDDLE)
            atMeasure(left ? i - 1 : i, at -> drafts.get(at).doubleBar = true);
    }

    private void segno(int measure) {
        atMeasure(measure, at -> drafts.get(at).segno = true);
    }

    private void readOrder(int i, Order order) {
        switch (order.what()) {
            case SEGNO -> segno(startFor(i, order));
            case FINE -> drafts.get(i).fine = true;
            case DA_CAPO -> drafts.get(i).jump = Optional.of(Jump.DA_CAPO);
            case DAL_SEGNO -> drafts.get(i).jump = Optional.of(Jump.DAL_SEGNO);
            case CODA_SIGN, CODA_START, TO_CODA -> {} // settled together
        }
    }

    private void readCoda(CodaSigns.Settled sign) {
        if (sign.leaves()) drafts.get(sign.measure()).toCoda = true;
        else {
            if (sign.inside()) report(sign.measure(), SkippedWhat.SIGN_MOVED, "coda");
            drafts.get(sign.measure()).coda = true;
        }
    }

    /** The measure that a sign marks the start of: its own, or the next one where it stands at the end. */
    private int startFor(int i, Order order) {
        if (!order.onset().isBefore(lengths.get(i))) return i + 1;
        if (order.onset().isPositive())
            report(i, SkippedWhat.SIGN_MOVED, order.what().label());
        return i;
    }

    private void dropJumpsWithoutTarget() {
        if (drafts.stream().anyMatch(draft -> draft.segno)) return;
        for (int i = 0; i < drafts.size(); i++)
            if (drafts.get(i).jump.equals(Optional.of(Jump.DAL_SEGNO))) {
                drafts.get(i).jump = Optional.empty();
                report(i, SkippedWhat.JUMP, "D.S. without a segno");
            }
    }
}
