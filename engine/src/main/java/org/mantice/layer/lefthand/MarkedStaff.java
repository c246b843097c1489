package org.mantice.layer.lefthand;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.mantice.instrument.BassButton;
import org.mantice.pattern.Accompaniment.Hand;
import org.mantice.plan.LeftHandPlan;
import org.mantice.tune.BassEvent;
import org.mantice.tune.Pitch;

/** A measure of a written bass staff with the marks of the plan that plays it; what the hand leaves out is left out. */
final class MarkedStaff {
    private final List<LeftHandPlan.Event> presses;

    /** @param presses of the measure as played */
    MarkedStaff(List<LeftHandPlan.Event> presses) {
        this.presses = presses;
    }

    List<BassEvent> of(List<BassEvent> written, Hand hand) {
        List<BassEvent> marked = new ArrayList<>();
        for (BassEvent event : written) if (isPlayed(event, hand)) marked.add(marked(event));
        return marked;
    }

    private static boolean isPlayed(BassEvent event, Hand hand) {
        if (event.isRest()) return false;
        boolean chord = event.chord().isPresent() || event.pitches().size() > 1;
        return switch (hand) {
            case FULL -> true;
            case BASS_ONLY -> !chord;
            case CHORDS_ONLY -> chord;
            case SILENT -> false;
        };
    }

    /** What is held over is not pressed anew, and a note that the plan gives to other buttons keeps its own marks. */
    private BassEvent marked(BassEvent event) {
        if (event.tiedBack()) return event;
        for (LeftHandPlan.Event press : presses) {
            if (!press.place().offset().equals(event.offset())) continue;
            for (int i = 0; i < press.buttons().size(); i++)
                if (plays(press.buttons().get(i), event))
                    return event.with(BassSigns.marks(
                            press.buttons().get(i), press.fingers().get(i)));
        }
        return event;
    }

    private static boolean plays(BassButton button, BassEvent event) {
        if (event.chord().isPresent() && !BassSigns.letter(button).equals(event.chord())) return false;
        TreeSet<Integer> tones = new TreeSet<>();
        for (Pitch pitch : event.pitches()) tones.add(pitch.name().pitchClass());
        if (event.chord().isPresent() && tones.size() == 1)
            return tones.first() == button.noteName().pitchClass();
        return button.pitchClasses().equals(tones);
    }
}
