package org.mantice.layer.lefthand;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.mantice.instrument.BassRow;
import org.mantice.pattern.PatternChooser;
import org.mantice.pattern.PatternUse;
import org.mantice.performance.BassMoment;
import org.mantice.performance.Performance;
import org.mantice.performance.PlayedMeasure;
import org.mantice.tune.BassMarks;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.NoteName;
import org.mantice.tune.Pitch;

/**
 * The beats of a written bass staff, its rhythm as it stands. Notes shorter than a half note sound for a share of their
 * value, longer ones are held; all are let go where the next is struck.
 */
final class StaffBeats {
    /** Notes sound for a share of their length in per mille, short style; estimates. */
    private static final int BASS_SHARE = 600;

    private static final int CHORD_SHARE = 500;
    private static final int HELD_SHARE = 950;

    private StaffBeats() {}

    /** Those that the hand plays where the staff is played. */
    static List<Beat> of(Performance performance, PatternChooser patterns) {
        List<BassMoment> moments = performance.bass().stream()
                .filter(moment -> isPlayed(performance, moment, patterns))
                .toList();
        boolean marked =
                performance.bass().stream().anyMatch(moment -> !moment.marks().equals(BassMarks.NONE));
        List<Beat> beats = new ArrayList<>();
        for (int i = 0; i < moments.size(); ) {
            int end = i;
            List<Wanted.StaffPart> parts = new ArrayList<>();
            long release = moments.get(i).onsetMicros();
            MusicalTime written = MusicalTime.ZERO;
            for (;
                    end < moments.size()
                            && moments.get(end).onset().equals(moments.get(i).onset());
                    end++) {
                BassMoment moment = moments.get(end);
                List<NoteName> notes =
                        moment.pitches().stream().sorted().map(Pitch::name).toList();
                parts.add(new Wanted.StaffPart(notes, moment.chord(), row(moment, marked)));
                release = Math.max(release, releaseOf(moment));
                written = written.max(moment.duration());
            }
            if (end < moments.size())
                release = Math.min(release, moments.get(end).onsetMicros());
            BassMoment first = moments.get(i);
            beats.add(new Beat(
                    performance.measures().get(first.measure()).pass(),
                    first.measure(),
                    first.place(),
                    first.onset(),
                    first.onsetMicros(),
                    release,
                    written,
                    new Wanted.OfStaff(parts),
                    beats.size()));
            i = end;
        }
        return List.copyOf(beats);
    }

    /** Where the staff is marked for the hand, a note that is not underlined is meant on the row of basses. */
    private static Optional<BassRow> row(BassMoment moment, boolean marked) {
        if (!marked || isChord(moment)) return Optional.empty();
        return Optional.of(moment.marks().counterbass() ? BassRow.COUNTERBASS : BassRow.BASS);
    }

    /** Where the player chose a pattern the staff gives way to it. */
    private static boolean isPlayed(Performance performance, BassMoment moment, PatternChooser patterns) {
        PlayedMeasure measure = performance.measures().get(moment.measure());
        PatternUse use = patterns.at(measure.written(), measure.pass());
        if (use.why() != PatternUse.Why.WRITTEN) return false;
        return switch (use.hand()) {
            case FULL -> true;
            case BASS_ONLY -> !isChord(moment);
            case CHORDS_ONLY -> isChord(moment);
            case SILENT -> false;
        };
    }

    private static boolean isChord(BassMoment moment) {
        return moment.chord().isPresent() || moment.pitches().size() > 1;
    }

    private static long releaseOf(BassMoment moment) {
        boolean held = moment.duration().compareTo(MusicalTime.of(1, 2)) >= 0;
        int share = held ? HELD_SHARE : isChord(moment) ? CHORD_SHARE : BASS_SHARE;
        return moment.onsetMicros() + (moment.releaseMicros() - moment.onsetMicros()) * share / 1_000;
    }
}
