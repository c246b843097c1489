package org.mantice.app.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.mantice.app.sheet.ChordPlaces;
import org.mantice.app.sheet.ChordSpot;
import org.mantice.editing.EditedTune;
import org.mantice.editing.TuneEdit;
import org.mantice.editing.TuneEdit.SetChord;
import org.mantice.harmony.ProposedChord;
import org.mantice.performance.HarmonySpan;
import org.mantice.performance.Performance;
import org.mantice.performance.PlayedMeasure;
import org.mantice.tune.Barlines;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.Key;
import org.mantice.tune.Mark;
import org.mantice.tune.Measure;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.PlacedChord;
import org.mantice.tune.Tempo;
import org.mantice.tune.Transposer;
import org.mantice.tune.Tune;
import org.mantice.tune.WrittenPlace;

/**
 * The tune as it is edited on its sheet, without widgets: which place of the chord line is pointed at, what stands there,
 * and what can be changed. Chords and keys are those of the sheet, in the key that the tune is played in; the edits that
 * come of them are in the key of its file.
 */
public final class TuneEditor {
    private final PlannerModel planner;
    private final ShownTune shownTune = new ShownTune();
    private final List<Runnable> listeners = new ArrayList<>();
    private Optional<ChordSpot> selected = Optional.empty();

    public TuneEditor(PlannerModel planner) {
        this.planner = planner;
        planner.addListener(this::follow);
    }

    /** A decision selected, or another tune, takes the place of what was pointed at. */
    private void follow(PlannerState state) {
        boolean gone = selected.isPresent() && (state.selection().isPresent() || !isIn(state, selected.get()));
        if (gone) change(Optional.empty());
    }

    private static boolean isIn(PlannerState state, ChordSpot spot) {
        return state.editedTune()
                .filter(tune -> spot.place().measure() < tune.measures().size())
                .isPresent();
    }

    private void change(Optional<ChordSpot> spot) {
        selected = spot;
        List.copyOf(listeners).forEach(Runnable::run);
    }

    /** Told when something else is pointed at; changes of the tune are told by the planner. */
    public void addListener(Runnable listener) {
        listeners.add(listener);
    }

    /** The place of the chord line that is pointed at. */
    public Optional<ChordSpot> selected() {
        return selected;
    }

    public void select(Optional<ChordSpot> spot) {
        if (spot.equals(selected)) return;
        if (spot.isPresent()) planner.select(Optional.empty());
        change(spot);
    }

    /** The tune as the sheet shows it: edited, in the key it is played in; empty if it cannot be played at all. */
    public Optional<Performance> shown() {
        return shownTune.of(planner.state(), planner.state().editedTune());
    }

    /** Whether the plans in view have their places in the tune as it is shown; else they are still to come. */
    public boolean plansFit() {
        Optional<Performance> planned = planner.state().performance();
        return planned.isPresent()
                && shown().filter(now -> ShownTune.haveSamePlaces(planned.get(), now))
                        .isPresent();
    }

    private Optional<Tune> tune() {
        return shown().map(Performance::tune);
    }

    /** Where measures and marks are edited: the place of the chord line, or that of the decision selected. */
    public Optional<WrittenPlace> place() {
        return selected.map(ChordSpot::place)
                .or(() -> planner.state().selection().map(Selection::spot).map(spot -> spot.place()))
                .filter(place -> tune().filter(
                                tune -> place.measure() < tune.measures().size())
                        .isPresent());
    }

    /** The measure of {@link #place()}, as shown. */
    public Optional<Measure> measure() {
        return place().map(place -> tune().orElseThrow().measure(place.measure()));
    }

    /** The chord that stands at a place. */
    public Optional<PlacedChord> chordAt(WrittenPlace place) {
        return tune().filter(tune -> place.measure() < tune.measures().size())
                .flatMap(tune -> tune.measure(place.measure()).chords().stream()
                        .filter(chord -> chord.offset().equals(place.offset()))
                        .findFirst());
    }

    /** The chord at the place of the chord line that is pointed at. */
    public Optional<PlacedChord> chord() {
        return selected.map(ChordSpot::place).flatMap(this::chordAt);
    }

    /** The chord that sounds at a place the first time it is played; empty where none does, or it never is. */
    public Optional<ChordSymbol> sounding(WrittenPlace place) {
        Performance performance = shown().orElseThrow();
        int first = performance.measures().stream()
                .filter(measure -> measure.written() == place.measure())
                .mapToInt(PlayedMeasure::index)
                .findFirst()
                .orElse(-1);
        Optional<ChordSymbol> sounding = Optional.empty();
        for (HarmonySpan span : performance.harmony())
            if (span.measure() == first && span.place().compareTo(place) <= 0) sounding = span.chord();
        return sounding;
    }

    /** Why the chord at a place was proposed; empty if it was not. */
    public Optional<ProposedChord> proposalAt(WrittenPlace place) {
        return planner.state().edited().flatMap(edited -> edited.proposals().stream()
                .filter(chord -> chord.place().equals(place))
                .findFirst());
    }

