package org.mantice.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.mantice.tune.Key;
import org.mantice.tune.Meter;
import org.mantice.tune.Mode;
import org.mantice.tune.MusicalTime;

/** Reads divisions, key, meter, clefs and transposition into the state of the part. */
final class AttributesReader {
    private final PartState state;
    private final List<Finding> findings;

    AttributesReader(PartState state, List<Finding> findings) {
        this.state = state;
        this.findings = findings;
    }

    /** @return what changed that can only take effect at a barline */
    List<String> read(XmlNode node) {
        List<String> changed = new ArrayList<>();
        Key key = state.writtenKey;
        Optional<Meter> meter = state.meter;
        node.child("divisions").ifPresent(this::readDivisions);
        node.children("key").filter(AttributesReader::isForTopStaff).forEach(this::readKey);
        node.children("time").filter(AttributesReader::isForTopStaff).forEach(this::readMeter);
        node.children("clef")
                .forEach(clef ->
                        state.clefs.putIfAbsent(Numbers.integer(clef.attribute("number"), 1), clef.text("sign")));
        node.children("transpose").forEach(this::readTransposition);
        node.children("measure-style")
                .flatMap(style -> style.children("measure-repeat"))
                .forEach(repeat -> state.measuresRepeated =
                        repeat.attribute("type").equals("stop") ? 0 : Math.max(1, Numbers.integer(repeat.text(), 1)));
        if (!key.equals(state.writtenKey)) changed.add("key change");
        if (!meter.equals(state.meter)) changed.add("change of meter");
        return changed;
    }

    private static boolean isForTopStaff(XmlNode node) {
        return Numbers.integer(node.attribute("number"), 1) == 1;
    }

    private void readDivisions(XmlNode node) {
        Optional<MusicalTime> count = Numbers.fraction(node.text())
                .filter(MusicalTime::isPositive)
                .filter(divisions -> divisions.numerator() <= 1_000_000 && divisions.denominator() <= 1_000);
        count.ifPresent(divisions -> {
            state.division = MusicalTime.of(divisions.denominator(), Math.multiplyExact(4, divisions.numerator()));
            state.divisionsGiven = true;
        });
    }

    private void readKey(XmlNode node) {
        if (!node.has("fifths")) {
            findings.add(Finding.of(SkippedWhat.KEY, "that is not a row of fifths"));
            return;
        }
        int fifths = Numbers.integer(node.text("fifths"), 99);
        if (Math.abs(fifths) > 7) {
            findings.add(Finding.of(SkippedWhat.KEY, "of " + node.text("fifths") + " fifths"));
            return;
        }
        state.writtenKey = new Key(fifths, mode(node.text("mode")));
    }

    private static Mode mode(String name) {
        for (Mode mode : Mode.values()) if (mode.name().equals(name.toUpperCase(Locale.ROOT))) return mode;
        return Mode.NONE;
    }

    private void readMeter(XmlNode node) {
        List<XmlNode> beats = node.children("beats").toList();
        List<XmlNode> units = node.children("beat-type").toList();
        if (node.has("senza-misura") || beats.isEmpty() || beats.get(0).text().equalsIgnoreCase("none")) {
            state.meter = Optional.of(Meter.FREE);
            return;
        }
        try {
            state.meter = Optional.of(meter(beats, units));
        } catch (IllegalArgumentException e) {
            String shown = beats.get(0).text() + "/"
                    + (units.isEmpty() ? "" : units.get(0).text());
            findings.add(Finding.of(SkippedWhat.METER, shown));
        }
    }

    /** Several fractions are brought to the smallest unit. */
    private static Meter meter(List<XmlNode> beats, List<XmlNode> units) {
        int unit = 1;
        for (XmlNode node : units) unit = Math.max(unit, whole(node.text()));
        if (beats.size() != units.size() || Integer.bitCount(unit) != 1) throw new IllegalArgumentException("meter");
        List<Integer> groups = new ArrayList<>();
        for (int i = 0; i < beats.size(); i++) {
            int own = whole(units.get(i).text());
            if (unit % own != 0) throw new IllegalArgumentException("meter");
            for (String group : beats.get(i).text().split("\\+"))
                groups.add(Math.multiplyExact(whole(group.strip()), unit / own));
        }
        return new Meter(groups, unit);
    }

    private static int whole(String text) {
        int value = Numbers.integer(text, 0);
        if (value < 1) throw new IllegalArgumentException("number");
        return value;
    }

    private void readTransposition(XmlNode node) {
        int chromatic = Numbers.integer(node.text("chromatic"), 0);
        if (Math.abs(chromatic) > 60) chromatic = 0;
        int octaves = Numbers.integer(node.text("octave-change"), 0);
        if (Math.abs(octaves) > 5) octaves = 0;
        int diatonic = Numbers.integer(node.text("diatonic"), Transposition.diatonicOf(chromatic));
        if (Math.abs(7L * chromatic - 12L * diatonic) > 20) diatonic = Transposition.diatonicOf(chromatic);
        state.transpose(Numbers.integer(node.attribute("number"), 0), Transposition.of(diatonic, chromatic, octaves));
    }
}
