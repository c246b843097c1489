package org.mantice.app.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.mantice.app.sheet.ButtonMap;
import org.mantice.app.sheet.Spot;
import org.mantice.app.words.MusicWords;
import org.mantice.app.words.Words;
import org.mantice.instrument.StradellaBass;
import org.mantice.plan.LeftHandPlan;

/**
 * The map of the instrument's bass buttons with what the left hand presses at the selected place, in words too.
 *
 * @param heading the place, the buttons pressed there with their fingers, and those before
 * @param legend how the map is read
 */
public record ButtonMapModel(ButtonMap map, String heading, String legend) {
    /** The press at the selected place, or the last one before it in the selected plan. */
    public static ButtonMapModel of(PlannerState state, Words words) {
        MusicWords music = new MusicWords(words);
        StradellaBass layout = state.setup().accordion().bass();
        Optional<LeftHandPlan.Event> now = press(state);
        Optional<LeftHandPlan.Event> before = now.filter(event -> event.index() > 0)
                .flatMap(event -> plan(state).map(plan -> plan.events().get(event.index() - 1)));
        ButtonMap map = ButtonMap.of(
                layout,
                now.map(LeftHandPlan.Event::buttons).orElse(List.of()),
                now.map(LeftHandPlan.Event::fingers).orElse(List.of()),
                before.map(LeftHandPlan.Event::buttons).orElse(List.of()),
                music);
        return new ButtonMapModel(map, heading(state, now, before, words, music), legend(map, words));
    }

    private static Optional<LeftHandPlan> plan(PlannerState state) {
        return state.selection()
                .filter(selection -> selection.offer() < state.offers().size())
                .map(selection -> state.offers().get(selection.offer()).plan().leftHand());
    }

    private static Optional<LeftHandPlan.Event> press(PlannerState state) {
        if (plan(state).isEmpty()) return Optional.empty();
        Spot spot = state.selection().orElseThrow().spot();
        LeftHandPlan.Event last = null;
        for (LeftHandPlan.Event event : plan(state).get().events())
            if (event.measure() < spot.measure()
                    || event.measure() == spot.measure() && event.place().compareTo(spot.place()) <= 0) last = event;
        return Optional.ofNullable(last);
    }

    private static String heading(
            PlannerState state,
            Optional<LeftHandPlan.Event> now,
            Optional<LeftHandPlan.Event> before,
            Words words,
            MusicWords music) {
        if (state.setup().accordion().bass().isAbsent()) return words.text("map.noBass");
        if (plan(state).isEmpty() || state.performance().isEmpty()) return words.text("map.ask");
        if (now.isEmpty()) return words.text("map.nothing");
        LeftHandPlan.Event event = now.get();
        List<String> lines = new ArrayList<>();
        lines.add(words.text(
                "map.at",
                music.place(state.performance().get(), event.measure(), event.place()),
                pressed(event, words, music)));
        before.ifPresent(press -> lines.add(words.text("map.before", pressed(press, words, music))));
        return String.join("\n", lines);
    }

    private static String pressed(LeftHandPlan.Event event, Words words, MusicWords music) {
        return IntStream.range(0, event.buttons().size())
                .mapToObj(i -> words.text(
                        "map.press",
                        music.buttons(List.of(event.buttons().get(i))),
                        event.fingers().get(i)))
                .collect(Collectors.joining(", "));
    }

    private static String legend(ButtonMap map, Words words) {
        return map.measured() ? words.text("map.legend") : words.text("map.legend") + " " + words.text("map.estimate");
    }

    /** A button and its state in words. @param index among the map's buttons */
    public String words(int index, Words words) {
        ButtonMap.Button button = map.buttons().get(index);
        List<String> said = new ArrayList<>();
        said.add(new MusicWords(words).buttons(List.of(button.button())));
        button.finger().ifPresent(finger -> said.add(words.text("map.pressed", finger)));
        if (button.before()) said.add(words.text("map.pressedBefore"));
        if (button.marked()) said.add(words.text("map.marked"));
        if (button.broken()) said.add(words.text("map.broken"));
        return String.join(", ", said);
    }
}
