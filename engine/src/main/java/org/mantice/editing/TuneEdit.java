package org.mantice.editing;

import java.util.Optional;
import org.mantice.reading.ChordText;
import org.mantice.tune.Barlines;
import org.mantice.tune.Key;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tempo;
import org.mantice.tune.WrittenPlace;

/**
 * One change of a written tune. Places are those of the tune as written, in the key of its file; no edit moves, adds or
 * takes away a note, so places of notes stay what they are. Whether an edit fits a tune shows when it is applied.
 */
public sealed interface TuneEdit {
    /**
     * A chord symbol at a place, in place of one that stands there.
     *
     * @param text as people write it: {@code "Am7"}, {@code "D7/F#"}, {@code "N.C."}; {@code "(A7)"} may be left out, and of {@code
     *     "G (Em)"} the second is for later passes
     * @param letters what its letters mean
     */
    record SetChord(WrittenPlace place, String text, ChordText.Letters letters) implements TuneEdit {
        public SetChord {
            check(place);
            if (new ChordText(letters).read(text).isEmpty())
                throw new IllegalArgumentException(
                        "text is \"" + text + "\"; allowed: a chord symbol such as Am7, D7/F# or N.C.");
        }

        /** With letters from A to G. */
        public SetChord(WrittenPlace place, String text) {
            this(place, text, ChordText.Letters.INTERNATIONAL);
        }

        ChordText.Written written() {
            return new ChordText(letters).read(text).orElseThrow();
        }
    }

    /** The chord at a place goes to another one where none stands; it is then the player's own. */
    record MoveChord(WrittenPlace from, WrittenPlace to) implements TuneEdit {
        public MoveChord {
            check(from);
            check(to);
        }
    }

    /** The chord at a place, written or proposed, is taken away: the one before it goes on. */
    record RemoveChord(WrittenPlace place) implements TuneEdit {
        public RemoveChord {
            check(place);
        }
    }

    /**
     * Chords proposed for the melody, in place of earlier proposals. Written chords stay and hold to the end of their
     * measure; proposals fill what is left.
     */
    record ProposeChords() implements TuneEdit {}

    /** A proposed chord becomes the player's own. */
    record AcceptChord(WrittenPlace place) implements TuneEdit {
        public AcceptChord {
            check(place);
        }
    }

    /** All proposed chords become the player's own. */
    record AcceptChords() implements TuneEdit {}

    /** All proposed chords are taken away. */
    record DismissProposals() implements TuneEdit {}

    /**
     * A mark that a phrase begins at a place.
     *
     * @param begins false takes the mark away
     */
    record SetPhrase(WrittenPlace place, boolean begins) implements TuneEdit {
        public SetPhrase {
            check(place);
        }
    }

    /**
     * Repeats, endings, jumps and signs of a measure, in place of all that it has.
     *
     * @param measure index of the written measure, from 0
     */
    record SetBarlines(int measure, Barlines barlines) implements TuneEdit {
        public SetBarlines {
            check(measure);
        }
    }

    /**
     * A metronome mark at a place, in place of one that stands there.
     *
     * @param tempo empty takes the mark away
     */
    record SetTempo(WrittenPlace place, Optional<Tempo> tempo) implements TuneEdit {
        public SetTempo {
            check(place);
        }
    }

    /**
     * A key signature from a measure up to the next change of key. No note changes its pitch or its spelling.
     *
     * @param measure index of the written measure, from 0
     */
    record SetKey(int measure, Key key) implements TuneEdit {
        public SetKey {
            check(measure);
        }
    }

    private static void check(WrittenPlace place) {
        if (place.offset().isBefore(MusicalTime.ZERO))
            throw new IllegalArgumentException("offset is " + place.offset() + "; allowed: 0 or more");
    }

    private static void check(int measure) {
        if (measure < 0) throw new IllegalArgumentException("measure is " + measure + "; allowed: 0 or more");
    }
}
