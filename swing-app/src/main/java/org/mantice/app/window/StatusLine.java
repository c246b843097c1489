package org.mantice.app.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.mantice.app.model.PlannerState;
import org.mantice.app.model.PlanningProgress;
import org.mantice.app.words.Words;

/** At the foot of the window: what was done last, and what is chosen and saved. */
final class StatusLine extends JPanel {
    private final transient Words words;
    private final transient Papers papers;
    private final JLabel done = new JLabel(" ");
    private final JLabel work = new JLabel(" ");

    StatusLine(Words words, Papers papers) {
        super(new BorderLayout(UIScale.scale(16), 0));
        this.words = words;
        this.papers = papers;
        setBorder(BorderFactory.createEmptyBorder(
                UIScale.scale(3), UIScale.scale(8), UIScale.scale(3), UIScale.scale(8)));
        add(done);
        add(work, BorderLayout.LINE_END);
        getAccessibleContext().setAccessibleName(words.text("window.status"));
    }

    void note(String sentence) {
        done.setText(sentence);
        done.setToolTipText(sentence);
    }

    void show(PlannerState state) {
        if (state.isWorking()) work.setText(PlanningProgress.of(state, words).text());
        else
            work.setText(state.chosenOffer()
                    .map(offer -> words.text(
                            papers.isUnsaved(state) ? "window.status.unsaved" : "window.status.chosen", offer.letter()))
                    .orElse(" "));
    }
}
