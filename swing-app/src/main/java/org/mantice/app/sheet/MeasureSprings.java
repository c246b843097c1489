package org.mantice.app.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import org.mantice.tune.Lyric;
import org.mantice.tune.Measure;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.PlacedChord;

/**
 * The moments of a measure and the gaps between them, each with a least width and one that it would like, both in staff
 * spaces. A gap of a line stretched by a factor is the greater of its least and the factor times what it would like, so
 * nothing ever touches.
 */
final class MeasureSprings {
    /** Between the signs of one moment and the next. */
    private static final double NOTE_GAP = 0.4;

    private static final double TEXT_GAP = 0.7;
    private static final double START_GAP = 0.9;
    private static final double END_GAP = 0.6;
    /** What a chord symbol may reach over a barline: less than the next measure leaves before its first note. */
    private static final double OVERHANG = 0.4;
    /**
     * A quarter's room and how it grows: one and a half times as much for twice the length (Ross, The Art of Music
     * Engraving and Processing, 1970, gives ratios from 1.4 to 1.6). The quarter's own width is our choice.
     */
    private static final double QUARTER_ROOM = 3.6;

    private static final double GROWTH = Math.log(1.5) / Math.log(2);

    private final StaffMeasure staff;
    private final Measure measure;
    private final List<MusicalTime> moments;
    private final double[] least;
    private final double[] wish;
    private double start;

    /** Distance to be kept between two moments. */
    private record Rod(int from, int to, double length) {}

    /**
     * @param closing width of the right barline
     * @param leftHand whether buttons are named at the beats
     * @param presses what the buttons need
     */
    MeasureSprings(StaffMeasure staff, double closing, boolean leftHand, PressRoom presses) {
        this.staff = staff;
        this.measure = staff.measure();
        this.moments = new ArrayList<>(momentsOf(staff, presses));
        this.least = new double[moments.size() - 1];
        this.wish = new double[moments.size() - 1];
        wish();
        List<Rod> rods = rods(closing, leftHand);
        pressRods(rods, presses);
        hold(rods);
    }

    /** From 0 to the measure's end. */
    List<MusicalTime> moments() {
        return moments;
    }

    /** From where the opening ends to the first moment; does not stretch. */
    double start() {
        return start;
    }

    double least(int gap) {
        return least[gap];
    }

    double wish(int gap) {
        return wish[gap];
    }

    int gaps() {
        return wish.length;
    }

    private static NavigableSet<MusicalTime> momentsOf(StaffMeasure staff, PressRoom presses) {
        Measure measure = staff.measure();
        NavigableSet<MusicalTime> moments = new TreeSet<>();
        staff.events().forEach(event -> moments.add(event.offset()));
        measure.chords().forEach(chord -> moments.add(chord.offset()));
        measure.bass().forEach(event -> moments.add(event.offset()));
        moments.addAll(ChordPlaces.beats(measure));
        presses.gaps().forEach(gap -> moments.add(gap.from()));
        moments.add(MusicalTime.ZERO);
        moments.add(measure.length());
        return moments.subSet(MusicalTime.ZERO, true, measure.length(), true);
    }

    private void wish() {
        for (StaffEvent event : staff.events()) {
            int from = indexOf(event.offset());
            int to = indexOf(event.end().min(measure.length()));
            double room = QUARTER_ROOM * Math.pow(4 * inWholes(event.length()), GROWTH);
            for (int gap = from; gap < to; gap++)
                wish[gap] = room * inWholes(moments.get(gap + 1).minus(moments.get(gap))) / inWholes(event.length());
        }
        for (int gap = 0; gap < wish.length; gap++) wish[gap] = Math.max(wish[gap], 0.1);
    }

    private static double inWholes(MusicalTime time) {
        return (double) time.numerator() / time.denominator();
    }

    private int indexOf(MusicalTime moment) {
        return moments.indexOf(moment);
    }

