package org.mantice.rule.bellows;

import java.util.ArrayList;
import java.util.List;
import org.mantice.rule.Fact;
import org.mantice.rule.Reasons;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleSet;
import org.mantice.rule.TurnPlace;
import org.mantice.rule.TurnPlace.Mark;

/**
 * How good the place of a turn is. Best where a singer breathes: at a written breath, phrase or section. Next best in a
 * rest. Failing these, before a strong beat, better where four or eight measures of the section are complete; better
 * between two separate notes; dear off the beat, dearest in a run.
 */
public final class PlaceGrade implements Rule<TurnPlace> {
    private static final RuleInfo INFO = RuleInfo.of(
            "bellows.place", RuleSet.BELLOWS_POLICY, "common practice, no source; the numbers are estimates");

    private static final long REST = 100;
    private static final long EIGHT_MEASURES = 100;
    private static final long FOUR_MEASURES = 200;
    private static final long TWO_MEASURES = 600;
    private static final long BARLINE = 1_100;
    private static final long STRONG_BEAT = 1_500;
    private static final long BEAT = 2_000;
    private static final long OFF_BEAT = 2_600;
    /** In tenths of the cost: what separates the two notes anyway. */
    private static final long SEPARATE_TENTHS = 7;
    /** In tenths: a note of two beats or more, or at least twice as long as the next, closes something. */
    private static final long LONG_NOTE_TENTHS = 6;
    /** In tenths: both notes are shorter than this. */
    private static final long RUN_TENTHS = 20;

    /** After a full stop or the like in the words; a comma takes the place of a better beat. */
    private static final long STOP = 100;

    private static final long COMMA = 600;

    private static final int RUN_MILLIS = 250;

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Class<TurnPlace> reach() {
        return TurnPlace.class;
    }

    @Override
    public long cost(TurnPlace place) {
        if (written(place)) return 0;
        if (place.mark() == Mark.STOP) return Math.min(STOP, byBeat(place));
        if (place.turnsInRest()) return Math.min(REST, byBeat(place));
        long cost = byBeat(place);
        if (separate(place)) cost = cost * SEPARATE_TENTHS / 10;
        if (afterLongNote(place)) cost = cost * LONG_NOTE_TENTHS / 10;
        if (inRun(place)) cost = cost * RUN_TENTHS / 10;
        return place.mark() == Mark.COMMA ? Math.min(COMMA, cost) : cost;
    }

    @Override
    public Reasons explain(TurnPlace place) {
        long cost = cost(place);
        if (cost == 0) return Reasons.NOTHING;
        List<Fact> facts = new ArrayList<>();
        if (place.mark() == Mark.STOP) return Reasons.of(cost, Fact.of("bellows.place.stop"));
        facts.add(Fact.of(place.turnsInRest() ? "bellows.place.rest" : position(place)));
        if (place.mark() == Mark.COMMA) facts.add(Fact.of("bellows.place.comma"));
        if (!place.turnsInRest()) {
            if (separate(place)) facts.add(Fact.of("bellows.place.separate"));
            if (afterLongNote(place)) facts.add(Fact.of("bellows.place.long-note"));
            if (inRun(place)) facts.add(Fact.of("bellows.place.run"));
        }
        return new Reasons(cost, facts);
    }

    private static boolean written(TurnPlace place) {
        return place.mark().compareTo(Mark.BREATH) >= 0;
    }

    private static long byBeat(TurnPlace place) {
        int measure = place.measureOfSection();
        if (measure >= 0 && measure % 8 == 0) return EIGHT_MEASURES;
        if (measure >= 0 && measure % 4 == 0) return FOUR_MEASURES;
        if (measure >= 0 && measure % 2 == 0) return TWO_MEASURES;
        if (measure >= 0) return BARLINE;
        return switch (place.strength()) {
            case BARLINE -> BARLINE;
            case STRONG_BEAT -> STRONG_BEAT;
            case BEAT -> BEAT;
            case OFF_BEAT -> OFF_BEAT;
        };
    }

    private static String position(TurnPlace place) {
        int measure = place.measureOfSection();
        if (measure < 0) return "bellows.place." + place.strength().name().toLowerCase(java.util.Locale.ROOT);
        return "bellows.place.measures-"
                + (measure % 8 == 0 ? "8" : measure % 4 == 0 ? "4" : measure % 2 == 0 ? "2" : "1");
    }

    private static boolean separate(TurnPlace place) {
        return place.repeatedNote() || place.detached() || place.endsSlur();
    }

    private static boolean afterLongNote(TurnPlace place) {
        return place.beforeMillis() >= 2L * place.beatMillis()
                || place.beforeMillis() >= place.beatMillis() && place.beforeMillis() >= 2L * place.afterMillis();
    }

    private static boolean inRun(TurnPlace place) {
        return !separate(place)
                && place.measureOfSection() < 0
                && place.beforeMillis() < RUN_MILLIS
                && place.afterMillis() < RUN_MILLIS;
    }
}
