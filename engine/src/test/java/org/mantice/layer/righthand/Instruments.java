package org.mantice.layer.righthand;

import org.mantice.instrument.Accordion;
import org.mantice.instrument.AccordionPresets;
import org.mantice.instrument.TrebleKeyboard;

/** Keyboards for tests of the right hand. */
final class Instruments {
    /** Every key a lattice may need. */
    static final Accordion WIDE = keyboard(21, 108);

    private Instruments() {}

    static Accordion keyboard(int lowestMidi, int highestMidi) {
        Accordion preset = AccordionPresets.all().get(0);
        TrebleKeyboard keys = new TrebleKeyboard(
                lowestMidi,
                highestMidi,
                preset.treble().whiteKeyMicrons(),
                preset.treble().switches());
        return new Accordion(preset.id(), preset.name(), keys, preset.bass(), preset.bellows());
    }
}
