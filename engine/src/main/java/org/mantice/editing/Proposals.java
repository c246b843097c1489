package org.mantice.editing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.mantice.editing.TuneEditException.Reason;
import org.mantice.harmony.ChordProposal;
import org.mantice.harmony.ProposedChord;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.Measure;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.PlacedChord;
import org.mantice.tune.Tune;
import org.mantice.tune.WrittenPlace;

/** Chords proposed among those that are written, and what becomes of them. */
final class Proposals {
    private final Tune bare;
    private final TreeMap<WrittenPlace, ProposedChord> wanted = new TreeMap<>();
    private final List<Measure> measures = new ArrayList<>();
    private Optional<ChordSymbol> holding = Optional.empty();

    private Proposals(Tune bare, List<ProposedChord> proposals) {
        this.bare = bare;
        for (ProposedChord chord : proposals) wanted.put(chord.place(), chord);
    }

    /** @throws TuneEditException if nothing can be proposed */
    static EditedTune proposed(Spot spot) {
        Tune bare = withChords(spot.tune(), Proposals::writtenOnly);
        List<ProposedChord> proposals = ChordProposal.of(bare).chords();
        Tune tune = new Proposals(bare, proposals).filled();
        if (tune.equals(bare)) throw spot.refuse(Reason.NOTHING_TO_PROPOSE);
        return new EditedTune(tune, EditedTune.standing(tune, proposals));
    }

    static Tune dismissed(Spot spot) {
        check(spot);
        return withChords(spot.tune(), Proposals::writtenOnly);
    }

    static Tune accepted(Spot spot) {
        check(spot);
        return withChords(spot.tune(), chords -> chords.stream()
                .map(chord -> ChordEdits.own(chord, chord.offset()))
                .toList());
    }

    private static void check(Spot spot) {
        boolean any = spot.tune().measures().stream()
                .anyMatch(measure -> measure.chords().stream().anyMatch(PlacedChord::proposed));
        if (!any) throw spot.refuse(Reason.NO_PROPOSALS);
    }

    private static List<PlacedChord> writtenOnly(List<PlacedChord> chords) {
        return chords.stream().filter(chord -> !chord.proposed()).toList();
    }

    private static Tune withChords(Tune tune, UnaryOperator<List<PlacedChord>> change) {
        return new Tune(
                tune.title(),
                tune.dance(),
                tune.measures().stream()
                        .map(measure -> measure.withChords(change.apply(measure.chords())))
                        .toList());
    }

    private Tune filled() {
        for (int i = 0; i < bare.measures().size(); i++) measures.add(filled(i));
        return new Tune(bare.title(), bare.dance(), measures);
    }

    private Measure filled(int index) {
        Measure measure = bare.measure(index);
        MusicalTime end = measure.chords().isEmpty()
                ? measure.length()
                : measure.chords().get(0).offset();
        List<PlacedChord> chords = new ArrayList<>();
        if (!end.isZero()) goOn(index, chords);
        for (ProposedChord chord : wanted.subMap(
                        new WrittenPlace(index, MusicalTime.ZERO), new WrittenPlace(index, end))
                .values()) add(chord.place().offset(), chord.symbol(), chords);
        for (PlacedChord chord : measure.chords()) {
            chords.add(chord);
            holding = Optional.of(chord.symbol());
        }
        return measure.withChords(chords);
    }

    /** After a measure with a written chord, the chord that was proposed before and goes on is named again. */
    private void goOn(int index, List<PlacedChord> chords) {
        WrittenPlace start = new WrittenPlace(index, MusicalTime.ZERO);
        Optional.ofNullable(wanted.floorEntry(start))
                .ifPresent(entry -> add(MusicalTime.ZERO, entry.getValue().symbol(), chords));
    }

    /** A chord that holds already is not named again. */
    private void add(MusicalTime offset, ChordSymbol symbol, List<PlacedChord> chords) {
        if (holding.filter(held -> sounds(held, symbol)).isPresent()) return;
        holding = Optional.of(symbol);
        chords.add(new PlacedChord(offset, symbol, true));
    }

    /** The same chord, however it is spelled out. */
    private static boolean sounds(ChordSymbol one, ChordSymbol other) {
        return one.root().equals(other.root())
                && one.kind() == other.kind()
                && one.degrees().equals(other.degrees())
                && one.bass().equals(other.bass());
    }
}
