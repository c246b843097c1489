package org.mantice.harmony;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import org.mantice.tune.ChordKind;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.Key;
import org.mantice.tune.Measure;
import org.mantice.tune.MelodyEvent;
import org.mantice.tune.Mode;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.NoteName;
import org.mantice.tune.PlacedChord;
import org.mantice.tune.Tune;

/**
 * Counts the beats at which proposals for a bare melody have the root and the mode (major, minor, diminished, augmented
 * triad or none) of the chords that somebody wrote. Beats before the first written chord and under "no chord" do not
 * count.
 */
final class Agreement {
    private int beats;
    private int proposed;
    private int tonicOnly;
    private int primary;

    void add(Tune written) {
        Tune proposal = ChordProposal.of(bare(written)).in(bare(written));
        Optional<ChordSymbol> theirs = Optional.empty();
        Optional<ChordSymbol> ours = Optional.empty();
        for (int i = 0; i < written.measures().size(); i++) {
            Measure measure = written.measure(i);
            ChordSymbol byBar = byBar(measure);
            for (Beats.Beat beat : Beats.of(measure).beats()) {
                theirs = at(measure, beat.start()).or(before(theirs));
                ours = at(proposal.measure(i), beat.start()).or(before(ours));
                if (theirs.isEmpty() || theirs.get().isSilent()) continue;
                beats++;
                if (ours.isPresent() && agree(theirs.get(), ours.get())) proposed++;
                if (agree(theirs.get(), triads(measure.key()).get(0))) tonicOnly++;
                if (agree(theirs.get(), byBar)) primary++;
            }
        }
    }

    private static Supplier<Optional<ChordSymbol>> before(Optional<ChordSymbol> chord) {
        return () -> chord;
    }

    double proposed() {
        return (double) proposed / beats;
    }

    double tonicOnly() {
        return (double) tonicOnly / beats;
    }

    double primary() {
        return (double) primary / beats;
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%d beats: proposal %.4f, tonic only %.4f, primary triads by bar %.4f",
                beats,
                proposed(),
                tonicOnly(),
                primary());
    }

    private static Tune bare(Tune tune) {
        return new ChordProposal(List.of()).in(tune);
    }

    /** The last chord at or before an offset. */
    private static Optional<ChordSymbol> at(Measure measure, MusicalTime offset) {
        Optional<ChordSymbol> last = Optional.empty();
        for (PlacedChord chord : measure.chords())
            if (!offset.isBefore(chord.offset())) last = Optional.of(chord.symbol());
        return last;
    }

    private static boolean agree(ChordSymbol one, ChordSymbol other) {
        return one.root().pitchClass() == other.root().pitchClass()
                && triad(one).equals(triad(other));
    }

    private static List<Integer> triad(ChordSymbol symbol) {
        List<Integer> tones = symbol.kind().intervals();
        if (tones.contains(4)) return List.of(4, tones.contains(8) ? 8 : 7);
        if (tones.contains(3)) return List.of(3, tones.contains(6) ? 6 : 7);
        return List.of();
    }

    /** Tonic, dominant and subdominant, a minor key's dominant in major. */
    private static List<ChordSymbol> triads(Key key) {
        boolean minor = key.mode() == Mode.MINOR || key.mode() == Mode.AEOLIAN || key.mode() == Mode.DORIAN;
        ChordKind kind = minor ? ChordKind.MINOR : ChordKind.MAJOR;
        int tonic = key.tonic().fifths();
        return List.of(
                ChordSymbol.of(NoteName.ofFifths(tonic), kind),
                ChordSymbol.of(NoteName.ofFifths(tonic + 1), ChordKind.MAJOR),
                ChordSymbol.of(NoteName.ofFifths(tonic - 1), kind));
    }

    /** The primary triad with the longest time of melody notes of its own; of equal ones the first. */
    private static ChordSymbol byBar(Measure measure) {
        List<ChordSymbol> triads = new ArrayList<>(triads(measure.key()));
        ChordSymbol best = triads.get(0);
        for (ChordSymbol triad : triads) if (time(measure, best).isBefore(time(measure, triad))) best = triad;
        return best;
    }

    private static MusicalTime time(Measure measure, ChordSymbol chord) {
        MusicalTime time = MusicalTime.ZERO;
        for (MelodyEvent event : measure.melody())
            if (event.notes().stream().anyMatch(note -> chord.pitchClasses()
                    .contains(note.pitch().name().pitchClass()))) time = time.plus(event.duration());
        return time;
    }
}
