package org.mantice.tune;

/**
 * A written note with its octave; sounding pitch once the reader has applied a part's transposition.
 *
 * @param octave scientific: middle C is octave 4
 */
public record Pitch(NoteName name, int octave) implements Comparable<Pitch> {
    public static Pitch of(Step step, int alter, int octave) {
        return new Pitch(new NoteName(step, alter), octave);
    }

    /** MIDI number, C4 = 60. */
    public int midi() {
        return 12 * (octave + 1) + name.step().semitone() + name.alter();
    }

    @Override
    public int compareTo(Pitch other) {
        int byMidi = Integer.compare(midi(), other.midi());
        return byMidi != 0 ? byMidi : toString().compareTo(other.toString());
    }

    /** As {@code "F#4"}. */
    @Override
    public String toString() {
        return name.toString() + octave;
    }
}
