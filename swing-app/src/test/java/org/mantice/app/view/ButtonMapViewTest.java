package org.mantice.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import com.formdev.flatlaf.util.UIScale;
import java.awt.event.ActionEvent;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.mantice.app.look.Looks;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.Selection;
import org.mantice.app.model.States;
import org.mantice.app.sheet.ButtonMap;
import org.mantice.app.sheet.Spot;
import org.mantice.app.sheet.Strip;
import org.mantice.app.words.Words;
import org.mantice.instrument.Accordion;
import org.mantice.instrument.AccordionPresets;
import org.mantice.instrument.BassButton;
import org.mantice.instrument.BassRow;
import org.mantice.instrument.StradellaBass;
import org.mantice.plan.LeftHandPlan;

class ButtonMapViewTest {
    private static void select(PlannerModel model, int press) {
        LeftHandPlan.Event event =
                model.state().offers().get(0).plan().leftHand().events().get(press);
        model.select(Optional.of(
                new Selection(0, new Spot(Strip.BUTTONS, event.measure(), event.pass(), event.place(), 0))));
    }

    @Test
    void theMapFollowsTheSelectionAndSaysInWordsWhatItShows() {
        Looks.use(false);
        PlannerModel model = Planned.of("the-rusty-gate");
        ButtonMapView view = new ButtonMapView(model, Planned.ENGLISH);
        WrappedText said = Planned.named(view, WrappedText.class, "What is pressed");

        assertThat(said.getText()).startsWith("Select a place");
        select(model, 3);

        List<LeftHandPlan.Event> events =
                model.state().offers().get(0).plan().leftHand().events();
        String button =
                events.get(3).buttons().get(0).toString().replace("b ", "♭ ").replace("#", "♯");
        assertThat(said.getText())
                .contains(button + " with finger " + events.get(3).fingers().get(0))
                .contains("\nbefore: ");
    }

    @Test
    void theArrowKeysTellEachButton() {
        Looks.use(false);
        ButtonMapView view = new ButtonMapView(Planned.nothing(), Planned.ENGLISH);
        ButtonMapCanvas canvas = Planned.all(view, ButtonMapCanvas.class).get(0);
        String first = canvas.getAccessibleContext().getAccessibleDescription();

        press(canvas, "UP");
        String second = canvas.getAccessibleContext().getAccessibleDescription();
        press(canvas, "DOWN");

        assertThat(first).isEqualTo("C bass, marked to the touch");
        assertThat(second).isEqualTo("G bass");
        assertThat(canvas.getAccessibleContext().getAccessibleDescription()).isEqualTo(first);
    }

    private static void press(JComponent component, String key) {
        Object way = component.getInputMap().get(KeyStroke.getKeyStroke(key));
        component
                .getActionMap()
                .get(way)
                .actionPerformed(new ActionEvent(component, ActionEvent.ACTION_PERFORMED, key));
    }

    @Test
    void everyWayHasAKey() {
        ButtonMapCanvas canvas = new ButtonMapCanvas(Planned.ENGLISH);

        assertThat(canvas.getActionMap().keys()).containsAll(Arrays.asList((Object[]) ButtonMap.Way.values()));
    }

    @ParameterizedTest(name = "{0} in {1}, dark {2}")
    @CsvSource({
        "full-41-key-120-bass,en,false",
        "full-41-key-120-bass,de,true",
        "full-41-key-120-bass-moved-diminished,en,true",
        "standard-34-key-72-bass,de,false",
        "beginner-26-key-12-bass,en,false",
        "worn,en,false"
    })
    void everySizeIsNamedAndPainted(String accordion, String language, boolean dark) throws IOException {
        Looks.use(dark);
        PlannerModel model = Planned.nothing();
        model.setAccordion(accordion.equals("worn") ? worn() : AccordionPresets.get(accordion));
        model.open(States.open("the-rusty-gate"));
        ButtonMapView view = new ButtonMapView(model, Words.of(Locale.forLanguageTag(language)));
        AccessibleNames.check(view);
        BufferedImage before = Pictures.of(view, UIScale.scale(430), UIScale.scale(1_240));
        select(model, 1);
        BufferedImage after = Pictures.of(view, UIScale.scale(430), UIScale.scale(1_240));

        Pictures.keep(after, "map-" + accordion + "-" + language + (dark ? "-dark" : "-light"));
        assertThat(Pictures.colours(after)).isGreaterThan(20);
        assertThat(different(before, after)).isGreaterThan(300);
    }

    /** With broken buttons and a gap. */
    private static Accordion worn() {
        Accordion preset = AccordionPresets.get("standard-34-key-72-bass");
        StradellaBass bass = preset.bass();
        return new Accordion(
                preset.id(),
                "Worn",
                preset.treble(),
                bass.with(bass.singles()
                        .withBroken(Set.of(new BassButton(BassRow.SEVENTH, 1), new BassButton(BassRow.BASS, 6)))
                        .withMissing(Set.of(new BassButton(BassRow.DIMINISHED, 6)))),
                preset.bellows());
    }

    private static int different(BufferedImage one, BufferedImage other) {
        int count = 0;
        for (int y = 0; y < one.getHeight(); y++)
            for (int x = 0; x < one.getWidth(); x++) if (one.getRGB(x, y) != other.getRGB(x, y)) count++;
        return count;
    }
}
