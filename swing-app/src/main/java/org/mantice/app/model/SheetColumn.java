package org.mantice.app.model;

/**
 * A column of the sheet as a table.
 *
 * @param field what it tells
 * @param offer index of the plan it speaks of; -1 for what all plans share
 * @param title with the plan's letter where it speaks of one
 */
public record SheetColumn(Field field, int offer, String title) {
    /** What a column tells: first of the tune, then of a plan, last of all plans. */
    public enum Field {
        PASS,
        MEASURE,
        BEAT,
        NOTES,
        CHORD,
        FINGERS,
        HAND,
        BELLOWS,
        REGISTER,
        BUTTONS,
        JUMP,
        LOCKS,
        DIFFERENCES;

        /** Whether each plan has a column of its own. */
        public boolean isOfPlan() {
            return ordinal() >= FINGERS.ordinal() && ordinal() <= JUMP.ordinal();
        }
    }
}
