package org.mantice.app.view;

import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import javax.swing.AbstractAction;
import javax.swing.JSlider;

/**
 * A slider over weights in per cent, in round steps. A key held down is one gesture, as a drag of the mouse is: the value
 * is adjusting until it is let go.
 */
final class WeightSlider extends JSlider {
    static final int MOST_PERCENT = 400;
    private static final int DRAG_STEP = 5;
    private static final int KEY_STEP = 10;
    private static final int KEY_LEAP = 50;

    WeightSlider() {
        super(0, MOST_PERCENT);
        setMajorTickSpacing(100);
        setPaintTicks(true);
        onKeys("positiveUnitIncrement", KEY_STEP);
        onKeys("negativeUnitIncrement", -KEY_STEP);
        onKeys("positiveBlockIncrement", KEY_LEAP);
        onKeys("negativeBlockIncrement", -KEY_LEAP);
        addKeyListener(new KeyAdapter() {
            @Override
            public void keyReleased(KeyEvent event) {
                setValueIsAdjusting(false);
            }
        });
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent event) {
                setValueIsAdjusting(false);
            }
        });
    }

    /** @param name of what the look's keys do */
    private void onKeys(String name, int step) {
        getActionMap().put(name, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                step(step);
            }
        });
    }

    /** To the next multiple of the step. */
    private void step(int step) {
        setValueIsAdjusting(true);
        int size = Math.abs(step);
        int from = step > 0 ? Math.floorDiv(getValue(), size) : Math.floorDiv(getValue() + size - 1, size);
        setValue((from + Integer.signum(step)) * size);
    }

    /** The value in a round number. */
    int percent() {
        return Math.round(getValue() / (float) DRAG_STEP) * DRAG_STEP;
    }
}
