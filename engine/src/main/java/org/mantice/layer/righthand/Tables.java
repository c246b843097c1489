package org.mantice.layer.righthand;

import org.mantice.rule.Rule;

/** How costs lie in tables of whole numbers. */
final class Tables {
    /** A ban, as stored. */
    static final int BANNED = -1;

    private Tables() {}

    static int stored(long cost) {
        return cost == Rule.BAN ? BANNED : Math.toIntExact(cost);
    }
}
