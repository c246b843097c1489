package org.mantice.app.view;

import java.awt.event.ActionEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.BoxLayout;
import javax.swing.JPanel;
import org.mantice.FallenLock;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.PlannerState;
import org.mantice.app.model.Setup;
import org.mantice.app.words.MusicWords;
import org.mantice.app.words.Words;

/**
 * What the player must be told, above the plans: why they cannot be had, what came of the last edit of the tune, and what
 * the host has to say.
 */
final class MessageArea extends JPanel {
    private final transient PlannerModel model;
    private final transient Words words;
    private final transient Actions actions;
    private final MessageBox answer;
    private final MessageBox edits;
    private final MessageBox notices;
    private final List<String> said = new ArrayList<>();
    private transient Optional<Message> shown = Optional.empty();
    private transient List<FallenLock> fallen = List.of();
    private transient Setup setup;

    MessageArea(PlannerModel model, Words words, Actions actions) {
        setLayout(new BoxLayout(this, BoxLayout.PAGE_AXIS));
        this.model = model;
        this.words = words;
        this.actions = actions;
        this.answer = new MessageBox(words.text("window.message.answer"));
        this.edits = new MessageBox(words.text("window.message.fallen"));
        this.notices = new MessageBox(words.text("window.message.notice"));
        this.setup = model.state().setup();
        add(answer);
        add(notices);
        add(edits);
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

    /** Says why an edit could not be made, until something else is decided or it is put away. */
    void refuse(String sentence) {
        edits.show(
                words.text("window.message.refused"),
                sentence,
                List.of(action(words.text("window.message.read"), () -> edits.setVisible(false))));
    }

    private void showEdits(PlannerState state) {
        if (state.setup().equals(setup) && state.fallen().equals(fallen)) return;
        setup = state.setup();
        fallen = state.fallen();
        edits.setVisible(false);
        if (fallen.isEmpty()) return;
        MusicWords music = new MusicWords(words);
        edits.show(
                words.text("window.message.fallen"),
                fallen.stream().map(lock -> music.sentence(lock.reason())).collect(Collectors.joining("\n")),
                List.of(
                        actions.get(Command.UNDO),
                        action(words.text("window.message.read"), () -> edits.setVisible(false))));
    }

    private void show(PlannerState state) {
        showEdits(state);
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
