package org.mantice.app.model;

import java.util.List;
import java.util.Optional;
import org.mantice.instrument.AccordionPresets;
import org.mantice.player.PlayerPresets;
import org.mantice.reading.MelodyChoice;
import org.mantice.reading.PartInfo;
import org.mantice.reading.ReadTune;
import org.mantice.tune.Tune;
import org.mantice.tune.Tunes;

/** Tunes of a few measures, as if they had been opened. */
final class SmallTunes {
    static final Tune WALTZ = Tunes.melody(
            "3/4",
            "\"C\" C4 q, E4 q, G4 q | C5 h, B4 q | \"F\" A4 q, C5 q, A4 q | \"C\" G4 h. | \"G7\" F4 q, A4 q, F4 q"
                    + " | \"Am\" E4 q, G4 q, C5 q | \"G7\" D5 q, B4 q, G4 q | \"C\" C5 h.");

    /** Two parts, each played twice: all of it is one pass, and three sweeps over the page. */
    static final Tune TWO_PARTS = Tunes.melody(
            "4/4",
            "@start \"C\" C4 q, E4 q, G4 q, C5 q | @end \"G7\" D5 q, B4 q, G4 e, F4 e, D4 q"
                    + " | @start \"F\" F4 q, A4 q, C5 q, F5 q | @end \"C\" E5 q, G4 q, C4 h");

    private static final PartInfo PART = new PartInfo("P1", "Melody", 24, 7);

    private SmallTunes() {}

    static OpenTune open(Tune tune) {
        return new OpenTune(
                "small.musicxml",
                new ReadTune(
                        tune,
                        List.of(),
                        List.of(PART),
                        new MelodyChoice(PART, 1, MelodyChoice.Rule.ONLY_PART),
                        "0".repeat(64)),
                Optional.empty());
    }

    static Setup setup() {
        return setup(Wishes.NONE);
    }

    static Setup setup(Wishes wishes) {
        return new Setup(
                AccordionPresets.get("full-41-key-120-bass"), PlayerPresets.get("medium-hand"), wishes, List.of());
    }
}
