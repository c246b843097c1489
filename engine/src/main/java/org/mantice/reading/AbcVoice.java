package org.mantice.reading;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.mantice.fault.TextPlace;
import org.mantice.reading.abc.AbcElement;
import org.mantice.reading.abc.AbcElement.Chord;
import org.mantice.reading.abc.AbcElement.Note;
import org.mantice.reading.abc.AbcElement.Tuplet;
import org.mantice.tune.Meter;
import org.mantice.tune.MusicalTime;

/** Puts the notes of one voice together: lengths, broken rhythm, tuplets, ties, slurs, what is written at notes. */
final class AbcVoice {
    final String id;
    final AbcPitches pitches = new AbcPitches();
    final AbcLyrics lyrics = new AbcLyrics();
    final AbcBars bars;
    String name = "";
    String clef = "G";
    MusicalTime unit = MusicalTime.of(1, 8);
    /** Semitones from written to sounding, by its own property. */
    int transpose;

    private final AbcReport report;
    private final Deque<String> openSlurs = new ArrayDeque<>();
    private final AbcPending pending;
    private Optional<AbcItem> last = Optional.empty();
    private Optional<AbcItem> lastInMeasure = Optional.empty();
    private int slurs;
    private int tupletLeft;
    private Optional<Tuplet> tuplet = Optional.empty();
    private MusicalTime tupletFactor = MusicalTime.WHOLE;
    private Optional<AbcElement.Broken> broken = Optional.empty();

    AbcVoice(String id, AbcReport report) {
        this.id = id;
        this.report = report;
        this.bars = new AbcBars(this, report);
        this.pending = new AbcPending(this, report);
    }

    AbcPending pending() {
        return pending;
    }

    Optional<AbcItem> last() {
        return last;
    }

    // --- notes -----------------------------------------------------------------------------------------------------

    void note(Note note) {
        AbcItem item = new AbcItem(note.length().times(unit), false);
        item.tones.add(pitches.tone(note, last));
        finish(item);
    }

    void rest(MusicalTime length) {
        finish(new AbcItem(length.times(unit), false));
    }

    /** A chord is as long as its first note. */
    void chord(Chord chord) {
        Optional<MusicalTime> length = Optional.empty();
        AbcItem item = new AbcItem(MusicalTime.ZERO, false);
        int slurEnds = 0;
        for (AbcElement member : chord.members()) {
            if (member instanceof Note note) {
                AbcItem.Tone tone = pitches.tone(note, last);
                pending.giveFingersTo(tone);
                item.tones.add(tone);
                if (length.isPresent() && !length.get().equals(note.length()))
                    item.findings.add(Finding.of(SkippedWhat.CHORD_LENGTH));
                length = length.or(() -> Optional.of(note.length()));
            } else if (member instanceof AbcElement.Rest rest) {
                length = length.or(() -> Optional.of(rest.length()));
            } else if (member instanceof AbcElement.Tie) {
                if (!item.tones.isEmpty()) item.tones.get(item.tones.size() - 1).tie = true;
            } else if (member instanceof AbcElement.Slur slur) {
                if (slur.start()) openSlur();
                else slurEnds++;
            } else if (member instanceof AbcElement.Decoration decoration) pending.decorationInChord(decoration);
            else if (member instanceof AbcElement.Quoted quoted) pending.text(quoted);
            else if (member instanceof AbcElement.Flaw flaw) report.add(flaw);
        }
        if (length.isEmpty()) {
            report.add(chord.place(), SkippedWhat.STRAY_SIGN, "[]");
            return;
        }
        item.length = length.get().times(chord.length()).times(unit);
        finish(item);
        for (int i = 0; i < slurEnds; i++) closeSlur();
    }

    void grace(AbcElement.Grace grace) {
        for (AbcElement member : grace.members()) {
            List<AbcItem.Tone> together = new ArrayList<>();
            if (member instanceof Note note) together.add(pitches.tone(note, Optional.empty()));
            else if (member instanceof Chord chord)
                for (AbcElement inner : chord.members())
                    if (inner instanceof Note note) together.add(pitches.tone(note, Optional.empty()));
            for (AbcItem.Tone tone : together) pending.giveFingersTo(tone);
            if (member instanceof AbcElement.Decoration decoration) pending.decorationInChord(decoration);
            if (member instanceof AbcElement.Flaw flaw) report.add(flaw);
            if (!together.isEmpty()) pending.grace(together);
        }
    }

