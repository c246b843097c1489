package org.mantice.app.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.awt.event.ActionEvent;
import java.awt.event.MouseEvent;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.accessibility.AccessibleContext;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.mantice.app.model.DirectBackground;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.Planners;
import org.mantice.app.model.Selection;
import org.mantice.app.model.States;
import org.mantice.app.model.TuneEditor;
import org.mantice.app.sheet.Reading;
import org.mantice.app.sheet.SheetPainter.Target;
import org.mantice.app.sheet.Spot;
import org.mantice.app.sheet.Strip;
import org.mantice.app.words.Words;

class SheetViewTest {
    private static final Words ENGLISH = Words.of(Locale.ENGLISH);

    private final PlannerModel model = Planners.empty();
    private final Actions actions = new Actions(ENGLISH);
    private SheetView view;

    @BeforeEach
    void showATune() {
        view = new SheetView(model, new TuneEditor(model), ENGLISH, actions);
        model.open(States.open("the-rusty-gate"));
        view.setSize(1200, 900);
    }

    private void press(String key) {
        Object name = view.getInputMap().get(KeyStroke.getKeyStroke(key));
        view.getActionMap().get(name).actionPerformed(new ActionEvent(view, ActionEvent.ACTION_PERFORMED, key));
    }

    private void click(double x, double y, int times) {
        for (int id : new int[] {MouseEvent.MOUSE_PRESSED, MouseEvent.MOUSE_RELEASED, MouseEvent.MOUSE_CLICKED})
            view.dispatchEvent(new MouseEvent(view, id, 0, 0, (int) x, (int) y, times, false, MouseEvent.BUTTON1));
    }

    private Spot selected() {
        return model.state().selection().map(Selection::spot).orElseThrow();
    }

    private List<Target> targets(int band, Strip strip) {
        return view.sheet().orElseThrow().targets(band).stream()
                .filter(target -> target.spot().strip() == strip)
                .toList();
    }

    @Test
    void selectingLaysNothingOutAgain() {
        Object laidOut = layout();

        click(
                targets(0, Strip.FINGERS).get(3).bounds().getCenterX(),
                targets(0, Strip.FINGERS).get(3).bounds().getCenterY(),
                1);
        model.nextDifference();

        assertThat(layout()).isSameAs(laidOut);
        model.show(Strip.FINGERS, false);
        assertThat(layout()).isNotSameAs(laidOut);
    }

    private Object layout() {
        return assertThat(view.sheet().orElseThrow()).extracting("layout").actual();
    }

    @Test
    void clickingADecisionSelectsItInItsPlan() {
        Target target = targets(1, Strip.BUTTONS).get(7);

        click(target.bounds().getCenterX(), target.bounds().getCenterY(), 1);

        assertThat(model.state().selection()).contains(new Selection(1, target.spot()));
        assertThat(view.getAccessibleContext().getAccessibleDescription()).startsWith("B, Basses, pass 1, measure ");
    }

    @Test
    void aDoubleClickOnTheHeadOfAPlanChoosesIt() {
        Target first = targets(1, Strip.FINGERS).get(0);

        click(30, first.bounds().getY() - 12, 2);

        assertThat(model.state().chosen()).isEqualTo(1);
    }

    @Test
    void rightAndLeftGoThroughAllOfAStrip() {
        press("RIGHT");
        List<Spot> seen = new ArrayList<>(List.of(selected()));
        for (int step = 1; step < targets(0, Strip.FINGERS).size(); step++) {
            press("RIGHT");
            seen.add(selected());
        }

        assertThat(seen)
                .isEqualTo(targets(0, Strip.FINGERS).stream().map(Target::spot).toList());
        press("RIGHT");
        assertThat(selected()).isEqualTo(seen.get(seen.size() - 1));
        press("LEFT");
        assertThat(selected()).isEqualTo(seen.get(seen.size() - 2));
        press("HOME");
        assertThat(selected()).isEqualTo(seen.get(0));
        press("END");
        assertThat(selected()).isEqualTo(seen.get(seen.size() - 1));
    }

    @Test
    void downGoesThroughStripsAndPlansAndKeepsItsColumn() {
        Target start = targets(0, Strip.FINGERS).get(12);
        click(start.bounds().getCenterX(), start.bounds().getCenterY(), 1);
        List<String> rows = new ArrayList<>();
        for (int i = 0; i < 7; i++) {
            press("DOWN");
            rows.add(model.state().selection().orElseThrow().offer() + " "
                    + selected().strip());
        }

        assertThat(rows)
                .containsExactly(
                        "0 REGISTERS", "0 BELLOWS", "0 BUTTONS", "1 FINGERS", "1 REGISTERS", "1 BELLOWS", "1 BUTTONS");
        for (int i = 0; i < 7; i++) press("UP");
        assertThat(selected()).isEqualTo(start.spot());
    }

