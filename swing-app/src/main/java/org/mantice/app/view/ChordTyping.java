package org.mantice.app.view;

import java.util.List;
import java.util.Optional;
import org.mantice.app.model.TuneEditor;
import org.mantice.app.sheet.ChordSpot;
import org.mantice.app.sheet.ChordTarget;
import org.mantice.app.words.Words;

/** Opens the field for a chord on the sheet, keeps it in its place and goes on with it. */
final class ChordTyping implements ChordField.Host {
    private final SheetView view;
    private final TuneEditor editor;
    private final ChordField field;

    ChordTyping(SheetView view, TuneEditor editor, Words words) {
        this.view = view;
        this.editor = editor;
        this.field = new ChordField(editor, words, this);
        view.setLayout(null);
        view.add(field);
    }

    ChordField field() {
        return field;
    }

    /** At the place pointed at, or where the chord line is nearest. @param typed a first letter; empty for none */
    void open(String typed) {
        view.pointer().goToChords().ifPresent(target -> field.open(target, typed));
    }

    /** The sheet is laid out anew. */
    void placeAgain() {
        Optional<ChordSpot> spot = field.target().map(ChordTarget::spot);
        if (spot.isEmpty()) return;
        view.sheet().flatMap(sheet -> sheet.chord(spot.get())).ifPresent(field::place);
    }

    @Override
    public double space() {
        return view.space();
    }

    @Override
    public String place(ChordTarget target) {
        return view.placeWords(target);
    }

    @Override
    public boolean goOn(int step) {
        List<ChordTarget> all = view.sheet().map(sheet -> sheet.chords()).orElse(List.of());
        Optional<ChordSpot> here = editor.selected();
        for (int i = 0; i < all.size(); i++)
            if (here.filter(all.get(i).spot()::equals).isPresent() && i + step >= 0 && i + step < all.size()) {
                ChordTarget next = all.get(i + step);
                editor.select(Optional.of(next.spot()));
                field.open(next, "");
                return true;
            }
        return false;
    }
}
