package org.mantice.app.text;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import org.mantice.instrument.BassButton;
import org.mantice.instrument.ButtonChoice;
import org.mantice.instrument.ButtonNames;
import org.mantice.instrument.ChordButtons;
import org.mantice.instrument.StradellaBass;
import org.mantice.instrument.Substitution;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.NoteName;

/** The buttons that play chord symbols on one instrument, one answer a line. */
public final class ChordsText {
    private static final int SYMBOL_WIDTH = 10;
    private static final int BUTTONS_WIDTH = 36;

    private final StradellaBass layout;
    private final ChordButtons buttons;
    private final boolean every;

    /** @param every whether all answers are given, not only the best */
    public ChordsText(StradellaBass layout, boolean every) {
        this.layout = layout;
        this.buttons = new ChordButtons(layout);
        this.every = every;
    }

    /** Lines ending in a line feed: symbol, buttons, the notes of each button; what is missing, foreign and why. */
    public String of(ChordSymbol symbol) {
        StringBuilder text = new StringBuilder();
        List<ButtonChoice> choices = buttons.choices(symbol);
        for (int i = 0; i < (every ? choices.size() : 1); i++) {
            text.append(padded(i == 0 ? symbol.toString() : "   or", SYMBOL_WIDTH));
            text.append(line(symbol, choices.get(i))).append('\n');
        }
        return text.toString();
    }

    private String line(ChordSymbol symbol, ButtonChoice choice) {
        String notes =
                choice.buttons().stream().map(button -> notes(symbol, button)).collect(Collectors.joining(" + "));
        List<String> said = new ArrayList<>();
        if (!notes.isEmpty()) said.add(notes);
        addTones(said, "missing", symbol, choice.missing());
        addTones(said, "left out", symbol, choice.leftOut());
        addTones(said, "foreign", symbol, choice.foreign());
        choice.substitutions().stream().map(Substitution::text).forEach(said::add);
        return (padded(choice.toString(), BUTTONS_WIDTH) + String.join("; ", said)).stripTrailing();
    }

    private static void addTones(List<String> said, String what, ChordSymbol symbol, Collection<Integer> tones) {
        if (tones.isEmpty()) return;
        said.add(what + " "
                + tones.stream()
                        .map(tone -> ButtonNames.tone(symbol.root(), tone).toString())
                        .collect(Collectors.joining(" ")));
    }

    private String notes(ChordSymbol symbol, BassButton button) {
        return layout.sound().midi(button).stream()
                .map(midi -> note(ButtonNames.tone(symbol.root(), midi % 12), midi))
                .collect(Collectors.joining(" "));
    }

    private static String note(NoteName name, int midi) {
        return name.toString() + (Math.floorDiv(midi - name.alter(), 12) - 1);
    }

    private static String padded(String text, int width) {
        return text + " ".repeat(Math.max(2, width - text.length()));
    }
}
