package org.mantice.writing;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.mantice.fault.FilePlace;
import org.mantice.tune.Articulation;
import org.mantice.tune.BellowsEffect;
import org.mantice.tune.EventMarks;
import org.mantice.tune.GraceGroup;
import org.mantice.tune.Measure;
import org.mantice.tune.MelodyEvent;
import org.mantice.tune.MelodyNote;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Pitch;
import org.mantice.tune.Tune;

/** Writes the melody, measure by measure, in the first voice. */
final class MelodyWriter {
    private static final int VOICE = 1;

    private final Tune tune;
    private final XmlOut out;
    private final int staff;
    private final SlurNumbers slurs = new SlurNumbers();
    private final Syllables syllables = new Syllables();

    /** @param staff 1, or 0 where there is only one */
    MelodyWriter(Tune tune, XmlOut out, int staff) {
        this.tune = tune;
        this.out = out;
        this.staff = staff;
    }

    /** Writes the measure from its start to its end, with its signs. */
    void write(Measure measure, Divisions divisions, PlacedSigns signs) {
        List<MelodyEvent> events = measure.melody();
        MusicalTime position = MusicalTime.ZERO;
        boolean wholeRest = events.size() == 1
                && events.get(0).isRest()
                && events.get(0).duration().equals(measure.length());
        List<Piece.Span> spans = events.stream()
                .map(event -> new Piece.Span(event.offset(), event.duration()))
                .toList();
        for (Piece piece : wholeRest ? List.of(Piece.whole(spans.get(0))) : Piece.of(spans)) {
            position = goOn(position, piece.offset(), divisions, signs);
            MelodyEvent event = events.get(piece.event());
            position = piece.offset().plus(piece.length());
            signs.writeUntil(position, piece.offset());
            writePiece(measure, event, piece, divisions, wholeRest);
        }
        position = goOn(position, measure.length(), divisions, signs);
        signs.writeRest(position);
    }

    /** Time without events is passed over, which leaves it empty. */
    private MusicalTime goOn(MusicalTime from, MusicalTime to, Divisions divisions, PlacedSigns signs) {
        if (!from.isBefore(to)) return from;
        signs.writeUntil(to, from);
        out.open("forward").leaf("duration", divisions.in(to.minus(from))).leaf("voice", VOICE);
        if (staff > 0) out.leaf("staff", staff);
        out.close();
        return to;
    }

    private void writePiece(
            Measure measure, MelodyEvent event, Piece piece, Divisions divisions, boolean wholeMeasure) {
        FilePlace place = TuneWriteException.place(tune, measure);
        if (piece.first()) writeGraces(place, event.graces(), false);
        for (int i = 0; i < Math.max(1, event.notes().size()); i++) {
            Optional<MelodyNote> note = event.isRest()
                    ? Optional.empty()
                    : Optional.of(event.notes().get(i));
            NoteElement element = element(place, note.map(MelodyNote::pitch))
                    .inChord(i > 0)
                    .lasting(divisions.in(piece.length()), piece.value());
            if (wholeMeasure) element.restForWholeMeasure();
            note.ifPresent(it -> element.tied(!piece.first() || it.tiedBack(), !piece.last() || it.tiedForward()));
            if (piece.first()) note.ifPresent(it -> addFingers(element, it));
            if (i == 0) addMarks(element, event.marks(), piece);
            if (!piece.first())
                element.notation(each ->
                        each.leaf("other-notation", NoteElement.SAME_EVENT, "type", "single", "print-object", "no"));
            element.write(out);
        }
        if (piece.last()) writeGraces(place, event.after(), true);
    }

    private NoteElement element(FilePlace place, Optional<Pitch> pitch) {
        pitch.filter(it -> it.octave() < 0 || it.octave() > 9).ifPresent(it -> {
            throw TuneWriteException.pitch(place, it.toString());
        });
        return new NoteElement(pitch, VOICE, staff);
    }

    private void writeGraces(FilePlace place, GraceGroup group, boolean after) {
        for (List<MelodyNote> together : group.notes())
            for (int i = 0; i < together.size(); i++) {
                MelodyNote note = together.get(i);
                NoteElement element = element(place, Optional.of(note.pitch()))
                        .grace(after)
                        .inChord(i > 0)
                        .tied(note.tiedBack(), note.tiedForward());
                addFingers(element, note);
                element.write(out);
            }
    }

    private static void addFingers(NoteElement element, MelodyNote note) {
        for (int i = 0; i < note.fingers().size(); i++) {
            String finger = String.valueOf(note.fingers().get(i));
            String substitution = i > 0 ? "yes" : "";
            element.technical(each -> each.leaf("fingering", finger, "substitution", substitution));
        }
    }

    private void addMarks(NoteElement element, EventMarks marks, Piece piece) {
        if (piece.last())
            for (int number : slurs.stop(marks.slurStops()))
                element.notation(each -> each.empty("slur", "type", "stop", "number", String.valueOf(number)));
        if (piece.first())
            for (int number : slurs.start(marks.slurStarts()))
                element.notation(each -> each.empty("slur", "type", "start", "number", String.valueOf(number)));
        if (piece.tupletStart()) element.notation(each -> each.empty("tuplet", "type", "start", "bracket", "yes"));
        if (piece.tupletStop()) element.notation(each -> each.empty("tuplet", "type", "stop"));
        if (piece.first()) addFirstMarks(element, marks);
        if (piece.last()) addLastMarks(element, marks);
    }

    private void addFirstMarks(NoteElement element, EventMarks marks) {
        marks.bellowsEffect()
                .ifPresent(effect -> element.technical(each ->
                        each.leaf("other-technical", effect == BellowsEffect.SHAKE ? "bellows shake" : "ricochet")));
        for (Articulation articulation : marks.articulations()) {
            String name = articulation.name().toLowerCase(Locale.ROOT).replace('_', '-');
            element.articulation(each -> each.empty(name));
        }
        marks.lyrics().stream()
                .filter(lyric -> !lyric.text().isBlank())
                .forEach(lyric -> element.lyric(each -> syllables.write(each, lyric)));
    }

    private static void addLastMarks(NoteElement element, EventMarks marks) {
        if (marks.breathAfter()) element.articulation(each -> each.empty("breath-mark"));
        if (marks.fermata()) element.notation(each -> each.empty("fermata"));
    }
}
