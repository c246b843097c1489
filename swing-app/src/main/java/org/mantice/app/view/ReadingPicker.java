package org.mantice.app.view;

import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.DefaultComboBoxModel;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComboBox;
import javax.swing.JList;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.PlannerState;
import org.mantice.app.sheet.Reading;
import org.mantice.app.words.Words;
import org.mantice.performance.Performance;

/** Chooses which measures the sheet shows: as written, one time through, or as played. */
public final class ReadingPicker extends JComboBox<Reading> {
    private final transient PlannerModel model;
    private final transient Words words;
    private transient Optional<Performance> performance = Optional.empty();
    private boolean following;

    public ReadingPicker(PlannerModel model, Words words) {
        this.model = model;
        this.words = words;
        setRenderer(new Names());
        getAccessibleContext().setAccessibleName(words.text("sheet.reading"));
        addActionListener(event -> {
            if (!following && getSelectedItem() instanceof Reading reading) model.setReading(reading);
        });
        model.addListener(this::show);
        show(model.state());
    }

    private void show(PlannerState state) {
        following = true;
        if (getItemCount() == 0
                || performance.orElse(null) != state.performance().orElse(null)) {
            performance = state.performance();
            setModel(new DefaultComboBoxModel<>(readings().toArray(Reading[]::new)));
        }
        setSelectedItem(state.reading());
        setEnabled(performance.isPresent());
        following = false;
    }

    private List<Reading> readings() {
        List<Reading> readings = new ArrayList<>();
        readings.add(new Reading.AsWritten());
        int sweeps = performance.map(played -> Reading.sweeps(played).size()).orElse(0);
        for (int sweep = 0; sweep < sweeps && sweeps > 1; sweep++) readings.add(new Reading.OneSweep(sweep));
        readings.add(new Reading.AsPlayed());
        return readings;
    }

    /** As "time 2: measures 1–16". */
    String name(Reading reading) {
        if (reading instanceof Reading.OneSweep one && performance.isPresent()) {
            Performance played = performance.get();
            Reading.Sweep sweep = Reading.sweeps(played).get(one.number());
            return words.text(
                    "sheet.reading.sweep",
                    one.number() + 1,
                    measure(played, sweep.firstPlayed()),
                    measure(played, sweep.lastPlayed()));
        }
        return words.text(reading instanceof Reading.AsPlayed ? "sheet.reading.played" : "sheet.reading.written");
    }

    private static String measure(Performance played, int index) {
        return played.tune().measure(played.measures().get(index).written()).number();
    }

    private final class Names extends DefaultListCellRenderer {
        @Override
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean selected, boolean focused) {
            String name = value instanceof Reading reading ? name(reading) : "";
            return super.getListCellRendererComponent(list, name, index, selected, focused);
        }
    }
}
