package org.mantice.writing;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.mantice.tune.BassEvent;
import org.mantice.tune.Key;
import org.mantice.tune.Measure;
import org.mantice.tune.Meter;
import org.mantice.tune.Mode;
import org.mantice.tune.PlacedChord;
import org.mantice.tune.Tune;

/** Writes one tune as a score of one part. */
final class ScoreWriter {
    private final Tune tune;
    private final XmlOut out = new XmlOut();
    private final List<Divisions> divisions;
    private final BarlineWriter barlines;
    private final MelodyWriter melody;
    private final BassWriter bass;
    /** Asked once, not with every measure: the answer looks at all of them. */
    private final boolean hasBassStaff;

    ScoreWriter(Tune tune) {
        this.tune = tune;
        this.divisions = Divisions.of(tune);
        this.barlines = new BarlineWriter(tune, out);
        this.hasBassStaff = tune.hasBassStaff();
        this.melody = new MelodyWriter(tune, out, hasBassStaff ? 1 : 0);
        this.bass = new BassWriter(tune, out);
    }

    byte[] write() {
        out.open("score-partwise", "version", "4.0");
        writeHead();
        out.open("part", "id", "P1");
        for (int i = 0; i < tune.measures().size(); i++) writeMeasure(i);
        return out.close().close().bytes();
    }

    private void writeHead() {
        if (!tune.title().isBlank()) out.leaf("movement-title", tune.title());
        out.open("identification").open("encoding").leaf("software", MusicXmlWriter.SOFTWARE);
        for (String element : List.of("accidental", "beam", "stem"))
            out.empty("supports", "element", element, "type", "no");
        out.close();
        tune.dance().ifPresent(dance -> out.open("miscellaneous")
                .leaf("miscellaneous-field", dance, "name", "dance")
                .close());
        out.close().open("part-list").open("score-part", "id", "P1").leaf("part-name", "Accordion");
        out.open("score-instrument", "id", "P1-I1")
                .leaf("instrument-name", "Accordion")
                .leaf("instrument-sound", "keyboard.accordion")
                .close();
        out.open("midi-instrument", "id", "P1-I1")
                .leaf("midi-channel", 1)
                .leaf("midi-program", 22)
                .close();
        out.close().close();
    }

    private void writeMeasure(int index) {
        Measure measure = tune.measure(index);
        Divisions count = divisions.get(index);
        out.open(
                "measure",
                "number",
                measure.number().isBlank() ? " " : measure.number(),
                "implicit",
                measure.pickup() ? "yes" : "");
        barlines.writeLeft(index);
        writeAttributes(index);
        barlines.writeSignsAtStart(index);
        PlacedSigns signs = new PlacedSigns(count);
        Harmonies harmonies = new Harmonies(out);
        for (PlacedChord chord : measure.chords()) signs.add(chord.offset(), offset -> harmonies.write(chord, offset));
        Directions directions = new Directions(out);
        measure.marks().forEach(mark -> signs.add(mark.offset(), offset -> directions.write(mark, offset)));
        melody.write(measure, count, signs);
        barlines.writeSignsAtEnd(index);
        List<BassEvent> next =
                index + 1 < tune.measures().size() ? tune.measure(index + 1).bass() : List.of();
        if (hasBassStaff) bass.write(measure, next, count);
        barlines.writeRight(index);
        out.close();
    }

    private void writeAttributes(int index) {
        Measure measure = tune.measure(index);
        Optional<Measure> before = index == 0 ? Optional.empty() : Optional.of(tune.measure(index - 1));
        boolean newDivisions = index == 0 || !divisions.get(index).equals(divisions.get(index - 1));
        boolean newKey = before.isEmpty() || !before.get().key().equals(measure.key());
        boolean newMeter = before.isEmpty() || !before.get().meter().equals(measure.meter());
        if (!newDivisions && !newKey && !newMeter) return;
        out.open("attributes");
        if (newDivisions) out.leaf("divisions", divisions.get(index).perQuarter());
        if (newKey) writeKey(measure.key());
        if (newMeter) writeMeter(measure.meter());
        if (index == 0) writeStaves();
        out.close();
    }

    private void writeKey(Key key) {
        out.open("key").leaf("fifths", key.fifths());
        if (key.mode() != Mode.NONE) out.leaf("mode", key.mode().name().toLowerCase(Locale.ROOT));
        out.close();
    }

    private void writeMeter(Meter meter) {
        out.open("time");
        if (meter.isFree()) out.empty("senza-misura");
        else
            out.leaf(
                            "beats",
                            String.join(
                                    "+",
                                    meter.groups().stream().map(String::valueOf).toList()))
                    .leaf("beat-type", meter.unit());
        out.close();
    }

    private void writeStaves() {
        if (hasBassStaff) out.leaf("staves", 2);
        out.open("clef", "number", hasBassStaff ? "1" : "")
                .leaf("sign", "G")
                .leaf("line", 2)
                .close();
        if (hasBassStaff)
            out.open("clef", "number", "2").leaf("sign", "F").leaf("line", 4).close();
    }
}
