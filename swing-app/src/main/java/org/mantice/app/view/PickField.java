package org.mantice.app.view;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.event.PopupMenuEvent;
import javax.swing.event.PopupMenuListener;

/** Picks one of several things, which are asked for anew whenever the list is about to open. */
final class PickField<T> extends JPanel {
    /**
     * What is picked from.
     *
     * @param same whether two of them are one and the same to a player
     * @param opening told that the list is about to open
     */
    record Choices<T>(Supplier<List<T>> all, Function<T, String> name, BiPredicate<T, T> same, Runnable opening) {}

    private record Entry<T>(T value, String name) {
        @Override
        public String toString() {
            return name;
        }
    }

    private final transient Choices<T> choices;
    private final JComboBox<Entry<T>> combo = new JComboBox<>();
    private final JLabel label;
    private transient List<T> entries = List.of();
    private boolean showing;

    PickField(String title, Choices<T> choices, Consumer<T> picked) {
        super(WrappingLayout.together(3));
        this.choices = choices;
        this.label = new JLabel(title);
        label.setLabelFor(combo);
        combo.getAccessibleContext().setAccessibleName(title);
        combo.addActionListener(event -> {
            if (!showing && combo.getSelectedIndex() >= 0) picked.accept(entries.get(combo.getSelectedIndex()));
        });
        combo.addPopupMenuListener(new PopupMenuListener() {
            @Override
            public void popupMenuWillBecomeVisible(PopupMenuEvent event) {
                show(entries.get(combo.getSelectedIndex()));
                choices.opening().run();
            }

            @Override
            public void popupMenuWillBecomeInvisible(PopupMenuEvent event) {}

            @Override
            public void popupMenuCanceled(PopupMenuEvent event) {}
        });
        add(label);
        add(combo);
    }

    JComboBox<?> combo() {
        return combo;
    }

    void setHint(String hint) {
        combo.setToolTipText(hint.isEmpty() ? null : hint);
        combo.getAccessibleContext().setAccessibleDescription(hint);
    }

    /** Shows what is in force, first in the list if it is none of the choices. */
    void show(T current) {
        List<T> all = new ArrayList<>(choices.all().get());
        int at = indexOf(all, current);
        if (at < 0) {
            all.add(0, current);
            at = 0;
        } else all.set(at, current);
        showing = true;
        if (!all.equals(entries)) {
            entries = List.copyOf(all);
            combo.removeAllItems();
            for (T each : entries)
                combo.addItem(new Entry<>(each, choices.name().apply(each)));
        }
        combo.setSelectedIndex(at);
        showing = false;
    }

    private int indexOf(List<T> all, T current) {
        for (int i = 0; i < all.size(); i++) if (choices.same().test(all.get(i), current)) return i;
        return -1;
    }
}
