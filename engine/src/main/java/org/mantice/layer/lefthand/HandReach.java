package org.mantice.layer.lefthand;

import java.util.ArrayList;
import java.util.List;
import org.mantice.instrument.BassButton;
import org.mantice.instrument.StradellaBass;

/**
 * How fingers can lie on buttons that are pressed together. With the fourth finger's place given, each finger reaches
 * so far up and down; the fourth plays its own column only, and fingers do not cross.
 */
final class HandReach {
    /** Least and most reach of fingers 2 to 5 in hundredths of a column; estimates. */
    private static final int[][] REACH = {{40, 400}, {20, 215}, {-60, 100}, {-200, -30}};
    /** Order in which fingers are tried: it breaks ties. */
    private static final int[] FINGERS = {4, 3, 2, 5};

    private static final int COLUMNS_BELOW = 4;
    private static final int COLUMNS_ABOVE = 2;

    private final StradellaBass layout;

    HandReach(StradellaBass layout) {
        this.layout = layout;
    }

    /** @param fingers for each button, 2 to 5 */
    record Placement(List<Integer> fingers, int handColumn, List<Integer> offsets) {
        Placement {
            fingers = List.copyOf(fingers);
            offsets = List.copyOf(offsets);
        }
    }

    /** Every placement, those with the hand nearest the lowest button first; empty where the stretch is too wide. */
    List<Placement> placements(List<BassButton> buttons) {
        int lowest = buttons.stream().mapToInt(layout::place).min().orElseThrow();
        int highest = buttons.stream().mapToInt(layout::place).max().orElseThrow();
        List<Placement> found = new ArrayList<>();
        place(buttons, lowest, new ArrayList<>(), found);
        for (int away = 1; away <= highest - lowest + COLUMNS_BELOW; away++) {
            if (away <= COLUMNS_BELOW) place(buttons, lowest - away, new ArrayList<>(), found);
            if (away <= highest - lowest + COLUMNS_ABOVE) place(buttons, lowest + away, new ArrayList<>(), found);
        }
        return found;
    }

    private void place(List<BassButton> buttons, int hand, List<Integer> fingers, List<Placement> found) {
        if (fingers.size() == buttons.size()) {
            found.add(new Placement(
                    fingers,
                    hand,
                    buttons.stream().map(button -> offset(button, hand)).toList()));
            return;
        }
        BassButton next = buttons.get(fingers.size());
        for (int finger : FINGERS) {
            if (!reaches(finger, next, hand) || !fits(buttons, hand, fingers, finger)) continue;
            fingers.add(finger);
            place(buttons, hand, fingers, found);
            fingers.remove(fingers.size() - 1);
        }
    }

    private boolean reaches(int finger, BassButton button, int hand) {
        if (finger == 4 && layout.place(button) != hand) return false;
        int offset = offset(button, hand);
        return offset >= REACH[finger - 2][0] && offset <= REACH[finger - 2][1];
    }

    /** Whether the next finger is free and lies on its own side of those placed. */
    private boolean fits(List<BassButton> buttons, int hand, List<Integer> fingers, int finger) {
        int offset = offset(buttons.get(fingers.size()), hand);
        for (int i = 0; i < fingers.size(); i++) {
            int side = Integer.compare(fingers.get(i), finger);
            if (side == 0 || side != Integer.compare(offset, offset(buttons.get(i), hand))) return false;
        }
        return true;
    }

    /** Hundredths of a column from the fourth finger's place on the bass row up to a button, rounded down. */
    int offset(BassButton button, int hand) {
        return Math.floorDiv(
                100 * (layout.alongMicrons(button) - layout.bassRowMicrons(hand)),
                layout.geometry().columnMicrons());
    }
}
