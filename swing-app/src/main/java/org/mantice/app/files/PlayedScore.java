package org.mantice.app.files;

import java.util.Optional;
import org.mantice.instrument.Accordion;
import org.mantice.performance.Performance;
import org.mantice.plan.VariationPlan;
import org.mantice.tune.Tune;
import org.mantice.writing.Marking;
import org.mantice.writing.MusicXmlWriter;
import org.mantice.writing.PassRegisters;

/**
 * A tune with every time through written out, the same for the command line and the window.
 *
 * @param registers those of a plan of this performance on this accordion; empty for the tune alone
 */
public record PlayedScore(Performance performance, Optional<Registers> registers) {
    /** Register and octave of each pass, and the accordion that has them. */
    public record Registers(VariationPlan plan, Accordion accordion) {}

    public Tune tune() {
        Marking marking = registers
                .<Marking>map(each -> new PassRegisters(performance, each.plan(), each.accordion()))
                .orElse(Marking.NONE);
        return MusicXmlWriter.unrolled(performance, marking);
    }
}
