package org.mantice.app.sheet;

import java.awt.Color;

/** What a colour is for; which colour that is depends on the look in force. */
enum Ink {
    INK,
    FAINT,
    OUT,
    IN,
    ON_FAN,
    DIFFERENCE,
    LOCK,
    CAUTION,
    PLAN_0,
    PLAN_1,
    PLAN_2,
    PLAN_3;

    /** @param place among the plans compared, 0 to 3 */
    static Ink ofPlan(int place) {
        return values()[PLAN_0.ordinal() + place];
    }

    Color in(SheetColours colours) {
        return switch (this) {
            case INK -> colours.ink();
            case FAINT -> colours.faint();
            case OUT -> colours.out();
            case IN -> colours.in();
            case ON_FAN -> colours.onFan();
            case DIFFERENCE -> colours.difference();
            case LOCK -> colours.lock();
            case CAUTION -> colours.caution();
            case PLAN_0, PLAN_1, PLAN_2, PLAN_3 -> colours.plans().get(ordinal() - PLAN_0.ordinal());
        };
    }
}