    @Test
    void pagesGoFromLineToLineInOneStrip() {
        press("RIGHT");
        Spot first = selected();

        press("PAGE_DOWN");

        assertThat(selected().strip()).isEqualTo(first.strip());
        assertThat(view.sheet()
                        .orElseThrow()
                        .boundsOf(0, selected())
                        .orElseThrow()
                        .getY())
                .isGreaterThan(view.sheet()
                                .orElseThrow()
                                .boundsOf(0, first)
                                .orElseThrow()
                                .getMaxY()
                        + 50);
        press("PAGE_UP");
        assertThat(selected()).isEqualTo(first);
    }

    @Test
    void enterAsksWhy() {
        List<String> asked = new ArrayList<>();
        actions.bind(Command.SHOW_WHY, () -> asked.add("why"), state -> true);
        actions.follow(model.state());

        press("ENTER");

        assertThat(asked).containsExactly("why");
    }

    @Test
    void theDescriptionFollowsTheSelectionAndSaysPlaceAndValue() {
        List<Object> told = new ArrayList<>();
        view.getAccessibleContext().addPropertyChangeListener(event -> {
            if (event.getPropertyName().equals(AccessibleContext.ACCESSIBLE_DESCRIPTION_PROPERTY))
                told.add(event.getNewValue());
        });

        press("RIGHT");

        assertThat(told).hasSize(1);
        assertThat(told.get(0).toString()).matches("A, Fingers, pass 1, measure 1, beat 1: finger [1-5].*");
    }

    @Test
    void everySpotIsSaidInBothLanguages() {
        for (Words words : List.of(ENGLISH, Words.of(Locale.GERMAN))) {
            SheetView other = new SheetView(model, new TuneEditor(model), words, actions);
            other.setSize(1200, 900);
            for (Target target : other.sheet().orElseThrow().targets(0)) {
                MouseEvent over = new MouseEvent(
                        other,
                        MouseEvent.MOUSE_MOVED,
                        0,
                        0,
                        (int) target.bounds().getCenterX(),
                        (int) target.bounds().getCenterY(),
                        0,
                        false);
                assertThat(other.getToolTipText(over)).matches("A, .+: .+");
            }
        }
    }

    @Test
    void onlyWhatChangesTheLayoutLaysOutAgain() {
        double height = view.sheet().orElseThrow().height();
        List<Target> before = view.sheet().orElseThrow().targets(0);

        press("RIGHT");

        assertThat(view.sheet().orElseThrow().targets(0).get(3).bounds())
                .isEqualTo(before.get(3).bounds());
        assertThat(view.getPreferredSize().height).isEqualTo((int) height);
        model.show(Strip.BELLOWS, false);
        assertThat(view.getPreferredSize().height).isLessThan((int) height);
        int asWritten = view.sheet().orElseThrow().targets(0).size();
        model.setReading(new Reading.AsPlayed());
        assertThat(view.sheet().orElseThrow().targets(0)).hasSizeGreaterThan(asWritten);
    }

    @Test
    void zoomMakesTheSheetHigher() {
        int usual = view.getPreferredSize().height;

        view.setZoom(2);

        assertThat(view.getPreferredSize().height).isGreaterThan(2 * usual);
        assertThatIllegalArgumentException().isThrownBy(() -> view.setZoom(0)).withMessageContaining("zoom is 0.0");
    }

    @Test
    void withoutATuneItSaysWhatToDo() {
        PlannerModel empty = new PlannerModel(
                States.packs(), new DirectBackground(), States.nothing().setup());
        SheetView bare = new SheetView(empty, new TuneEditor(empty), ENGLISH, actions);
        bare.setSize(600, 400);

        bare.paint(new BufferedImage(600, 400, BufferedImage.TYPE_INT_RGB).createGraphics());

        assertThat(bare.getAccessibleContext().getAccessibleDescription()).isEqualTo(ENGLISH.text("sheet.empty"));
        assertThat(Optional.ofNullable(
                        bare.getToolTipText(new MouseEvent(bare, MouseEvent.MOUSE_MOVED, 0, 0, 50, 50, 0, false))))
                .isEmpty();
    }
}
