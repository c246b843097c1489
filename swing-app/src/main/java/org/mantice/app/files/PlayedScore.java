package org.mantice.app.files;

import java.util.Optional;
import org.mantice.instrument.Accordion;
import org.mantice.layer.lefthand.AccordionBassStaff;
import org.mantice.performance.Performance;
import org.mantice.performance.PlayedMeasure;
import org.mantice.plan.Plan;
import org.mantice.plan.VariationPlan;
import org.mantice.tune.Measure;
import org.mantice.tune.Tune;
import org.mantice.writing.Marking;
import org.mantice.writing.MusicXmlWriter;
import org.mantice.writing.PassRegisters;

/**
 * A tune with every time through written out, the same for the command line and the window.
 *
 * @param registers those of a plan of this performance on this accordion; empty for the tune alone
 * @param bass what the plan's left hand plays, to be written as the bass staff; empty for the tune's own
 */
public record PlayedScore(Performance performance, Optional<Registers> registers, Optional<AccordionBassStaff> bass) {
    /** Of a plan on an accordion. */
    public static PlayedScore of(Performance performance, Plan plan, Accordion accordion, boolean bassStaff) {
        return new PlayedScore(
                performance,
                Optional.of(new Registers(plan.variation(), accordion)),
                bassStaff
                        ? Optional.of(AccordionBassStaff.of(performance, plan.leftHand(), accordion.bass()))
                        : Optional.empty());
    }

    /** Without a plan. */
    public static PlayedScore of(Performance performance) {
        return new PlayedScore(performance, Optional.empty(), Optional.empty());
    }

    /** Register and octave of each pass, and the accordion that has them. */
    public record Registers(VariationPlan plan, Accordion accordion) {}

    public Tune tune() {
        Marking marking = registers
                .<Marking>map(each -> new PassRegisters(performance, each.plan(), each.accordion()))
                .orElse(Marking.NONE);
        return MusicXmlWriter.unrolled(
                performance, (played, measure) -> withBass(played, marking.mark(played, measure)));
    }

    private Measure withBass(PlayedMeasure played, Measure measure) {
        return bass.map(staff -> measure.withBass(staff.measure(played.index())))
                .orElse(measure);
    }
}
