package org.mantice.writing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.mantice.tune.MusicalTime;

/**
 * What is written of an event as one note: all of it, or one of several tied notes.
 *
 * @param event number of the event in its voice
 * @param value empty where no note value shows the length
 * @param tupletStart a tuplet's bracket begins here
 * @param tupletStop a tuplet's bracket ends here
 */
record Piece(
        int event,
        MusicalTime offset,
        MusicalTime length,
        Optional<NoteValue> value,
        boolean first,
        boolean last,
        boolean tupletStart,
        boolean tupletStop) {
    /** Where an event lies in its measure. */
    record Span(MusicalTime offset, MusicalTime length) {}

    /** The pieces of the events of one voice in one measure. */
    static List<Piece> of(List<Span> events) {
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < events.size(); i++) {
            List<NoteValue.Stretch> stretches = NoteValue.of(events.get(i).length());
            MusicalTime offset = events.get(i).offset();
            for (int j = 0; j < stretches.size(); j++) {
                NoteValue.Stretch stretch = stretches.get(j);
                boolean last = j + 1 == stretches.size();
                pieces.add(new Piece(i, offset, stretch.length(), stretch.value(), j == 0, last, false, false));
                offset = offset.plus(stretch.length());
            }
        }
        bracket(pieces);
        return pieces;
    }

    /** The one event of a voice in one piece, whatever its length. */
    static Piece whole(Span event) {
        return new Piece(0, event.offset(), event.length(), Optional.empty(), true, true, false, false);
    }

    /** A bracket spans neighbours of one ratio, as few as together last a plain time. */
    private static void bracket(List<Piece> pieces) {
        int start = 0;
        while (start < pieces.size()) {
            if (!pieces.get(start).isTuplet()) {
                start++;
                continue;
            }
            int end = start;
            MusicalTime sum = pieces.get(start).length;
            while (!isPlain(sum)
                    && end + 1 < pieces.size()
                    && pieces.get(end + 1).goesOn(pieces.get(end))) {
                end++;
                sum = sum.plus(pieces.get(end).length);
            }
            pieces.set(start, pieces.get(start).bracketed(true, false));
            pieces.set(end, pieces.get(end).bracketed(false, true));
            start = end + 1;
        }
    }

    private boolean isTuplet() {
        return value.filter(NoteValue::isTuplet).isPresent();
    }

    private static boolean isPlain(MusicalTime time) {
        return Long.bitCount(time.denominator()) == 1;
    }

    private boolean goesOn(Piece before) {
        return offset.equals(before.offset.plus(before.length))
                && isTuplet()
                && value.orElseThrow().actual() == before.value.orElseThrow().actual();
    }

    private Piece bracketed(boolean starts, boolean stops) {
        return new Piece(event, offset, length, value, first, last, tupletStart || starts, tupletStop || stops);
    }
}
