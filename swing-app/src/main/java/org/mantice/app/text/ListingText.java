package org.mantice.app.text;

import java.util.List;
import java.util.stream.Collectors;
import org.mantice.instrument.BassRow;
import org.mantice.instrument.ButtonNames;
import org.mantice.performance.Pass;
import org.mantice.performance.Performance;
import org.mantice.performance.Places;
import org.mantice.performance.PlayedMeasure;
import org.mantice.plan.BellowsPlan;
import org.mantice.plan.LeftHandPlan;
import org.mantice.plan.Plan;
import org.mantice.plan.RightHandPlan;
import org.mantice.plan.VariationPlan;
import org.mantice.rule.HandMove;
import org.mantice.tune.Measure;
import org.mantice.tune.MelodyEvent;
import org.mantice.tune.MelodyNote;
import org.mantice.tune.NoteName;

/**
 * A plan measure by measure, as a player would pencil it: for every measure the strokes that begin in it, the notes
 * with their fingers, and the buttons.
 */
public final class ListingText {
    private final Performance performance;

    public ListingText(Performance performance) {
        this.performance = performance;
    }

    public String of(Plan plan) {
        StringBuilder text = new StringBuilder();
        for (Pass pass : performance.passes()) {
            VariationPlan.PassDecision register = plan.variation().pass(pass.number());
            text.append("pass ").append(pass.number()).append(": ").append(register.switchId());
            if (register.octave() != 0) text.append(register.octave() > 0 ? ", an octave up" : ", an octave down");
            text.append('\n');
            for (int i = pass.firstMeasure(); i <= pass.lastMeasure(); i++)
                measure(text, plan, performance.measures().get(i));
        }
        return text.toString();
    }

    private void measure(StringBuilder text, Plan plan, PlayedMeasure played) {
        Measure written = performance.tune().measure(played.written());
        text.append(String.format("  %4s  ", written.number()));
        List<BellowsPlan.Stroke> strokes = plan.bellows().strokes().stream()
                .filter(stroke -> stroke.measure() == played.index())
                .toList();
        String bellows = strokes.stream()
                .map(stroke -> (stroke.direction() == BellowsPlan.Direction.OUT ? "OUT" : "IN") + "@"
                        + Places.beat(written, stroke.place().offset()))
                .collect(Collectors.joining(" "));
        text.append(String.format("%-12s ", bellows));
        text.append(String.format("%-60s ", fingers(plan.rightHand(), played)));
        text.append(buttons(plan.leftHand(), played));
        while (text.charAt(text.length() - 1) == ' ') text.setLength(text.length() - 1);
        text.append('\n');
    }

    private String fingers(RightHandPlan plan, PlayedMeasure played) {
        return plan.events().stream()
                .filter(event -> performance.treble().get(event.moment()).measure() == played.index())
                .map(this::fingers)
                .collect(Collectors.joining(" "));
    }

    private String fingers(RightHandPlan.Event event) {
        StringBuilder text = new StringBuilder(event.move() == HandMove.STAY ? "" : "^");
        for (int note = 0; note < event.keys().size(); note++) {
            if (note > 0) text.append('+');
            int midi = event.keys().get(note);
            NoteName name = spelling(event, midi);
            text.append(name).append(Math.floorDiv(midi - name.alter(), 12) - 1).append(':');
            text.append(event.fingers().get(note));
        }
        return text.toString();
    }

    /** As written at the place; a grace note as near to the key signature as it can be. */
    private NoteName spelling(RightHandPlan.Event event, int midi) {
        Measure written = performance.tune().measure(event.place().measure());
        for (MelodyEvent melody : written.melody())
            if (melody.offset().equals(event.place().offset()))
                for (MelodyNote note : melody.notes())
                    if (note.pitch().name().pitchClass() == Math.floorMod(midi, 12))
                        return note.pitch().name();
        int lowest = written.key().fifths() - 4;
        return NoteName.ofFifths(Math.floorMod(7 * midi - lowest, 12) + lowest);
    }

    private static String buttons(LeftHandPlan plan, PlayedMeasure played) {
        return plan.events().stream()
                .filter(event -> event.measure() == played.index())
                .map(ListingText::buttons)
                .collect(Collectors.joining(" "));
    }

    private static String buttons(LeftHandPlan.Event event) {
        StringBuilder text = new StringBuilder(
                event.jump() == LeftHandPlan.Jump.NONE ? "" : event.jump() == LeftHandPlan.Jump.SMALL ? "~" : "!");
        for (int i = 0; i < event.buttons().size(); i++) {
            if (i > 0) text.append('+');
            String name = ButtonNames.of(event.buttons().get(i));
            String note = name.substring(0, name.indexOf(' '));
            BassRow row = event.buttons().get(i).row();
            text.append(
                    switch (row) {
                        case COUNTERBASS -> "_" + note;
                        case BASS -> note;
                        case MAJOR -> note + "M";
                        case MINOR -> note + "m";
                        case SEVENTH -> note + "7";
                        case DIMINISHED -> note + "d";
                    });
            text.append(':').append(event.fingers().get(i));
        }
        return text.toString();
    }
}
