package org.mantice.rule.variation;

import java.util.List;
import java.util.Set;
import org.mantice.instrument.ReedBank;
import org.mantice.instrument.RegisterSwitch;
import org.mantice.rule.PassChoice;
import org.mantice.rule.PassPair;

/** Steps for the tests of variation rules. */
final class VariationSteps {
    static final RegisterSwitch CLARINET = register("clarinet", ReedBank.MIDDLE_8);
    static final RegisterSwitch PICCOLO = register("piccolo", ReedBank.HIGH_4);
    static final RegisterSwitch BASSOON = register("bassoon", ReedBank.LOW_16);
    static final RegisterSwitch VIOLIN = register("violin", ReedBank.MIDDLE_8, ReedBank.TREMOLO_UPPER_8);
    static final RegisterSwitch MASTER =
            register("master", ReedBank.LOW_16, ReedBank.MIDDLE_8, ReedBank.TREMOLO_UPPER_8, ReedBank.HIGH_4);

    private VariationSteps() {}

    static RegisterSwitch register(String id, ReedBank... banks) {
        return new RegisterSwitch(id, id, Set.of(banks), true, 400);
    }

    static PassChoice choice(int pass, RegisterSwitch register, int octave) {
        return new PassChoice(pass, 3, register, octave, 60 + 12 * octave, 79 + 12 * octave);
    }

    static List<PassChoice> choices() {
        return List.of(
                choice(1, CLARINET, 0),
                choice(1, MASTER, 0),
                choice(1, PICCOLO, 0),
                choice(1, CLARINET, 1),
                choice(2, MASTER, 1),
                choice(2, BASSOON, -1),
                choice(3, VIOLIN, 0));
    }

    static List<PassPair> pairs() {
        return List.of(
                new PassPair(choice(1, CLARINET, 0), choice(2, CLARINET, 0)),
                new PassPair(choice(1, CLARINET, 0), choice(2, VIOLIN, 0)),
                new PassPair(choice(1, CLARINET, 0), choice(2, CLARINET, 1)),
                new PassPair(choice(1, CLARINET, 0), choice(2, MASTER, 0)),
                new PassPair(choice(2, MASTER, 0), choice(3, CLARINET, 0)));
    }
}
