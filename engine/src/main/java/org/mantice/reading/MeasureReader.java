package org.mantice.reading;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.mantice.tune.Key;
import org.mantice.tune.Meter;
import org.mantice.tune.MusicalTime;

/**
 * Reads one measure of one part: follows the position through notes, backups and forwards, and sorts what it meets.
 * Positions are kept twice, as the file counts them and as the note values mean them, because a file whose divisions
 * cannot express a triplet rounds it.
 */
final class MeasureReader {
    private final PartState state;
    private final int index;
    private final String number;
    private final boolean implicit;
    private final List<ScoreNote> notes = new ArrayList<>();
    private final List<ScoreChord> chords = new ArrayList<>();
    private final List<ScoreChord> waitingChords = new ArrayList<>();
    private final List<ScoreSign> signs = new ArrayList<>();
    private final List<ScoreBarline> barlines = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private final Map<MusicalTime, MusicalTime> exactByCounted = new TreeMap<>();
    private final Map<String, MusicalTime> lateChanges = new LinkedHashMap<>();
    private MusicalTime counted = MusicalTime.ZERO;
    private MusicalTime position = MusicalTime.ZERO;
    private MusicalTime chordOnset = MusicalTime.ZERO;
    private MusicalTime end = MusicalTime.ZERO;
    private Optional<ScoreChord> anticipated = Optional.empty();
    private int run;

    MeasureReader(PartState state, int index, String number, boolean implicit) {
        this.state = state;
        this.index = index;
        this.number = number;
        this.implicit = implicit;
    }

    ScoreMeasure read(XmlNode block) {
        readLeadingAttributes(block);
        Key key = state.transposition(1).of(state.writtenKey);
        Optional<Meter> meter = state.meter;
        boolean leading = true;
        for (XmlNode child : block.children()) {
            if (child.is("note") || child.is("forward") || child.is("backup")) leading = false;
            if (!leading || !child.is("attributes")) readChild(child);
        }
        placeWaitingChords(MusicalTime.ZERO);
        lateChanges.forEach((what, at) -> {
            if (at.isBefore(end)) findings.add(Finding.of(SkippedWhat.CHANGE_IN_MEASURE, what));
        });
        return new ScoreMeasure(
                index,
                number,
                implicit,
                key,
                meter,
                end,
                List.copyOf(notes),
                List.copyOf(chords),
                List.copyOf(signs),
                List.copyOf(barlines),
                Map.copyOf(state.clefs),
                state.measuresRepeated,
                List.copyOf(findings));
    }

    private void readLeadingAttributes(XmlNode block) {
        for (XmlNode child : block.children()) {
            if (child.is("note") || child.is("forward") || child.is("backup")) return;
            if (child.is("attributes")) readAttributes(child);
        }
    }

    private void readChild(XmlNode child) {
        switch (child.name()) {
            case "note" -> readNote(child);
            case "backup" -> move(lengthOf(child).times(-1));
            case "forward" -> {
                move(lengthOf(child));
                end = end.max(position);
            }
            case "attributes" -> readAttributes(child);
            case "harmony" -> readHarmony(child);
            case "direction" ->
                signs.addAll(new DirectionReader(placeOf(child), staffOf(child), state.verbatim).read(child));
            case "sound" -> signs.addAll(new DirectionReader(placeOf(child), 1, state.verbatim).readSound(child));
            case "barline" -> barlines.add(BarlineReader.read(child, position));
            case "figured-bass" ->
                signs.add(new ScoreSign.Unused(position, Finding.of(SkippedWhat.DIRECTION, "figured bass")));
            default -> {} // layout and links
        }
    }

    private void readAttributes(XmlNode node) {
        List<String> changed = new AttributesReader(state, findings).read(node);
        if (position.isPositive()) changed.forEach(what -> lateChanges.put(what, position));
    }

