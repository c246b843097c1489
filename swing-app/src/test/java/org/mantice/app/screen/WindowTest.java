package org.mantice.app.screen;

import static org.assertj.core.api.Assumptions.assumeThat;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.awt.Robot;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.function.BooleanSupplier;
import javax.imageio.ImageIO;
import org.assertj.swing.core.BasicRobot;
import org.assertj.swing.edt.FailOnThreadViolationRepaintManager;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.exception.WaitTimedOutError;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;

/** A test that opens real windows and has a robot use them. */
@Tag("gui")
public abstract class WindowTest {
    /** A hang guard. */
    private static final long PATIENCE_MILLIS = 30_000;

    protected org.assertj.swing.core.Robot robot;

    @BeforeEach
    void takeScreen() {
        assumeThat(VirtualScreen.problem()).as("a screen for windows").isEmpty();
        FailOnThreadViolationRepaintManager.install();
        robot = BasicRobot.robotWithNewAwtHierarchy();
        if (VirtualScreen.isInMemory()) {
            robot.settings().delayBetweenEvents(1);
            robot.settings().eventPostingDelay(5);
        }
    }

    @AfterEach
    void giveScreenBack() {
        if (robot != null) robot.cleanUp();
    }

    /** A key with Alt held. The screen in memory loses Alt on the way, so there the key is handed to who has the focus. */
    protected final void pressWithAlt(int key) {
        if (!VirtualScreen.isInMemory()) {
            robot.pressAndReleaseKey(key, InputEvent.ALT_MASK);
            return;
        }
        GuiActionRunner.execute(() -> {
            Component focus =
                    KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
            for (int id : new int[] {KeyEvent.KEY_PRESSED, KeyEvent.KEY_RELEASED})
                focus.dispatchEvent(new KeyEvent(
                        focus, id, System.currentTimeMillis(), InputEvent.ALT_DOWN_MASK, key, KeyEvent.CHAR_UNDEFINED));
        });
    }

    /** Waits until something is so, as seen by the event thread; events of the in-memory screen take their time. */
    protected final void until(String what, BooleanSupplier isSo) {
        try {
            Pause.pause(
                    new Condition(what) {
                        @Override
                        public boolean test() {
                            return GuiActionRunner.execute(isSo::getAsBoolean);
                        }
                    },
                    PATIENCE_MILLIS);
        } catch (WaitTimedOutError e) {
            picture("waited-in-vain-for-" + what.replaceAll("[^a-zA-Z]+", "-"));
            throw e;
        }
    }

    /** Keeps a picture of the screen where the property {@code mantice.pictures} names a folder. */
    protected final void picture(String name) {
        String folder = System.getProperty("mantice.pictures");
        if (folder == null || folder.isBlank()) return;
        robot.waitForIdle();
        try {
            Dimension screen = java.awt.Toolkit.getDefaultToolkit().getScreenSize();
            BufferedImage image = new Robot().createScreenCapture(new Rectangle(screen));
            ImageIO.write(image, "png", new File(folder, name + ".png"));
        } catch (java.awt.AWTException e) {
            throw new IllegalStateException(e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
