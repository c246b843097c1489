package org.mantice.layer.lefthand;

import java.util.ArrayList;
import java.util.List;
import org.mantice.performance.BassMoment;
import org.mantice.performance.Performance;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.NoteName;
import org.mantice.tune.Pitch;

/**
 * The beats of a written bass staff, its rhythm as it stands. Notes shorter than a half note sound for the share that
 * they have in patterns, longer ones are held; all are let go where the next is struck.
 */
final class StaffBeats {
    private StaffBeats() {}

    static List<Beat> of(Performance performance) {
        List<BassMoment> moments = performance.bass();
        List<Beat> beats = new ArrayList<>();
        for (int i = 0; i < moments.size(); ) {
            int end = i;
            List<Wanted.StaffPart> parts = new ArrayList<>();
            long release = moments.get(i).onsetMicros();
            for (;
                    end < moments.size()
                            && moments.get(end).onset().equals(moments.get(i).onset());
                    end++) {
                BassMoment moment = moments.get(end);
                List<NoteName> notes =
                        moment.pitches().stream().sorted().map(Pitch::name).toList();
                parts.add(new Wanted.StaffPart(notes, moment.chord()));
                release = Math.max(release, releaseOf(moment));
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
                    new Wanted.OfStaff(parts),
                    beats.size()));
            i = end;
        }
        return List.copyOf(beats);
    }

    private static long releaseOf(BassMoment moment) {
        boolean held = moment.duration().compareTo(MusicalTime.of(1, 2)) >= 0;
        boolean chord = moment.chord().isPresent() || moment.pitches().size() > 1;
        int share = held ? PatternBeats.HELD_SHARE : chord ? PatternBeats.CHORD_SHARE : PatternBeats.BASS_SHARE;
        return moment.onsetMicros() + (moment.releaseMicros() - moment.onsetMicros()) * share / 1_000;
    }
}
