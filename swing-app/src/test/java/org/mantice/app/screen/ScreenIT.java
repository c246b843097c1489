package org.mantice.app.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Dimension;
import java.util.concurrent.atomic.AtomicInteger;
import javax.swing.JButton;
import javax.swing.JFrame;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.fixture.FrameFixture;
import org.junit.jupiter.api.Test;

class ScreenIT extends WindowTest {
    @Test
    void aRobotPressesAButtonOfARealWindow() throws Exception {
        AtomicInteger pressed = new AtomicInteger();
        JFrame frame = GuiActionRunner.execute(() -> {
            JFrame made = new JFrame("screen");
            made.setPreferredSize(new Dimension(300, 200));
            JButton button = new JButton("press");
            button.setName("press");
            button.addActionListener(event -> pressed.incrementAndGet());
            made.add(button);
            return made;
        });
        FrameFixture window = new FrameFixture(robot, frame);
        window.show();

        window.button("press").click();
        until("the button is pressed", () -> pressed.get() > 0);

        assertThat(pressed).hasValue(1);
    }
}
