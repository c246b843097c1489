package org.mantice.app.view;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dialog;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.Window;
import java.awt.event.ActionEvent;
import java.text.ParseException;
import java.util.ArrayList;
import java.util.List;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JFormattedTextField;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import org.mantice.app.look.Looks;
import org.mantice.app.words.MusicWords;
import org.mantice.app.words.Words;
import org.mantice.fault.ManticeException;

/** Asks for an edit in a dialog, which stays open and says why while the edit cannot be made. */
final class EditDialog {
    private final Words words;
    private final EditForm form;
    private final JDialog dialog;
    private final JLabel trouble = new JLabel();

    private EditDialog(Component over, String title, EditForm form, Words words) {
        this.words = words;
        this.form = form;
        Window owner = SwingUtilities.getWindowAncestor(over);
        this.dialog = new JDialog(owner, title, Dialog.ModalityType.APPLICATION_MODAL);
        JButton take = button("edit.take", this::take);
        JPanel buttons = new JPanel(new FlowLayout(FlowLayout.TRAILING));
        buttons.add(take);
        buttons.add(button("edit.cancel", dialog::dispose));
        trouble.setForeground(Looks.colour("messageText"));
        trouble.setBackground(Looks.colour("message"));
        trouble.setOpaque(true);
        trouble.setVisible(false);
        JPanel below = new JPanel(new BorderLayout());
        below.add(trouble);
        below.add(buttons, BorderLayout.PAGE_END);
        JPanel all = new JPanel(new BorderLayout(0, UIScale.scale(8)));
        int air = UIScale.scale(12);
        all.setBorder(BorderFactory.createEmptyBorder(air, air, air, air));
        all.add(form);
        all.add(below, BorderLayout.PAGE_END);
        dialog.setContentPane(all);
        dialog.getRootPane().setDefaultButton(take);
        dialog.getRootPane()
                .getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW)
                .put(KeyStroke.getKeyStroke("ESCAPE"), "cancel");
        dialog.getRootPane().getActionMap().put("cancel", new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                dialog.dispose();
            }
        });
        // A field for numbers keeps Enter for itself.
        for (JFormattedTextField number : numbers(form)) number.addActionListener(event -> take());
        dialog.setDefaultCloseOperation(JDialog.DISPOSE_ON_CLOSE);
        dialog.getAccessibleContext().setAccessibleName(title);
    }

    /** Returns when the edit is made or given up. */
    static void show(Component over, String title, EditForm form, Words words) {
        EditDialog asked = new EditDialog(over, title, form, words);
        asked.dialog.pack();
        asked.dialog.setLocationRelativeTo(SwingUtilities.getWindowAncestor(over));
        form.first().requestFocusInWindow();
        asked.dialog.setVisible(true);
    }

    private static List<JFormattedTextField> numbers(Container inside) {
        List<JFormattedTextField> found = new ArrayList<>();
        for (Component each : inside.getComponents()) {
            if (each instanceof JFormattedTextField number) found.add(number);
            else if (each instanceof Container container) found.addAll(numbers(container));
        }
        return found;
    }

    private JButton button(String key, Runnable work) {
        MarkedLabel label = MarkedLabel.of(words.text(key));
        JButton button = new JButton(label.text());
        label.mnemonic().ifPresent(button::setMnemonic);
        button.getAccessibleContext().setAccessibleName(label.text());
        button.addActionListener(event -> work.run());
        return button;
    }

    private void take() {
        try {
            for (JFormattedTextField number : numbers(form)) number.commitEdit();
            form.make();
            dialog.dispose();
        } catch (ParseException e) {
            say(words.text("edit.noNumber"));
        } catch (IllegalArgumentException e) {
            say(String.valueOf(e.getMessage()));
        } catch (ManticeException e) {
            say(new MusicWords(words).trouble(e));
        }
    }

    private void say(String sentence) {
        trouble.setText("<html>" + sentence.replace("&", "&amp;").replace("<", "&lt;"));
        trouble.getAccessibleContext().setAccessibleName(sentence);
        trouble.setBorder(BorderFactory.createEmptyBorder(
                UIScale.scale(4), UIScale.scale(8), UIScale.scale(4), UIScale.scale(8)));
        trouble.setVisible(true);
        Dimension wanted = dialog.getPreferredSize();
        dialog.setSize(
                Math.max(dialog.getWidth(), Math.min(wanted.width, UIScale.scale(720))),
                Math.max(dialog.getHeight(), wanted.height));
        dialog.validate();
    }
}