    private List<Rod> rods(double closing, boolean leftHand) {
        List<Rod> rods = new ArrayList<>();
        int end = moments.size() - 1;
        noteRods(rods, end, closing + END_GAP);
        chordRods(rods, end);
        lyricRods(rods, end);
        if (leftHand) beatRods(rods);
        return rods;
    }

    private void noteRods(List<Rod> rods, int end, double closing) {
        List<StaffEvent> events = staff.events();
        start = START_GAP + events.get(0).left();
        for (int i = 0; i + 1 < events.size(); i++) {
            double signs = events.get(i).right() + NOTE_GAP + events.get(i + 1).left();
            rods.add(new Rod(
                    indexOf(events.get(i).offset()),
                    indexOf(events.get(i + 1).offset()),
                    Math.max(signs, Engraving.FINGER_PITCH)));
        }
        StaffEvent last = events.get(events.size() - 1);
        double room = last.wholeMeasure() ? 4 : last.right();
        rods.add(new Rod(indexOf(last.offset()), end, room + closing));
        for (int gap = 0; gap < end; gap++) rods.add(new Rod(gap, gap + 1, 0.1));
    }

    private void chordRods(List<Rod> rods, int end) {
        List<PlacedChord> chords = measure.chords();
        for (int i = 0; i < chords.size(); i++) {
            int from = indexOf(chords.get(i).offset());
            if (from < 0) continue;
            double width = ChordText.outline(chords.get(i)).bounds().getMaxX() - Engraving.HALF_HEAD;
            int next = i + 1 < chords.size() ? indexOf(chords.get(i + 1).offset()) : end;
            boolean last = i + 1 == chords.size();
            if (next > from)
                rods.add(new Rod(from, next, last ? width - OVERHANG : width + TEXT_GAP + Engraving.HALF_HEAD));
        }
    }

    private void beatRods(List<Rod> rods) {
        List<MusicalTime> beats = ChordPlaces.beats(measure);
        for (int i = 0; i + 1 < beats.size(); i++)
            rods.add(new Rod(indexOf(beats.get(i)), indexOf(beats.get(i + 1)), Engraving.BUTTON_PITCH));
    }

    private void pressRods(List<Rod> rods, PressRoom presses) {
        start = Math.max(start, presses.start());
        for (PressRoom.Gap gap : presses.gaps()) {
            int from = indexOf(gap.from());
            int to = indexOf(gap.to());
            if (from >= 0 && to > from) rods.add(new Rod(from, to, gap.length()));
        }
    }

    private void lyricRods(List<Rod> rods, int end) {
        int verses = LyricText.verses(measure);
        for (int verse = 1; verse <= verses; verse++) {
            int before = -1;
            double reach = 0;
            for (StaffEvent event : staff.events()) {
                Optional<Lyric> found = LyricText.at(event, verse);
                if (found.isEmpty()) continue;
                Lyric lyric = found.get();
                int here = indexOf(event.offset());
                double half = LyricText.outline(lyric).advance() / 2;
                if (before >= 0) rods.add(new Rod(before, here, reach + half));
                else if (here == 0) start = Math.max(start, half);
                else rods.add(new Rod(0, here, half - start));
                before = here;
                reach = half + (lyric.endsWord() ? TEXT_GAP : LyricText.HYPHEN_ROOM);
            }
            if (before >= 0) rods.add(new Rod(before, end, reach));
        }
    }

    /** Short rods first, so that what they give need not be given again by long ones. */
    private void hold(List<Rod> rods) {
        rods.sort(Comparator.comparingInt((Rod rod) -> rod.to() - rod.from()).thenComparingInt(Rod::from));
        for (Rod rod : rods) {
            double has = 0;
            double wished = 0;
            for (int gap = rod.from(); gap < rod.to(); gap++) {
                has += least[gap];
                wished += wish[gap];
            }
            double lacks = rod.length() - has;
            if (lacks <= 0) continue;
            for (int gap = rod.from(); gap < rod.to(); gap++) least[gap] += lacks * wish[gap] / wished;
        }
    }
}
