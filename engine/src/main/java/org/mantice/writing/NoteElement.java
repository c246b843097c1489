package org.mantice.writing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.mantice.tune.Pitch;

/** A note element while it is put together; {@link #write} puts its parts into the order that the schema asks for. */
final class NoteElement {
    /** Marks the second and later tied notes, or rests, of one event, so that they are read back as one. */
    static final String SAME_EVENT = "same event";

    private final Optional<Pitch> pitch;
    private final int voice;
    private final int staff;
    private final List<Consumer<XmlOut>> technical = new ArrayList<>();
    private final List<Consumer<XmlOut>> articulations = new ArrayList<>();
    private final List<Consumer<XmlOut>> notations = new ArrayList<>();
    private final List<Consumer<XmlOut>> lyrics = new ArrayList<>();
    private Optional<NoteValue> value = Optional.empty();
    private Optional<Consumer<XmlOut>> grace = Optional.empty();
    private long duration;
    private boolean chord;
    private boolean wholeMeasure;
    private boolean tieStop;
    private boolean tieStart;

    /**
     * @param pitch empty for a rest
     * @param staff from 1; 0 where there is only one
     */
    NoteElement(Optional<Pitch> pitch, int voice, int staff) {
        this.pitch = pitch;
        this.voice = voice;
        this.staff = staff;
    }

    NoteElement lasting(long divisions, Optional<NoteValue> shown) {
        duration = divisions;
        value = shown;
        return this;
    }

    NoteElement restForWholeMeasure() {
        wholeMeasure = true;
        value = Optional.empty();
        return this;
    }

    /** @param after takes its time from the note before */
    NoteElement grace(boolean after) {
        grace = Optional.of(out -> {
            if (after) out.empty("grace", "steal-time-previous", "25");
            else out.empty("grace", "slash", "yes");
        });
        value = Optional.of(new NoteValue("eighth", 0, 1, 1));
        return this;
    }

    NoteElement inChord(boolean joins) {
        chord = joins;
        return this;
    }

    NoteElement tied(boolean stop, boolean start) {
        tieStop = stop;
        tieStart = start;
        return this;
    }

    NoteElement technical(Consumer<XmlOut> mark) {
        technical.add(mark);
        return this;
    }

    NoteElement articulation(Consumer<XmlOut> mark) {
        articulations.add(mark);
        return this;
    }

    NoteElement notation(Consumer<XmlOut> mark) {
        notations.add(mark);
        return this;
    }

    NoteElement lyric(Consumer<XmlOut> lyric) {
        lyrics.add(lyric);
        return this;
    }

    void write(XmlOut out) {
        out.open("note");
        grace.ifPresent(element -> element.accept(out));
        if (chord) out.empty("chord");
        writePitch(out);
        if (grace.isEmpty()) out.leaf("duration", duration);
        if (tieStop) out.empty("tie", "type", "stop");
        if (tieStart) out.empty("tie", "type", "start");
        out.leaf("voice", voice);
        value.ifPresent(shown -> {
            out.leaf("type", shown.type());
            for (int i = 0; i < shown.dots(); i++) out.empty("dot");
            if (shown.isTuplet())
                out.open("time-modification")
                        .leaf("actual-notes", shown.actual())
                        .leaf("normal-notes", shown.normal())
                        .close();
        });
        if (staff > 0) out.leaf("staff", staff);
        writeNotations(out);
        lyrics.forEach(lyric -> lyric.accept(out));
        out.close();
    }

    private void writePitch(XmlOut out) {
        if (pitch.isEmpty()) {
            out.empty("rest", "measure", wholeMeasure ? "yes" : "");
            return;
        }
        out.open("pitch").leaf("step", pitch.get().name().step().name());
        if (pitch.get().name().alter() != 0)
            out.leaf("alter", pitch.get().name().alter());
        out.leaf("octave", pitch.get().octave()).close();
    }

    private void writeNotations(XmlOut out) {
        List<Consumer<XmlOut>> all = new ArrayList<>();
        if (tieStop) all.add(each -> each.empty("tied", "type", "stop"));
        if (tieStart) all.add(each -> each.empty("tied", "type", "start"));
        all.addAll(notations);
        if (!technical.isEmpty()) all.add(group("technical", technical));
        if (!articulations.isEmpty()) all.add(group("articulations", articulations));
        if (!all.isEmpty()) group("notations", all).accept(out);
    }

    private static Consumer<XmlOut> group(String name, List<Consumer<XmlOut>> marks) {
        return out -> {
            out.open(name);
            marks.forEach(mark -> mark.accept(out));
            out.close();
        };
    }
}
