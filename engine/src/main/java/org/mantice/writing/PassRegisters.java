package org.mantice.writing;

import java.util.ArrayList;
import java.util.List;
import org.mantice.instrument.Accordion;
import org.mantice.instrument.RegisterSign;
import org.mantice.instrument.RegisterSwitch;
import org.mantice.performance.Performance;
import org.mantice.performance.PlayedMeasure;
import org.mantice.plan.VariationPlan;
import org.mantice.plan.VariationPlan.PassDecision;
import org.mantice.tune.GraceGroup;
import org.mantice.tune.Mark;
import org.mantice.tune.Measure;
import org.mantice.tune.MelodyEvent;
import org.mantice.tune.MelodyNote;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Pitch;

/**
 * Register and octave of each pass: a registration sign where a pass begins with another switch than the one before, and
 * the melody in the octave that it is played in. Registrations of the source give way to those of the plan. (A register
 * that holds in some passes only has no sign of its own: MusicXML 4.0, accordion-registration, has no time-only.)
 */
public final class PassRegisters implements Marking {
    private final Performance performance;
    private final VariationPlan plan;
    private final Accordion accordion;

    /** @param plan of this performance on this accordion */
    public PassRegisters(Performance performance, VariationPlan plan, Accordion accordion) {
        if (plan.passes().size() != performance.passes().size())
            throw new IllegalArgumentException("the plan has " + plan.passes().size() + " passes; allowed: "
                    + performance.passes().size() + " as the performance");
        this.performance = performance;
        this.plan = plan;
        this.accordion = accordion;
    }

    @Override
    public Measure mark(PlayedMeasure played, Measure measure) {
        PassDecision decision = plan.pass(played.pass());
        List<Mark> marks = new ArrayList<>();
        boolean begins = performance.passes().get(played.pass() - 1).firstMeasure() == played.index();
        boolean changes =
                played.pass() == 1 || !plan.pass(played.pass() - 1).switchId().equals(decision.switchId());
        if (begins && changes) marks.add(sign(decision.switchId()));
        for (Mark mark : measure.marks()) if (!(mark instanceof Mark.Registration)) marks.add(mark);
        return measure.withMarks(marks)
                .withMelody(measure.melody().stream()
                        .map(event -> moved(event, decision.octave()))
                        .toList());
    }

    private Mark sign(String switchId) {
        RegisterSwitch register = accordion.treble().findSwitch(switchId).orElseThrow();
        RegisterSign.Triple dots = register.sign().triple();
        return new Mark.Registration(MusicalTime.ZERO, dots.high() > 0, dots.middle(), dots.low() > 0);
    }

    private static MelodyEvent moved(MelodyEvent event, int octaves) {
        return new MelodyEvent(
                event.offset(),
                event.duration(),
                moved(event.notes(), octaves),
                moved(event.graces(), octaves),
                moved(event.after(), octaves),
                event.marks());
    }

    private static GraceGroup moved(GraceGroup group, int octaves) {
        return new GraceGroup(
                group.notes().stream().map(together -> moved(together, octaves)).toList());
    }

    private static List<MelodyNote> moved(List<MelodyNote> notes, int octaves) {
        return notes.stream()
                .map(note -> new MelodyNote(
                        new Pitch(note.pitch().name(), note.pitch().octave() + octaves),
                        note.tiedBack(),
                        note.tiedForward(),
                        note.fingers()))
                .toList();
    }
}
