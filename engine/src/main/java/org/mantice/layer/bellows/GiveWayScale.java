package org.mantice.layer.bellows;

import org.mantice.rule.GiveWay;
import org.mantice.search.ConcessionScale;

/** The order in which bans of the bellows give way, for the search: what gives way last counts most. */
final class GiveWayScale {
    static final ConcessionScale SCALE = new ConcessionScale(5);

    private GiveWayScale() {}

    /** One ban that gave way. */
    static long one(GiveWay what) {
        return SCALE.one(
                switch (what) {
                    case TURN_IN_HELD_NOTE -> 0;
                    case TURN_UNDER_SUSTAINED_CHORD -> 1;
                    case AIR_BUTTON_IN_SHORT_REST -> 2;
                    case TURN_IN_SLUR, LEGATO -> 3;
                    case COMFORTABLE_OPENING -> 4;
                });
    }
}
