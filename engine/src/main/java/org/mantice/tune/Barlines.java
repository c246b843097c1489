package org.mantice.tune;

import java.util.List;
import java.util.Optional;

/**
 * What the barlines and signs of a measure say about the order of play.
 *
 * @param repeatStart a forward repeat at its left barline
 * @param repeatEnd how often the passage is played in all when a backward repeat stands at its right barline, 2 or
 *     more
 * @param repeatAfterJump the backward repeat is also taken after a jump: true unless the source says otherwise (MusicXML
 *     4.0, attribute after-jump, names no default); false without a repeat
 * @param endingStart numbers of the ending that begins here; empty if none does
 * @param endingStop the ending ends here
 * @param segno a segno sign at the left barline
 * @param coda a coda sign at the left barline
 * @param jump a jump at the right barline
 * @param toCoda leave for the coda at the right barline, after a jump
 * @param fine the end at the right barline, after a jump
 * @param doubleBar a double or final bar at the right barline
 */
public record Barlines(
        boolean repeatStart,
        Optional<Integer> repeatEnd,
        boolean repeatAfterJump,
        List<Integer> endingStart,
        boolean endingStop,
        boolean segno,
        boolean coda,
        Optional<Jump> jump,
        boolean toCoda,
        boolean fine,
        boolean doubleBar) {
    /** A written jump back. */
    public enum Jump {
        DA_CAPO,
        DAL_SEGNO
    }

    public static final Barlines PLAIN = new Barlines(
            false, Optional.empty(), false, List.of(), false, false, false, Optional.empty(), false, false, false);

    public Barlines {
        endingStart = endingStart.stream().sorted().distinct().toList();
        repeatAfterJump = repeatAfterJump && repeatEnd.isPresent();
        repeatEnd.ifPresent(times -> {
            if (times < 2 || times > 100)
                throw new IllegalArgumentException("repeat times is " + times + "; allowed: 2 to 100");
        });
    }
}
