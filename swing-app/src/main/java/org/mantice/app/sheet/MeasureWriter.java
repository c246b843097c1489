package org.mantice.app.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.mantice.tune.Measure;
import org.mantice.tune.MelodyEvent;
import org.mantice.tune.MelodyNote;
import org.mantice.tune.MusicalTime;

/** Turns a measure's exact times into note values, tuplets, beams, stems, heads and accidentals. */
final class MeasureWriter {
    /** More notes than this in one tuplet are inexact times, not tuplets. */
    private static final long LARGEST_TUPLET = 15;

    private final Measure measure;
    private final MusicalTime behind;
    private final List<Piece> pieces = new ArrayList<>();

    /** A sign before anything is known of stems. */
    private record Piece(
            MusicalTime offset,
            MusicalTime length,
            NoteValue value,
            int tuplet,
            boolean wholeMeasure,
            Optional<MelodyEvent> source,
            boolean first,
            boolean last) {
        boolean isRest() {
            return source.isEmpty() || source.get().isRest();
        }

        MusicalTime end() {
            return offset.plus(length);
        }
    }

    MeasureWriter(Measure measure) {
        this.measure = measure;
        this.behind = StaffMeasure.behind(measure);
    }

    StaffMeasure write() {
        cut();
        List<List<Integer>> beams = beams();
        boolean[] up = stems(beams);
        return new StaffMeasure(measure, events(beams, up), beams, tuplets());
    }

    private void cut() {
        if (measure.melody().stream().allMatch(MelodyEvent::isRest) && isAllOneRest()) {
            pieces.add(new Piece(
                    MusicalTime.ZERO,
                    measure.length(),
                    new NoteValue(NoteValue.WHOLE, 0),
                    1,
                    true,
                    measure.melody().stream().findFirst(),
                    true,
                    true));
            return;
        }
        MusicalTime at = MusicalTime.ZERO;
        for (MelodyEvent event : measure.melody()) {
            if (at.isBefore(event.offset())) cut(at, event.offset().minus(at), Optional.empty());
            cut(event.offset(), event.duration(), Optional.of(event));
            at = event.end();
        }
        if (at.isBefore(measure.length())) cut(at, measure.length().minus(at), Optional.empty());
    }

    /** A pickup's rest shows its own length, a full measure's the whole rest. */
    private boolean isAllOneRest() {
        boolean short0 = measure.length().isBefore(measure.meter().length())
                && !measure.meter().isFree();
        return measure.melody().size() <= 1 && !short0;
    }

    private void cut(MusicalTime offset, MusicalTime length, Optional<MelodyEvent> source) {
        long tuplet = Math.max(odd(offset), odd(offset.plus(length)));
        if (tuplet > LARGEST_TUPLET) tuplet = 1;
        if (tuplet > 1) cutTuplet(offset, length, (int) tuplet, source);
        else cutPlain(offset, length, source);
    }

    private static long odd(MusicalTime time) {
        return time.denominator() / Long.lowestOneBit(time.denominator());
    }

    private void cutPlain(MusicalTime offset, MusicalTime length, Optional<MelodyEvent> source) {
        List<NoteValue.Placed> values = NoteValue.filling(offset.plus(behind), length, measure.meter());
        for (int i = 0; i < values.size(); i++) {
            MusicalTime from = values.get(i).offset().minus(behind);
            MusicalTime to = i + 1 < values.size() ? values.get(i + 1).offset().minus(behind) : offset.plus(length);
            pieces.add(new Piece(
                    from, to.minus(from), values.get(i).value(), 1, false, source, i == 0, i + 1 == values.size()));
        }
    }

    private void cutTuplet(MusicalTime offset, MusicalTime length, int tuplet, Optional<MelodyEvent> source) {
        MusicalTime scale = MusicalTime.of(Integer.highestOneBit(tuplet), tuplet);
        MusicalTime from = offset;
        MusicalTime left = length;
        while (left.isPositive()) {
            MusicalTime written = left.dividedBy(scale);
            NoteValue value = NoteValue.of(written).orElse(NoteValue.within(written));
            MusicalTime sounding = value.length().times(scale).min(left);
            boolean exact = written.denominator() <= 1L << NoteValue.SHORTEST;
            if (!exact) sounding = left;
            pieces.add(new Piece(
                    from, sounding, value, tuplet, false, source, from.equals(offset), sounding.equals(left)));
            from = from.plus(sounding);
            left = left.minus(sounding);
        }
    }

    private List<List<Integer>> beams() {
        List<BeamGroups.Stemmed> notes = new ArrayList<>();
        for (Piece piece : pieces)
            notes.add(new BeamGroups.Stemmed(
                    piece.offset().plus(behind),
                    piece.length(),
                    !piece.isRest() && piece.value().flags() > 0,
                    piece.value().flags(),
                    piece.tuplet()));
        return BeamGroups.of(notes, measure.meter());
    }

    private List<List<Integer>> tuplets() {
        List<List<Integer>> groups = new ArrayList<>();
        List<Integer> open = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            Piece piece = pieces.get(i);
            if (piece.tuplet() == 1) continue;
            open.add(i);
            boolean closes = odd(piece.end()) == 1
                    || i + 1 == pieces.size()
                    || pieces.get(i + 1).tuplet() != piece.tuplet();
            if (!closes) continue;
            groups.add(List.copyOf(open));
            open.clear();
        }
        return groups;
    }

    private boolean[] stems(List<List<Integer>> beams) {
        boolean[] up = new boolean[pieces.size()];
        for (int i = 0; i < up.length; i++) up[i] = pointsUp(List.of(i));
        for (List<Integer> beam : beams) {
            boolean together = pointsUp(beam);
            for (int i : beam) up[i] = together;
        }
        return up;
    }

    /** Up if the note farthest from the middle line is below it; down if two are equally far. */
    private boolean pointsUp(List<Integer> indexes) {
        int high = Integer.MIN_VALUE;
        int low = Integer.MAX_VALUE;
        for (int i : indexes) {
            if (pieces.get(i).isRest()) continue;
            for (MelodyNote note : pieces.get(i).source().orElseThrow().notes()) {
                high = Math.max(high, Accidentals.placeOf(note.pitch()));
                low = Math.min(low, Accidentals.placeOf(note.pitch()));
            }
        }
        return 4 - low > high - 4;
    }

    private List<StaffEvent> events(List<List<Integer>> beams, boolean[] up) {
        boolean[] beamed = new boolean[pieces.size()];
        beams.forEach(beam -> beam.forEach(i -> beamed[i] = true));
        Accidentals accidentals = new Accidentals(measure.key());
        List<StaffEvent> events = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            Piece piece = pieces.get(i);
            HeadWriter heads = new HeadWriter(accidentals, piece.value(), up[i], beamed[i]);
            piece.source().ifPresent(event -> heads.write(event, piece.first(), piece.last()));
            if (piece.isRest()) heads.rest(piece.wholeMeasure());
            events.add(new StaffEvent(
                    piece.offset(),
                    piece.length(),
                    piece.value(),
                    piece.tuplet(),
                    heads.heads(),
                    up[i],
                    piece.wholeMeasure(),
                    piece.source(),
                    piece.first(),
                    piece.last(),
                    heads.graces(),
                    heads.after(),
                    heads.left(),
                    heads.right()));
        }
        return events;
    }
}
