package org.mantice.file;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import org.mantice.instrument.BassButton;
import org.mantice.instrument.BassRow;
import org.mantice.instrument.BassSound;
import org.mantice.instrument.ButtonGeometry;
import org.mantice.instrument.ButtonRow;
import org.mantice.instrument.SingleButtons;
import org.mantice.instrument.StradellaBass;
import org.mantice.json.Fields;

/** The bass side in the file of an accordion. */
final class BassJson {
    private BassJson() {}

    /** Reads what this version writes, and what 0.1 wrote: one first column and one number of columns for all rows. */
    static StradellaBass read(Fields fields) {
        if (fields.has("columns")) return readFirstVersion(fields);
        List<ButtonRow> rows =
                fields.objects("rows").stream().map(BassJson::row).toList();
        SortedSet<BassButton> missing = buttons(fields.objects("missing"));
        SortedSet<BassButton> broken = buttons(fields.objects("broken"));
        SortedSet<BassButton> marked = buttons(fields.objects("marked"));
        SingleButtons singles = fields.make(() -> new SingleButtons(missing, broken, marked));
        ButtonGeometry geometry = geometry(fields.object("geometry"));
        int lowestBass = fields.wholeNumber("lowestBassMidi");
        int lowestChord = fields.wholeNumber("lowestChordMidi");
        int bassReeds = fields.wholeNumber("reedsPerBassButton");
        int chordReeds = fields.wholeNumber("reedsPerChordButton");
        BassSound sound = fields.make(() -> new BassSound(lowestBass, lowestChord, bassReeds, chordReeds));
        return fields.make(() -> new StradellaBass(rows, singles, geometry, sound));
    }

    private static StradellaBass readFirstVersion(Fields fields) {
        int first = fields.wholeNumber("firstColumn");
        int columns = fields.wholeNumber("columns");
        List<ButtonRow> rows = new ArrayList<>();
        for (BassRow kind : fields.choices("rows", BassRow.class))
            if (columns != 0) rows.add(fields.make(() -> ButtonRow.of(kind, first, columns)));
        Fields grid = fields.object("geometry");
        ButtonGeometry geometry = grid.make(() -> ButtonGeometry.estimate(
                grid.wholeNumber("columnMicrons"),
                grid.wholeNumber("rowMicrons"),
                grid.wholeNumber("driftMicrons"),
                grid.wholeNumber("buttonMicrons")));
        int bassReeds = fields.wholeNumber("reedsPerBassButton");
        int chordReeds = fields.wholeNumber("reedsPerChordButton");
        BassSound sound = fields.make(() -> BassSound.ofReeds(bassReeds, chordReeds));
        return fields.make(() -> new StradellaBass(rows, SingleButtons.usual(rows), geometry, sound));
    }

    private static ButtonRow row(Fields fields) {
        BassRow kind = fields.choice("row", BassRow.class);
        int first = fields.wholeNumber("firstColumn");
        int columns = fields.wholeNumber("columns");
        int shift = fields.wholeNumber("shift");
        return fields.make(() -> new ButtonRow(kind, first, columns, shift));
    }

    private static SortedSet<BassButton> buttons(Collection<Fields> list) {
        SortedSet<BassButton> buttons = new TreeSet<>();
        for (Fields fields : list) {
            BassRow row = fields.choice("row", BassRow.class);
            int column = fields.wholeNumber("column");
            if (!buttons.add(fields.make(() -> new BassButton(row, column)))) throw fields.wrong("column", "each once");
        }
        return buttons;
    }

    private static ButtonGeometry geometry(Fields fields) {
        int column = fields.wholeNumber("columnMicrons");
        int row = fields.wholeNumber("rowMicrons");
        int drift = fields.wholeNumber("driftMicrons");
        int button = fields.wholeNumber("buttonMicrons");
        Map<BassRow, ButtonGeometry.Offset> offsets = new EnumMap<>(BassRow.class);
        for (Fields offset : fields.objects("offsets")) {
            BassRow kind = offset.choice("row", BassRow.class);
            int along = offset.wholeNumber("alongMicrons");
            int across = offset.wholeNumber("acrossMicrons");
            ButtonGeometry.Offset made = offset.make(() -> new ButtonGeometry.Offset(along, across));
            if (offsets.put(kind, made) != null) throw offset.wrong("row", "each once");
        }
        boolean measured = fields.flag("measured");
        return fields.make(() -> new ButtonGeometry(column, row, drift, button, offsets, measured));
    }

    static void put(ObjectNode tree, StradellaBass bass) {
        ArrayNode rows = tree.putArray("rows");
        for (ButtonRow row : bass.rows())
            rows.addObject()
                    .put("row", Fields.word(row.row()))
                    .put("firstColumn", row.firstColumn())
                    .put("columns", row.columns())
                    .put("shift", row.shift());
        putButtons(tree.putArray("missing"), bass.singles().missing());
        putButtons(tree.putArray("broken"), bass.singles().broken());
        putButtons(tree.putArray("marked"), bass.singles().marked());
        putGeometry(tree.putObject("geometry"), bass.geometry());
        tree.put("lowestBassMidi", bass.sound().lowestBassMidi());
        tree.put("lowestChordMidi", bass.sound().lowestChordMidi());
        tree.put("reedsPerBassButton", bass.sound().reedsPerBassButton());
        tree.put("reedsPerChordButton", bass.sound().reedsPerChordButton());
    }

    private static void putButtons(ArrayNode list, Collection<BassButton> buttons) {
        for (BassButton button : buttons)
            list.addObject().put("row", Fields.word(button.row())).put("column", button.column());
    }

    private static void putGeometry(ObjectNode tree, ButtonGeometry geometry) {
        tree.put("columnMicrons", geometry.columnMicrons())
                .put("rowMicrons", geometry.rowMicrons())
                .put("driftMicrons", geometry.driftMicrons())
                .put("buttonMicrons", geometry.buttonMicrons());
        ArrayNode offsets = tree.putArray("offsets");
        geometry.offsets().forEach((row, offset) -> offsets.addObject()
                .put("row", Fields.word(row))
                .put("alongMicrons", offset.alongMicrons())
                .put("acrossMicrons", offset.acrossMicrons()));
        tree.put("measured", geometry.measured());
    }
}
