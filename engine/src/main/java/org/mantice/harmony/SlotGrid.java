package org.mantice.harmony;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.mantice.tune.Mark;
import org.mantice.tune.Measure;
import org.mantice.tune.MelodyEvent;
import org.mantice.tune.MelodyNote;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tune;

/** Cuts a tune into slots. A pickup at the beginning gets none, unless it is all there is. */
final class SlotGrid {
    private final Tune tune;
    private final Reading reading;
    private final Strains strains;
    private final Line line;

    SlotGrid(Tune tune) {
        this.tune = tune;
        this.reading = new Reading(tune);
        this.strains = new Strains(tune.measures());
        this.line = new Line(tune.measures());
    }

    List<Slot> slots() {
        List<Slot> slots = new ArrayList<>();
        List<SlotMelody> melodies = new ArrayList<>();
        List<Integer> measures = new ArrayList<>();
        boolean skipsFirst = tune.measure(0).pickup() && tune.measures().size() > 1;
        for (int i = skipsFirst ? 1 : 0; i < tune.measures().size(); i++) {
            List<SlotMelody> here = melodies(i, Beats.of(tune.measure(i)));
            melodies.addAll(here);
            measures.addAll(Collections.nCopies(here.size(), i));
        }
        List<NotesAround> around = NotesAround.of(melodies, measures);
        for (int from = 0, i = skipsFirst ? 1 : 0; i < tune.measures().size(); i++) {
            int to = from + Beats.of(tune.measure(i)).beats().size();
            addMeasure(i, melodies.subList(from, to), around.subList(from, to), slots);
            from = to;
        }
        return slots;
    }

    private void addMeasure(int index, List<SlotMelody> melodies, List<NotesAround> around, List<Slot> slots) {
        Measure measure = tune.measure(index);
        Beats beats = Beats.of(measure);
        for (int j = 0; j < beats.beats().size(); j++) {
            Beats.Beat beat = beats.beats().get(j);
            boolean last = j == beats.beats().size() - 1;
            boolean late = beat.index() * 2 >= beats.perMeasure();
            Slot.Cadence cadence = strains.cadence(index, beat.index(), late, last);
            if (cadence == Slot.Cadence.NONE && endsPhrase(index, beat)) cadence = Slot.Cadence.LAST_OF_FOUR_MEASURES;
            slots.add(new Slot(
                    index,
                    beat.start(),
                    reading.key(measure),
                    beats.place(beat.index()),
                    cadence,
                    strains.place(index, late),
                    j == 0 && strains.begins(index),
                    measure.melody().stream()
                            .anyMatch(event -> !event.isRest() && event.offset().equals(beat.start())),
                    melodies.get(j),
                    around.get(j)));
        }
    }

    /** A written phrase ends with the beat. */
    private boolean endsPhrase(int index, Beats.Beat beat) {
        Measure measure = tune.measure(index);
        for (MelodyEvent event : measure.melody())
            if (event.marks().breathAfter()
                    && beat.start().isBefore(event.end())
                    && !beat.end().isBefore(event.end())) return true;
        if (beat.end().isBefore(measure.length())) return phraseStarts(measure, beat.end());
        return index + 1 < tune.measures().size() && phraseStarts(tune.measure(index + 1), MusicalTime.ZERO);
    }

    private static boolean phraseStarts(Measure measure, MusicalTime offset) {
        return measure.marks().stream()
                .anyMatch(mark ->
                        mark instanceof Mark.PhraseStart && mark.offset().equals(offset));
    }

    private List<SlotMelody> melodies(int index, Beats beats) {
        List<SlotMelody> melodies = new ArrayList<>();
        for (Beats.Beat beat : beats.beats()) melodies.add(melody(index, beat));
        for (int i = 0; i < melodies.size(); i++)
            for (int j = 0; j < melodies.size(); j++)
                if (i != j) {
                    melodies.get(i).hearMeasure(melodies.get(j), melodies.size() - 1);
                    if (beats.sharesHalf(i, j)) melodies.get(i).hearHalf(melodies.get(j), beats.othersInHalf(i));
                }
        return melodies;
    }

    private SlotMelody melody(int index, Beats.Beat beat) {
        SlotMelody melody = new SlotMelody();
        List<MelodyEvent> events = tune.measure(index).melody();
        for (int i = 0; i < events.size(); i++) {
            MelodyEvent event = events.get(i);
            MusicalTime from = event.offset().max(beat.start());
            MusicalTime to = event.end().min(beat.end());
            if (event.isRest() || !from.isBefore(to)) continue;
            MusicalTime share = to.minus(from).dividedBy(beat.length()).times(1000);
            long permille = share.dividedBy(event.notes().size()).countOf(MusicalTime.WHOLE);
            int accent = !from.equals(beat.start()) ? 2 : beat.index() == 0 ? 0 : 1;
            boolean begins = from.equals(event.offset());
            for (MelodyNote note : event.notes()) {
                int midi = note.pitch().midi();
                melody.sound(midi, permille, accent, line.isByStep(index, i));
                if (begins) melody.strike(midi);
                if (begins && Math.abs(line.next(index, i) - midi) >= 3 && line.hasNext(index, i))
                    melody.leap(midi, line.next(index, i));
            }
        }
        return melody;
    }
}
