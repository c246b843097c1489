package org.mantice.app.view;

import java.util.function.UnaryOperator;
import javax.swing.JPanel;
import org.mantice.app.model.LeftHandModel;
import org.mantice.app.model.LeftHandModel.HandOption;
import org.mantice.app.model.LeftHandModel.PatternOption;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.PlannerState;
import org.mantice.app.words.Words;
import org.mantice.pattern.Accompaniment;

/** The left hand's pattern in the whole tune, and how much of it is played. */
final class LeftHandFields extends JPanel {
    private final transient PlannerModel model;
    private final transient Words words;
    private final PickField<PatternOption> pattern;
    private final PickField<HandOption> hand;
    private transient LeftHandModel shown;

    LeftHandFields(PlannerModel model, Words words) {
        super(WrappingLayout.together(10));
        this.model = model;
        this.words = words;
        this.shown = LeftHandModel.of(model.state(), words);
        this.pattern = new PickField<>(
                words.text("setup.pattern"),
                new PickField.Choices<>(
                        () -> shown.patterns(), PatternOption::name, PatternOption::isSame, LeftHandFields::nothing),
                picked -> ask(asked -> LeftHandModel.choosing(asked, picked)));
        this.hand = new PickField<>(
                words.text("setup.hand"),
                new PickField.Choices<>(
                        () -> shown.hands(), HandOption::name, HandOption::equals, LeftHandFields::nothing),
                picked -> ask(asked -> LeftHandModel.choosing(asked, picked)));
        pattern.setHint(words.text("setup.pattern.hint"));
        hand.setHint(words.text("setup.hand.hint"));
        add(pattern);
        add(hand);
        show(model.state());
    }

    private static void nothing() {}

    private void ask(UnaryOperator<Accompaniment> change) {
        Accompaniment before = model.state().setup().wishes().leftHand();
        Accompaniment after = change.apply(before);
        if (!after.equals(before)) model.setLeftHand(after);
    }

    void show(PlannerState state) {
        shown = LeftHandModel.of(state, words);
        pattern.show(shown.pattern());
        hand.show(shown.hand());
        pattern.combo().setEnabled(shown.open());
        hand.combo().setEnabled(shown.open());
    }
}
