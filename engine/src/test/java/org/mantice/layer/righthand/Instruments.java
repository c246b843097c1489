package org.mantice.layer.righthand;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.mantice.instrument.Accordion;
import org.mantice.instrument.Bellows;
import org.mantice.instrument.ButtonGeometry;
import org.mantice.instrument.ReedBank;
import org.mantice.instrument.RegisterSwitch;
import org.mantice.instrument.StradellaBass;
import org.mantice.instrument.TrebleKeyboard;
import org.mantice.tune.Loudness;

/** Keyboards for tests of the right hand. */
final class Instruments {
    /** Every key a lattice may need. */
    static final Accordion WIDE = keyboard(21, 108);

    private Instruments() {}

    static Accordion keyboard(int lowestMidi, int highestMidi) {
        RegisterSwitch master = new RegisterSwitch("master", "Master", Set.of(ReedBank.MIDDLE_8), true, 300);
        StradellaBass noBass = new StradellaBass(0, 0, Set.of(), ButtonGeometry.ESTIMATE, 1, 1);
        Bellows.Appetites appetites = new Bellows.Appetites(
                new TreeMap<>(Map.of(ReedBank.MIDDLE_8, 1_000)), 1_000, 1_000, new TreeMap<>(Map.of(Loudness.MF, 1_000)));
        Bellows bellows = new Bellows(
                List.of(new Bellows.OpeningVolume(0, 0), new Bellows.OpeningVolume(600, 12_000)), 400, 600, 80, appetites,
                50, false);
        return new Accordion(
                "test", "Test", new TrebleKeyboard(lowestMidi, highestMidi, 20_400, List.of(master)), noBass, bellows);
    }
}
