package org.mantice.app.model;

import java.util.List;
import org.mantice.plan.Obstacle;

/** How far the planning is. */
public sealed interface Answer {
    /** No tune is open. */
    record Nothing() implements Answer {}

    /**
     * Being planned.
     *
     * @param offers found so far; while a change is worked on, those of before
     * @param fresh how many of this run have been found; 0 while the offers are those of before
     */
    record Working(List<Offer> offers, int fresh, int asked) implements Answer {
        public Working {
            offers = List.copyOf(offers);
        }
    }

    /** Planned; one or more offers, in order of cost. */
    record Ready(List<Offer> offers, int asked) implements Answer {
        public Ready {
            offers = List.copyOf(offers);
        }
    }

    /** Stopped by the player; what was found by then, perhaps nothing. */
    record Stopped(List<Offer> offers) implements Answer {
        public Stopped {
            offers = List.copyOf(offers);
        }
    }

    /** Cannot be played as asked, and why; the answer of before stays in view. */
    record NotPlayable(List<Offer> before, List<Obstacle> obstacles) implements Answer {
        public NotPlayable {
            before = List.copyOf(before);
            obstacles = List.copyOf(obstacles);
        }
    }

    /**
     * Could not be planned: a rule failed, the tune is too long.
     *
     * @param ruleId the rule that failed; empty if it was none
     */
    record Failed(List<Offer> before, Throwable cause, String ruleId) implements Answer {
        public Failed {
            before = List.copyOf(before);
        }
    }

    /** The plans in view. */
    default List<Offer> offers() {
        if (this instanceof Working working) return working.offers;
        if (this instanceof Ready ready) return ready.offers;
        if (this instanceof Stopped stopped) return stopped.offers;
        if (this instanceof NotPlayable unplayable) return unplayable.before;
        if (this instanceof Failed failed) return failed.before;
        return List.of();
    }
}