    private void finish(AbcItem item) {
        if (tupletLeft > 0) {
            item.length = item.length.times(tupletFactor);
            tupletLeft--;
        }
        broken.ifPresent(signs -> item.length = item.length.times(share(-signs.dots())));
        broken = Optional.empty();
        pending.giveTo(item);
        bars.add(item);
        lyrics.add(item);
        last = Optional.of(item);
        lastInMeasure = last;
    }

    void wholeMeasures(AbcElement.MeasureRest rest) {
        for (int i = 0; i < rest.measures(); i++) {
            AbcItem item = new AbcItem(bars.meter().length(), true);
            pending.giveTo(item);
            bars.addWhole(item, rest.place());
            last = Optional.of(item);
        }
        lastInMeasure = Optional.empty();
    }

    // --- rhythm ----------------------------------------------------------------------------------------------------

    void broken(AbcElement.Broken signs) {
        if (lastInMeasure.isEmpty() || broken.isPresent() || Math.abs(signs.dots()) > 3) {
            report.add(signs.place(), SkippedWhat.BROKEN_RHYTHM, (signs.dots() > 0 ? ">" : "<"));
            return;
        }
        AbcItem before = lastInMeasure.get();
        before.length = before.length.times(share(signs.dots()));
        broken = Optional.of(signs);
    }

    /** What is left of a note: 3/2 for one dot, 1/2 for minus one. */
    private static MusicalTime share(int dots) {
        long scale = 1L << Math.abs(dots);
        return MusicalTime.of(dots > 0 ? 2 * scale - 1 : 1, scale);
    }

    /** Undoes broken rhythm that no second note follows. */
    void endRhythm() {
        if (broken.isPresent() && lastInMeasure.isPresent()) {
            AbcElement.Broken signs = broken.get();
            AbcItem before = lastInMeasure.get();
            before.length = before.length.dividedBy(share(signs.dots()));
            report.add(signs.place(), SkippedWhat.BROKEN_RHYTHM, signs.dots() > 0 ? ">" : "<");
        }
        broken = Optional.empty();
        lastInMeasure = Optional.empty();
        endTuplet();
    }

    private void endTuplet() {
        if (tupletLeft > 0)
            tuplet.ifPresent(
                    signs -> report.add(signs.place(), SkippedWhat.SHORT_TUPLET, String.valueOf(signs.notes())));
        tupletLeft = 0;
    }

    void tuplet(Tuplet signs) {
        endTuplet();
        tuplet = Optional.of(signs);
        tupletLeft = signs.count().orElse(signs.notes());
        int time = signs.time().orElse(usualTime(signs.notes(), bars.meter()));
        tupletFactor = MusicalTime.of(time, signs.notes());
    }

    /** ABC 2.1, section 4.13: five, seven and nine take the time of three in compound meters, else of two. */
    private static int usualTime(int notes, Meter meter) {
        return switch (notes) {
            case 2, 4, 8 -> 3;
            case 3, 6 -> 2;
            default -> meter.isCompound() ? 3 : 2;
        };
    }

    // --- ties and slurs --------------------------------------------------------------------------------------------

    void tie(TextPlace place) {
        if (last.isEmpty() || last.get().isRest()) report.add(place, SkippedWhat.STRAY_SIGN, "-");
        else last.get().tones.forEach(tone -> tone.tie = true);
    }

    void slur(AbcElement.Slur slur) {
        if (slur.start()) openSlur();
        else closeSlur();
    }

    private void openSlur() {
        String number = String.valueOf(++slurs);
        openSlurs.push(number);
        pending.slur(number);
    }

    /** An end without a start gets a number that nothing has; the list of ties and slurs tells of it. */
    private void closeSlur() {
        String number = openSlurs.isEmpty() ? "0" : openSlurs.pop();
        if (last.isPresent()) last.get().slurStops.add(number);
    }
}
