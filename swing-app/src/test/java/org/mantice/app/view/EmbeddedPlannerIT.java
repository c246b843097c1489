package org.mantice.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.util.Locale;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JTextArea;
import javax.swing.LookAndFeel;
import javax.swing.UIManager;
import javax.swing.plaf.metal.MetalLookAndFeel;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.fixture.FrameFixture;
import org.junit.jupiter.api.Test;
import org.mantice.app.model.Answer;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.Planners;
import org.mantice.app.model.ProfileChoices;
import org.mantice.app.model.ThreadBackground;
import org.mantice.app.screen.WindowTest;
import org.mantice.app.words.Words;
import org.mantice.plugin.Packs;

/** The planner in a window that is not ours: another look, other things beside it, no menu of ours. */
class EmbeddedPlannerIT extends WindowTest {
    private PlannerModel model;
    private SheetView sheet;

    @Test
    void plansAndObeysItsKeysInAForeignFrame() throws Exception {
        LookAndFeel before = UIManager.getLookAndFeel();
        JFrame foreign = GuiActionRunner.execute(this::foreignFrame);
        FrameFixture window = new FrameFixture(robot, foreign);
        try {
            window.show(new Dimension(1300, 900));
            GuiActionRunner.execute(() -> model.open(Planners.tune("the-rusty-gate")));
            until("it is planned", () -> model.state().answer() instanceof Answer.Ready);
            sheet = robot.finder().findByType(foreign, SheetView.class, true);
            robot.click(sheet, new Point(60, 60));
            until("the sheet has the focus", sheet::isFocusOwner);

            robot.pressAndReleaseKey(KeyEvent.VK_F3);

            until(
                    "a difference is stepped to",
                    () -> model.state().differenceAt().isPresent());
            picture("embedded");
            assertThat(foreign.getJMenuBar()).isNull();
            assertThat(GuiActionRunner.execute(() -> UIManager.getLookAndFeel().getClass()))
                    .as("the look is the host's")
                    .isEqualTo(MetalLookAndFeel.class);
        } finally {
            GuiActionRunner.execute(() -> {
                foreign.dispose();
                UIManager.setLookAndFeel(before);
            });
        }
    }

    private JFrame foreignFrame() throws Exception {
        UIManager.setLookAndFeel(new MetalLookAndFeel());
        model = new PlannerModel(
                Packs.ofClassPath(), new ThreadBackground(EventQueue::invokeLater, "planning"), Planners.SETUP);
        Words words = Words.of(Locale.ENGLISH);
        JFrame frame = new JFrame("A notation editor");
        frame.add(new JTextArea("The host's own score", 2, 40), BorderLayout.PAGE_START);
        frame.add(new PlannerPanel(model, words, new Actions(words), ProfileChoices.PRESETS));
        frame.add(new JLabel("The host's status"), BorderLayout.PAGE_END);
        return frame;
    }
}
