package org.mantice.writing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.mantice.tune.BassEvent;
import org.mantice.tune.BassLetters;
import org.mantice.tune.Measure;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Pitch;
import org.mantice.tune.Tune;

/**
 * Writes the bass on the second staff. What sounds together in different lengths goes into as many voices as it needs;
 * the letter of a chord button stands under its note, as a lyric, because a direction would belong to a place and not to
 * one of two notes struck there; where it only repeats the letter before it is there without being printed. Under a
 * counterbass stands the note's name underlined.
 */
final class BassWriter {
    private static final int FIRST_VOICE = 5;
    private static final int STAFF = 2;

    private final Tune tune;
    private final XmlOut out;
    private final BassLetters letters = new BassLetters();
    private final Set<BassEvent> unprinted = Collections.newSetFromMap(new IdentityHashMap<>());

    BassWriter(Tune tune, XmlOut out) {
        this.tune = tune;
        this.out = out;
    }

    /** @param next what follows in the next measure */
    void write(Measure measure, List<BassEvent> next, Divisions divisions) {
        List<Boolean> printed = letters.next(measure.bass());
        for (int i = 0; i < printed.size(); i++)
            if (!printed.get(i)) unprinted.add(measure.bass().get(i));
        List<List<BassEvent>> voices = voices(measure.bass());
        MusicalTime position = measure.length();
        for (int i = 0; i < voices.size(); i++) {
            out.open("backup").leaf("duration", divisions.in(position)).close();
            position = writeVoice(measure, voices.get(i), next, divisions, FIRST_VOICE + i);
        }
    }

    /** Each event in the first voice that is free at its place, so that order is kept where places are equal. */
    private static List<List<BassEvent>> voices(List<BassEvent> events) {
        List<List<BassEvent>> voices = new ArrayList<>();
        for (BassEvent event : events) {
            List<BassEvent> free = voices.stream()
                    .filter(voice -> !event.offset().isBefore(end(voice.get(voice.size() - 1))))
                    .findFirst()
                    .orElseGet(() -> {
                        voices.add(new ArrayList<>());
                        return voices.get(voices.size() - 1);
                    });
            free.add(event);
        }
        return voices;
    }

    private static MusicalTime end(BassEvent event) {
        return event.offset().plus(event.duration());
    }

    private MusicalTime writeVoice(
            Measure measure, List<BassEvent> events, List<BassEvent> next, Divisions divisions, int voice) {
        MusicalTime position = MusicalTime.ZERO;
        for (Piece piece : Piece.of(events.stream()
                .map(event -> new Piece.Span(event.offset(), event.duration()))
                .toList())) {
            if (position.isBefore(piece.offset()))
                out.open("forward")
                        .leaf("duration", divisions.in(piece.offset().minus(position)))
                        .leaf("voice", voice)
                        .leaf("staff", STAFF)
                        .close();
            BassEvent event = events.get(piece.event());
            for (int i = 0; i < Math.max(1, event.pitches().size()); i++)
                element(measure, event, i, voice, piece, next)
                        .lasting(divisions.in(piece.length()), piece.value())
                        .write(out);
            position = piece.offset().plus(piece.length());
        }
        return position;
    }

    private NoteElement element(
            Measure measure, BassEvent event, int index, int voice, Piece piece, List<BassEvent> next) {
        Optional<Pitch> pitch = event.pitches().isEmpty()
                ? Optional.empty()
                : Optional.of(event.pitches().get(index));
        pitch.filter(it -> it.octave() < 0 || it.octave() > 9).ifPresent(it -> {
            throw TuneWriteException.pitch(TuneWriteException.place(tune, measure), it.toString());
        });
        NoteElement element = new NoteElement(pitch, voice, STAFF).inChord(index > 0);
        if (pitch.isPresent())
            element.tied(
                    !piece.first() || event.tiedBack(), !piece.last() || isHeld(measure, event, pitch.get(), next));
        if (!piece.first())
            element.notation(each ->
                    each.leaf("other-notation", NoteElement.SAME_EVENT, "type", "single", "print-object", "no"));
        if (index > 0) return element;
        if (piece.tupletStart()) element.notation(each -> each.empty("tuplet", "type", "start", "bracket", "yes"));
        if (piece.tupletStop()) element.notation(each -> each.empty("tuplet", "type", "stop"));
        if (piece.first()) write(element, event);
        return element;
    }

    private void write(NoteElement element, BassEvent event) {
        event.marks().finger().ifPresent(finger -> element.technical(each -> each.leaf("fingering", finger)));
        String print = unprinted.contains(event) ? "no" : "";
        event.chord()
                .ifPresent(type -> element.lyric(each -> each.open("lyric", "print-object", print)
                        .leaf("text", type.letter())
                        .close()));
        if (event.marks().counterbass())
            element.lyric(each -> each.open("lyric")
                    .leaf("text", event.pitches().get(0).name().toString(), "underline", "1")
                    .close());
    }

    private static boolean isHeld(Measure measure, BassEvent event, Pitch pitch, List<BassEvent> next) {
        boolean atEnd = end(event).equals(measure.length());
        MusicalTime place = atEnd ? MusicalTime.ZERO : end(event);
        return (atEnd ? next : measure.bass())
                .stream()
                        .anyMatch(other -> other.tiedBack()
                                && other.offset().equals(place)
                                && other.pitches().contains(pitch));
    }
}
