package org.mantice.app.view;

import java.awt.event.MouseEvent;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.Selection;
import org.mantice.app.model.TuneEditor;
import org.mantice.app.sheet.ChordSpot;
import org.mantice.app.sheet.ChordTarget;
import org.mantice.app.sheet.Pointing;
import org.mantice.app.sheet.SheetPainter;
import org.mantice.tune.WrittenPlace;

/** What the player points at on the sheet: a decision of a plan or a place of the chord line, by mouse and by key. */
final class SheetPointer {
    private final PlannerModel model;
    private final TuneEditor editor;
    private final SheetView view;
    private double column;

    SheetPointer(PlannerModel model, TuneEditor editor, SheetView view) {
        this.model = model;
        this.editor = editor;
        this.view = view;
    }

    Optional<SheetWalk.Stop> selected() {
        Optional<SheetPainter> sheet = view.sheet();
        if (sheet.isEmpty()) return Optional.empty();
        SheetWalk walk = new SheetWalk(sheet.get(), view.bands());
        Pointing at = view.pointing();
        Optional<SheetWalk.Stop> chord = at.chord().flatMap(walk::find);
        return chord.isPresent() ? chord : at.selected().flatMap(spot -> walk.find(at.band(), spot));
    }

    void select(SheetWalk.Stop stop) {
        if (stop instanceof SheetWalk.Chord chord)
            editor.select(Optional.of(chord.target().spot()));
        else if (stop instanceof SheetWalk.Decided decided) {
            int offer = model.state().compared().get(decided.target().band());
            editor.select(Optional.empty());
            model.select(Optional.of(new Selection(offer, decided.target().spot())));
        }
    }

    /** What lies at a point; nothing is changed. */
    Optional<SheetWalk.Stop> at(double x, double y) {
        Optional<SheetPainter> sheet = view.sheet();
        if (sheet.isEmpty()) return Optional.empty();
        SheetWalk walk = new SheetWalk(sheet.get(), view.bands());
        Optional<SheetWalk.Stop> decided = sheet.get().targetAt(x, y).map(SheetWalk.Decided::new);
        return decided.isPresent()
                ? decided
                : sheet.get().chordAt(x, y).map(ChordTarget::spot).flatMap(walk::find);
    }

    void pointAt(MouseEvent event) {
        view.requestFocusInWindow();
        at(event.getX(), event.getY()).ifPresent(stop -> {
            column = stop.bounds().getCenterX();
            select(stop);
        });
    }

    /** Chooses the plan whose head lies there. */
    void chooseAt(MouseEvent event) {
        view.sheet().ifPresent(sheet -> sheet.headAt(event.getX(), event.getY())
                .ifPresent(band -> model.choose(model.state().compared().get(band))));
    }

    void step(SheetWalk.Step step) {
        if (view.sheet().isEmpty()) return;
        SheetWalk walk = new SheetWalk(view.sheet().get(), view.bands());
        Optional<SheetWalk.Stop> here = selected();
        Optional<SheetWalk.Stop> next = here.isEmpty() ? walk.start() : walk.from(here.get(), step, column);
        next.ifPresent(stop -> {
            if (here.isEmpty() || !step.isUpright()) column = stop.bounds().getCenterX();
            select(stop);
        });
    }

    /**
     * Points at the chord line: above the decision selected, or at its beginning. Stays where it is if it points there.
     */
    Optional<ChordTarget> goToChords() {
        if (view.sheet().isEmpty()) return Optional.empty();
        List<ChordTarget> chords = view.sheet().get().chords();
        Optional<ChordSpot> wanted = editor.selected().or(() -> editor.place().flatMap(place -> chords.stream()
                .map(ChordTarget::spot)
                .filter(spot -> spot.place().equals(place))
                .findFirst()));
        Optional<ChordTarget> found = wanted.flatMap(view.sheet().get()::chord)
                .or(() -> chords.stream().findFirst());
        found.ifPresent(target -> editor.select(Optional.of(target.spot())));
        return found;
    }

    /** Points at a place of the chord line, in the measure nearest to that pointed at where it is shown more than once. */
    void goTo(WrittenPlace place) {
        int near = editor.selected().map(ChordSpot::cell).orElse(0);
        view.sheet()
                .flatMap(sheet -> sheet.chords().stream()
                        .map(ChordTarget::spot)
                        .filter(spot -> spot.place().equals(place))
                        .min(Comparator.comparingInt(spot -> Math.abs(spot.cell() - near))))
                .ifPresent(spot -> editor.select(Optional.of(spot)));
    }

    /** After another layout the same written place may be elsewhere on the sheet, or nowhere. */
    void findAgain() {
        Optional<ChordSpot> before = editor.selected();
        if (before.isEmpty() || view.sheet().isEmpty()) return;
        if (view.sheet().get().chord(before.get()).isPresent()) return;
        List<ChordSpot> there = view.sheet().get().chords().stream()
                .map(ChordTarget::spot)
                .filter(spot -> spot.place().measure() == before.get().place().measure())
                .toList();
        editor.select(there.stream()
                .filter(spot -> spot.place().equals(before.get().place()))
                .findFirst()
                .or(() -> there.stream().findFirst()));
    }
}
