package org.mantice.app.view;

import java.awt.event.ActionEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.BoxLayout;
import javax.swing.JPanel;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.PlannerState;
import org.mantice.app.words.Words;

/** What the player must be told, above the plans: why they cannot be had, and what the host has to say. */
final class MessageArea extends JPanel {
    private final transient PlannerModel model;
    private final transient Words words;
    private final transient Actions actions;
    private final MessageBox answer;
    private final MessageBox notices;
    private final List<String> said = new ArrayList<>();
    private transient Optional<Message> shown = Optional.empty();

    MessageArea(PlannerModel model, Words words, Actions actions) {
        setLayout(new BoxLayout(this, BoxLayout.PAGE_AXIS));
        this.model = model;
        this.words = words;
        this.actions = actions;
        this.answer = new MessageBox(words.text("window.message.answer"));
        this.notices = new MessageBox(words.text("window.message.notice"));
        add(answer);
        add(notices);
        model.addListener(this::show);
        show(model.state());
    }

    /** Adds a sentence to those that stay until the player has read them. */
    void say(String sentence) {
        if (!said.contains(sentence)) said.add(sentence);
        notices.show(
                words.text("window.message.notice"),
                String.join("\n", said),
                List.of(action(words.text("window.message.read"), () -> {
                    said.clear();
                    notices.setVisible(false);
                })));
    }

    private void show(PlannerState state) {
        Optional<Message> now = Message.of(state, words);
        if (now.equals(shown)) return;
        shown = now;
        now.ifPresentOrElse(this::show, () -> answer.setVisible(false));
    }

    private void show(Message message) {
        List<Action> offered = new ArrayList<>();
        message.withoutRule()
                .ifPresent(rule ->
                        offered.add(action(words.text("window.message.withoutRule"), () -> model.planWithout(rule))));
        if (message.freeing()) offered.add(actions.get(Command.FREE_ALL));
        offered.add(actions.get(Command.UNDO));
        answer.show(message.title(), message.text(), offered);
    }

    private static Action action(String name, Runnable work) {
        return new AbstractAction(name) {
            @Override
            public void actionPerformed(ActionEvent event) {
                work.run();
            }
        };
    }
}
