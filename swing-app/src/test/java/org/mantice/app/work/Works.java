package org.mantice.app.work;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.mantice.app.files.PlanFiles;
import org.mantice.app.model.OpenTune;
import org.mantice.app.model.Setup;
import org.mantice.app.model.States;
import org.mantice.app.model.Wishes;
import org.mantice.editing.TuneEdit;
import org.mantice.file.PlanFile;
import org.mantice.instrument.AccordionPresets;
import org.mantice.instrument.BassButton;
import org.mantice.instrument.BassRow;
import org.mantice.pattern.Accompaniment;
import org.mantice.performance.ChordsPlayed;
import org.mantice.plan.Lock;
import org.mantice.player.Player;
import org.mantice.player.PlayerPresets;
import org.mantice.player.Taste;
import org.mantice.tune.Key;
import org.mantice.tune.Loudness;
import org.mantice.tune.Mode;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tempo;
import org.mantice.tune.WrittenPlace;

/** Unsaved work for tests. */
final class Works {
    static final List<Lock> LOCKS = List.of(
            new Lock.Register(OptionalInt.of(2), "bassoon"),
            new Lock.Octave(OptionalInt.empty(), -1),
            new Lock.Buttons(
                    OptionalInt.of(1),
                    new WrittenPlace(3, MusicalTime.of(1, 4)),
                    Set.of(new BassButton(BassRow.BASS, -3), new BassButton(BassRow.MINOR, 0))),
            new Lock.Turn(OptionalInt.empty(), new WrittenPlace(5, MusicalTime.ZERO), false),
            new Lock.Finger(OptionalInt.of(1), new WrittenPlace(0, MusicalTime.of(3, 8)), 1, 4));

    static final List<TuneEdit> EDITS = List.of(
            new TuneEdit.SetChord(new WrittenPlace(1, MusicalTime.QUARTER), "Am7/G (C)"),
            new TuneEdit.SetTempo(new WrittenPlace(0, MusicalTime.ZERO), Optional.of(Tempo.quarters(88))),
            new TuneEdit.SetKey(2, new Key(1, Mode.MAJOR)));

    private Works() {}

    static Player player() {
        Player preset = PlayerPresets.get("medium-hand");
        return new Player(
                preset.id(),
                preset.name(),
                preset.handSpanTenths(),
                preset.bassMethod(),
                preset.jumps(),
                preset.mayTurnInHeldNote(),
                Taste.PLAIN.with("bellows.turns", 2_500));
    }

    private static Setup setup() {
        return new Setup(
                AccordionPresets.get("standard-34-key-72-bass"),
                player(),
                new Wishes(
                        OptionalInt.of(96),
                        OptionalInt.of(3),
                        5,
                        Optional.of(Loudness.MP),
                        new ChordsPlayed(ChordsPlayed.Alternates.NEVER, false),
                        6,
                        Accompaniment.NONE.with(
                                Accompaniment.Choice.everywhere(Optional.of("sustained"), Optional.empty()))),
                LOCKS,
                EDITS);
    }

    /** The shipped example, every field filled, no plan yet. */
    static UnsavedWork unplanned() {
        Opened.Tune example = TuneOpening.example();
        return new UnsavedWork(example.tune(), example.content(), setup(), Optional.empty(), Optional.empty());
    }

    /** The shipped example with its best plan. */
    static UnsavedWork planned(Path savedTo) {
        UnsavedWork work = unplanned();
        States states = States.of("lanterns-at-the-weir");
        PlanFile plan = new PlanFiles(
                        work.tune().fileName(), work.tune().read(), work.tune().part(), States.packs())
                .of(states.planning(), states.offers().get(0).plan());
        return new UnsavedWork(work.tune(), work.content(), work.setup(), Optional.of(plan), Optional.of(savedTo));
    }

    /** A tune in a file, too large for its bytes to be copied. */
    static UnsavedWork large(Path file) {
        TuneContent content = TuneContent.of(file);
        OpenTune tune = content.open(Optional.of("1"));
        return new UnsavedWork(tune, content, setup(), Optional.empty(), Optional.empty());
    }
}
