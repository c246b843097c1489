package org.mantice.app.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.KeyboardFocusManager;
import java.awt.Point;
import java.awt.Window;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import javax.accessibility.Accessible;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JFileChooser;
import javax.swing.JFrame;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import org.assertj.swing.core.GenericTypeMatcher;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.FrameFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.mantice.app.Main;
import org.mantice.app.model.Answer;
import org.mantice.app.model.PlannerState;
import org.mantice.app.screen.VirtualScreen;
import org.mantice.app.screen.WindowTest;
import org.mantice.app.work.AppFolder;
import org.mantice.performance.Places;
import org.mantice.plan.Lock;
import org.mantice.plugin.Packs;
import org.mantice.tune.Tune;

/**
 * The main job in a real window: open a tune, pick accordion and tempo, compare, step through differences, ask why, take
 * another finger, undo and redo, choose, export. What is exported must be what the command line writes for the same
 * choice.
 */
abstract class MainJob extends WindowTest {
    static final String TUNE = "the-rusty-gate.musicxml";

    /** More steps of the tabulator than this reach nothing. */
    private static final int MOST_STEPS = 60;

    @TempDir
    Path folder;

    FrameFixture window;
    private MainWindow frame;
    private Thread app;

    @BeforeEach
    void startApp() throws IOException {
        try (InputStream in = MainJob.class.getResourceAsStream("/examples/tunes/" + TUNE)) {
            Files.copy(in, folder.resolve(TUNE));
        }
        WindowStart start = new WindowStart(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Packs.ofClassPath(),
                Optional.of(Locale.ENGLISH),
                Optional.of(false));
        app = new Thread(() -> run(start), "app under test");
        app.start();
        window = WindowFinder.findFrame(JFrame.class).withTimeout(30_000).using(robot);
        frame = (MainWindow) window.target();
        ready("the shipped example is planned");
    }

    private void run(WindowStart start) {
        try {
            AppMain.run(start, told -> new AppFolder(folder.resolve("settings"), folder.resolve("state"), told));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @AfterEach
    void closeApp() throws InterruptedException {
        GuiActionRunner.execute(() -> {
            frame.model().saved();
            frame.quit();
        });
        app.join(20_000);
        assertThat(app.isAlive()).as("the app has ended").isFalse();
    }

    PlannerState state() {
        return GuiActionRunner.execute(() -> frame.model().state());
    }

    void ready(String what) {
        until(what, () -> frame.model().state().answer() instanceof Answer.Ready);
    }

    void tuneIsOpen(String title) {
        until(
                title + " is planned",
                () -> frame.model().state().answer() instanceof Answer.Ready
                        && frame.model()
                                .state()
                                .tune()
                                .orElseThrow()
                                .read()
                                .tune()
                                .title()
                                .equals(title));
    }

    /** Replaces what stands in a field that has the focus. */
    void type(JTextComponent field, String text) {
        // A spinner's field selects or deselects by itself a moment after it got the focus.
        robot.waitForIdle();
        press(KeyEvent.VK_A, InputEvent.CTRL_MASK);
        until(
                "all is selected",
                () -> field.getText().isEmpty() || field.getText().equals(field.getSelectedText()));
        robot.enterText(text);
        until(text + " is typed", () -> field.getText().equals(text));
    }

    /** The screen in memory has no window manager to give the focus back when a dialog closes: its title bar is touched. */
    void takeFocusBack() {
        if (VirtualScreen.isInMemory()) robot.click(frame, new Point(frame.getWidth() / 2, frame.getInsets().top / 4));
        until("the window has the focus", frame::isFocused);
    }

    /** @param modifiers the old masks, which the robot wants */
    void press(int key, int... modifiers) {
        robot.pressAndReleaseKey(key, modifiers);
        robot.waitForIdle();
    }

    <T extends JComponent> T named(Class<T> type, String name) {
        return robot.finder().find(window.target(), new GenericTypeMatcher<T>(type, true) {
            @Override
            protected boolean isMatching(T component) {
                return name.equals(component.getAccessibleContext().getAccessibleName());
            }
        });
    }

    Path tune() {
        return folder.resolve(TUNE);
    }

    /** What the command line writes for the plan chosen in the window. */
    byte[] fromCommandLine(PlannerState state, String accordion, String tempo) throws IOException {
        Path out = Files.createDirectory(folder.resolve("cli"));
        List<String> call = new ArrayList<>(List.of(
                "plan",
                tune().toString(),
                "--accordion",
                accordion,
                "--tempo",
                tempo,
                "--alternatives",
                "4",
                "--out",
                out.toString()));
        for (Lock lock : state.setup().locks()) {
            call.add("--lock");
            call.add(words(lock, state.tune().orElseThrow().read().tune()));
        }
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        PrintStream print = new PrintStream(said, true, StandardCharsets.UTF_8);
        int code = Main.run(call.toArray(String[]::new), print, print);
        assertThat(code).as(said.toString(StandardCharsets.UTF_8)).isZero();
        String name = TUNE.replace(".musicxml", "") + "-" + (state.chosen() + 1) + ".plan.json";
        return Files.readAllBytes(out.resolve(name));
    }

    private static String words(Lock lock, Tune tune) {
        Lock.Finger finger = (Lock.Finger) lock;
        String pass = finger.pass().isPresent() ? "pass" + finger.pass().getAsInt() + ":" : "";
        String measure = tune.measure(finger.place().measure()).number();
        String beat = Places.beat(
                tune.measure(finger.place().measure()), finger.place().offset());
        return pass + "finger@" + measure + ":" + beat + "=" + finger.finger();
    }

    Component focus() {
        return GuiActionRunner.execute(
                () -> KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner());
    }

    static boolean isCalled(Component component, String name) {
        return component instanceof Accessible accessible
                && name.equals(accessible.getAccessibleContext().getAccessibleName());
    }

    void tabTo(String what, Predicate<Component> reached) {
        for (int i = 0; i < MOST_STEPS; i++) {
            if (reached.test(focus())) return;
            press(KeyEvent.VK_TAB);
        }
        picture("never-reached");
        throw new AssertionError("the tabulator does not reach " + what);
    }

    /** Into the file chooser that is open, by its focus and Enter. */
    void typeFileName(Path file) {
        until(
                "a file chooser has the focus",
                () -> focus() != null
                        && SwingUtilities.getWindowAncestor(focus()) instanceof JDialog
                        && chooserAround(focus()) != null);
        Window dialog = SwingUtilities.getWindowAncestor(focus());
        tabTo("the file name", focus -> focus instanceof JTextField);
        type((JTextComponent) focus(), file.toString());
        press(KeyEvent.VK_ENTER);
        until("the file chooser is closed", () -> !dialog.isShowing());
        takeFocusBack();
    }

    private static Container chooserAround(Component focus) {
        return SwingUtilities.getAncestorOfClass(JFileChooser.class, focus);
    }
}
