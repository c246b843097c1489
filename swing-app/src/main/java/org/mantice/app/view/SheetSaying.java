package org.mantice.app.view;

import java.util.Optional;
import org.mantice.app.model.TuneEditor;
import org.mantice.app.sheet.ChordText;
import org.mantice.app.sheet.SheetContent;
import org.mantice.app.words.MusicWords;
import org.mantice.app.words.Words;
import org.mantice.performance.Performance;
import org.mantice.tune.PlacedChord;
import org.mantice.tune.WrittenPlace;

/** What is pointed at on the sheet, in words. */
final class SheetSaying {
    private final Words words;
    private final TuneEditor editor;
    private final SpotWords spots;
    private final MusicWords music;

    SheetSaying(Words words, TuneEditor editor) {
        this.words = words;
        this.editor = editor;
        this.spots = new SpotWords(words);
        this.music = new MusicWords(words);
    }

    /** What is selected; what to do where nothing is. */
    String selected(Optional<SheetContent> content) {
        if (content.isEmpty()) return words.text("sheet.empty");
        SheetContent sheet = content.get();
        return editor.selected()
                .map(spot -> chord(spot.place()))
                .or(() -> sheet.pointing()
                        .selected()
                        .map(spot -> spots.at(sheet, sheet.pointing().band(), spot)))
                .orElseGet(() -> words.text("sheet.nothingSelected"));
    }

    String at(SheetContent sheet, SheetWalk.Stop stop) {
        if (stop instanceof SheetWalk.Decided decided)
            return spots.at(sheet, decided.target().band(), decided.target().spot());
        return chord(((SheetWalk.Chord) stop).target().spot().place());
    }

    /** As "measure 3, beat 1". */
    String place(WrittenPlace place) {
        return music.place(editor.shown().map(Performance::tune).orElseThrow(), place);
    }

    /** As "Chord line, measure 3, beat 1: Am7, proposed". */
    private String chord(WrittenPlace place) {
        String what = editor.chordAt(place)
                .map(this::said)
                .or(() -> editor.sounding(place).map(chord -> words.text("sheet.chord.goesOn", ChordText.of(chord))))
                .orElseGet(() -> words.text("sheet.chord.none"));
        return words.text("sheet.chord", place(place), what);
    }

    private String said(PlacedChord chord) {
        return chord.proposed() ? words.text("sheet.chord.proposed", text(chord)) : text(chord);
    }

    private static String text(PlacedChord chord) {
        return ChordText.of(chord);
    }
}
