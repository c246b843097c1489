package org.mantice.layer.lefthand;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.mantice.instrument.BassButton;
import org.mantice.instrument.StradellaBass;
import org.mantice.pattern.PatternChooser;
import org.mantice.pattern.PatternUse;
import org.mantice.performance.PatternSection;
import org.mantice.performance.Performance;
import org.mantice.performance.PlayedMeasure;
import org.mantice.plan.LeftHandPlan;
import org.mantice.tune.BassEvent;
import org.mantice.tune.MusicalTime;

/**
 * What a plan's left hand plays, as accordion music writes it: each button a note of its own, a chord button as its root
 * with the letter, a counterbass underlined, with the planned fingers.
 *
 * <p>Under patterns the notes last as the pattern is written, whatever share of it sounds. Where a bass staff is written
 * and played as it stands, its own notes stay and are marked as the plan plays them. Rests fill every measure. Octaves
 * are those of the layout. Immutable.
 */
public final class AccordionBassStaff {
    private final Performance performance;
    private final PatternChooser patterns;
    private final BassSigns signs;
    private final Map<Integer, List<LeftHandPlan.Event>> presses = new HashMap<>();
    private final Map<MusicalTime, MusicalTime> lengths = new HashMap<>();
    private final List<List<BassEvent>> measures = new ArrayList<>();

    private AccordionBassStaff(Performance performance, LeftHandPlan plan, StradellaBass layout) {
        this.performance = performance;
        this.patterns = PatternSection.chooser(performance);
        this.signs = new BassSigns(performance, layout.sound());
        for (LeftHandPlan.Event event : plan.events())
            presses.computeIfAbsent(event.measure(), measure -> new ArrayList<>())
                    .add(event);
        for (Beat beat : LeftHandBeats.of(performance, layout)) lengths.put(beat.onset(), beat.written());
        for (PlayedMeasure measure : performance.measures()) measures.add(written(measure));
    }

    /**
     * @param plan a plan of this performance on this layout
     * @throws IllegalArgumentException if the plan presses where this performance asks for nothing
     */
    public static AccordionBassStaff of(Performance performance, LeftHandPlan plan, StradellaBass layout) {
        return new AccordionBassStaff(performance, plan, layout);
    }

    /** The events of a played measure in order; notes and rests fill it. {@code index} from 0. */
    public List<BassEvent> measure(int index) {
        return measures.get(index);
    }

    private List<BassEvent> written(PlayedMeasure measure) {
        PatternUse use = patterns.at(measure.written(), measure.pass());
        List<LeftHandPlan.Event> here = presses.getOrDefault(measure.index(), List.of());
        List<BassEvent> notes = use.why() == PatternUse.Why.WRITTEN
                ? new MarkedStaff(here)
                        .of(performance.tune().measure(measure.written()).bass(), use.hand())
                : planned(measure, here);
        return filled(notes, measure.length());
    }

    private List<BassEvent> planned(PlayedMeasure measure, List<LeftHandPlan.Event> here) {
        List<BassEvent> notes = new ArrayList<>();
        for (int i = 0; i < here.size(); i++) {
            LeftHandPlan.Event press = here.get(i);
            MusicalTime offset = press.place().offset();
            MusicalTime next = i + 1 < here.size() ? here.get(i + 1).place().offset() : measure.length();
            MusicalTime length = lengthAt(press).min(next.minus(offset));
            for (int button = 0; button < press.buttons().size(); button++)
                notes.add(
                        note(press, press.buttons().get(button), press.fingers().get(button), offset, length));
        }
        return notes;
    }

    private MusicalTime lengthAt(LeftHandPlan.Event press) {
        return Optional.ofNullable(lengths.get(press.onset()))
                .orElseThrow(() -> new IllegalArgumentException("plan presses at " + press.onset()
                        + "; allowed: where this performance asks for a bass or chord"));
    }

    private BassEvent note(
            LeftHandPlan.Event press, BassButton button, int finger, MusicalTime offset, MusicalTime length) {
        return new BassEvent(
                offset,
                length,
                List.of(signs.pitch(button, press)),
                BassSigns.letter(button),
                false,
                BassSigns.marks(button, finger));
    }

    /** With rests where nothing sounds. */
    private static List<BassEvent> filled(List<BassEvent> notes, MusicalTime length) {
        List<BassEvent> filled = new ArrayList<>();
        MusicalTime end = MusicalTime.ZERO;
        for (BassEvent note : notes) {
            if (end.isBefore(note.offset()))
                filled.add(BassEvent.rest(end, note.offset().minus(end)));
            filled.add(note);
            end = end.max(note.end());
        }
        if (end.isBefore(length)) filled.add(BassEvent.rest(end, length.minus(end)));
        return List.copyOf(filled);
    }
}