    private void readNote(XmlNode node) {
        if (node.has("grace") || node.has("cue") && !node.has("duration")) {
            keep(node, node.has("chord") ? chordOnset : position, MusicalTime.ZERO, new ArrayList<>());
            if (!node.has("chord")) chordOnset = position;
            return;
        }
        List<Finding> about = new ArrayList<>();
        NoteLength length = NoteLength.of(node, state, about);
        if (node.has("chord")) {
            keep(node, chordOnset, length.exact(), about);
            return;
        }
        chordOnset = position;
        placeWaitingChords(length.exact());
        keep(node, position, length.exact(), about);
        counted = counted.plus(length.counted());
        position = position.plus(length.exact());
        exactByCounted.put(counted, position);
        if (!notes.get(notes.size() - 1).kind().equals(ScoreNote.Kind.MEASURE_REST)) end = end.max(position);
    }

    private void keep(XmlNode node, MusicalTime onset, MusicalTime duration, List<Finding> about) {
        notes.add(new NoteReader(state, run, about).read(node, onset, duration));
    }

    private MusicalTime lengthOf(XmlNode node) {
        Optional<MusicalTime> length =
                Numbers.fraction(node.text("duration")).map(count -> count.times(state.division));
        if (length.isEmpty()) findings.add(Finding.of(SkippedWhat.DIRECTION, node.name() + " without a length"));
        return length.orElse(MusicalTime.ZERO);
    }

    private void move(MusicalTime by) {
        counted = counted.plus(by).max(MusicalTime.ZERO);
        position = exactByCounted.getOrDefault(counted, counted);
        chordOnset = position;
        if (by.numerator() < 0) {
            run++;
            placeWaitingChords(MusicalTime.ZERO);
        }
    }

    private void readHarmony(XmlNode node) {
        MusicalTime at = placeOf(node);
        boolean placed = !at.equals(position) || node.has("offset");
        HarmonyReader reader = new HarmonyReader(state, staffOf(node), at, placed);
        waitingChords.addAll(reader.read(node));
        reader.unreadable().forEach(finding -> signs.add(new ScoreSign.Unused(at, finding)));
    }

    /**
     * Several chord symbols in a row before one note change during the note: they share it evenly. Where the last of
     * them comes again at the next note, it only anticipated that one and is dropped.
     */
    private void placeWaitingChords(MusicalTime noteLength) {
        List<ScoreChord> here = waitingChords;
        if (!here.isEmpty() && anticipated.isPresent()) {
            if (anticipated.get().symbol().equals(here.get(0).symbol())) chords.remove(anticipated.get());
            anticipated = Optional.empty();
        }
        long changes = here.stream().filter(MeasureReader::isChange).count();
        boolean spread = !state.verbatim
                && changes > 1
                && noteLength.isPositive()
                && here.stream().noneMatch(ScoreChord::placed)
                && here.stream().allMatch(chord -> chord.onset().equals(position));
        if (spread) spreadWaitingChords(noteLength.dividedBy(changes));
        else chords.addAll(here);
        here.clear();
    }

    /** An alternate stands where the chord before it does. */
    private void spreadWaitingChords(MusicalTime each) {
        MusicalTime at = position;
        for (int i = 0; i < waitingChords.size(); i++) {
            if (i > 0 && isChange(waitingChords.get(i))) at = at.plus(each);
            chords.add(waitingChords.get(i).at(at));
        }
        findings.add(Finding.of(SkippedWhat.CHORDS_SPREAD));
        ScoreChord last = chords.get(chords.size() - 1);
        if (isChange(last)) anticipated = Optional.of(last);
    }

    private static boolean isChange(ScoreChord chord) {
        return !chord.manner().alternate();
    }

    /** The position moved by the element's own offset, not before the measure's start. */
    private MusicalTime placeOf(XmlNode node) {
        MusicalTime by = Numbers.fraction(node.text("offset"))
                .map(count -> count.times(state.division))
                .orElse(MusicalTime.ZERO);
        return position.plus(by).max(MusicalTime.ZERO);
    }

    static int staffOf(XmlNode node) {
        int staff = Numbers.integer(node.text("staff"), 1);
        return staff < 1 || staff > 100 ? 1 : staff;
    }
}