    public boolean hasProposals() {
        return planner.state()
                .edited()
                .map(EditedTune::proposals)
                .filter(all -> !all.isEmpty())
                .isPresent();
    }

    /**
     * Puts a chord where one can stand, in place of one that does.
     *
     * @param text as people write it; empty takes the chord away
     * @throws IllegalArgumentException if the text is no chord symbol
     * @throws org.mantice.editing.TuneEditException if it cannot stand there
     */
    public void setChord(WrittenPlace place, String text) {
        Optional<PlacedChord> there = chordAt(place);
        if (text.isBlank()) {
            if (there.isPresent()) removeChord(place);
            return;
        }
        SetChord edit = TypedChord.edit(place, text, fifthsToFile(place.measure()));
        planner.edit(edit);
    }

    /** By how many fifths names on the sheet lie above those of the file. */
    private int fifthsToFile(int measure) {
        int shown = tune().orElseThrow().measure(measure).key().fifths();
        int written = planner.state()
                .editedTune()
                .orElseThrow()
                .measure(measure)
                .key()
                .fifths();
        return written - shown;
    }

    /** @throws org.mantice.editing.TuneEditException if no chord stands there */
    public void removeChord(WrittenPlace place) {
        planner.edit(new TuneEdit.RemoveChord(place));
    }

    /** @throws org.mantice.editing.TuneEditException if no chord stands there, or one stands at the other place */
    public void moveChord(WrittenPlace from, WrittenPlace to) {
        planner.edit(new TuneEdit.MoveChord(from, to));
    }

    /**
     * The nearest place before or behind one where no chord stands.
     *
     * @param by 1 for behind, -1 for before
     */
    public Optional<WrittenPlace> freeBeside(WrittenPlace place, int by) {
        List<Measure> measures = tune().orElseThrow().measures();
        List<WrittenPlace> free = new ArrayList<>();
        for (int i = 0; i < measures.size(); i++)
            for (MusicalTime offset : ChordPlaces.of(measures.get(i))) {
                WrittenPlace other = new WrittenPlace(i, offset);
                if (Integer.signum(other.compareTo(place)) == by
                        && chordAt(other).isEmpty()) free.add(other);
            }
        if (free.isEmpty()) return Optional.empty();
        return Optional.of(free.get(by > 0 ? 0 : free.size() - 1));
    }

    /** @throws org.mantice.editing.TuneEditException if nothing can be proposed */
    public void propose() {
        planner.edit(new TuneEdit.ProposeChords());
    }

    /** @throws org.mantice.editing.TuneEditException if the chord there is not proposed */
    public void accept(WrittenPlace place) {
        planner.edit(new TuneEdit.AcceptChord(place));
    }

    /** @throws org.mantice.editing.TuneEditException if none is proposed */
    public void acceptAll() {
        planner.edit(new TuneEdit.AcceptChords());
    }

    /** @throws org.mantice.editing.TuneEditException if none is proposed */
    public void dismiss() {
        planner.edit(new TuneEdit.DismissProposals());
    }

    /** Whether a mark says that a phrase begins at {@link #place()}. */
    public boolean phraseBegins() {
        return place().isPresent() && marksHere().stream().anyMatch(mark -> mark instanceof Mark.PhraseStart);
    }

    private List<Mark> marksHere() {
        MusicalTime offset = place().orElseThrow().offset();
        return measure().orElseThrow().marks().stream()
                .filter(mark -> mark.offset().equals(offset))
                .toList();
    }

    /** @throws org.mantice.editing.TuneEditException if no note begins at {@link #place()} */
    public void setPhrase(boolean begins) {
        place().ifPresent(place -> planner.edit(new TuneEdit.SetPhrase(place, begins)));
    }

    /** The metronome mark at {@link #place()}. */
    public Optional<Tempo> tempo() {
        if (place().isEmpty()) return Optional.empty();
        return marksHere().stream()
                .filter(Mark.TempoChange.class::isInstance)
                .map(mark -> ((Mark.TempoChange) mark).tempo())
                .findFirst();
    }

    /** @param tempo empty takes the mark away; nothing happens where there is none */
    public void setTempo(Optional<Tempo> tempo) {
        if (tempo.equals(tempo())) return;
        place().ifPresent(place -> planner.edit(new TuneEdit.SetTempo(place, tempo)));
    }

    /** @throws org.mantice.editing.TuneEditException if the tune becomes too long */
    public void setBarlines(Barlines barlines) {
        if (measure().map(Measure::barlines).filter(barlines::equals).isPresent()) return;
        place().ifPresent(place -> planner.edit(new TuneEdit.SetBarlines(place.measure(), barlines)));
    }

    /** From the measure of {@link #place()} to the next change of key. @param key as on the sheet */
    public void setKey(Key key) {
        if (measure().map(Measure::key).filter(key::equals).isPresent()) return;
        Key written =
                Transposer.transpose(key, -shown().orElseThrow().settings().transposition());
        place().ifPresent(place -> planner.edit(new TuneEdit.SetKey(place.measure(), written)));
    }
}
