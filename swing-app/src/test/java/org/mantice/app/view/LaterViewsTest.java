package org.mantice.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.ActionEvent;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.mantice.app.look.Looks;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.ProfileChoices;
import org.mantice.app.model.States;

class LaterViewsTest {
    private final PlannerModel model = Planned.nothing();
    private final Actions actions = new Actions(Planned.ENGLISH);
    private PlannerPanel panel;

    @BeforeEach
    void beginWithTheSheet() {
        Looks.use(false);
        panel = PlannerPanel.withViewsToCome(model, Planned.ENGLISH, actions, ProfileChoices.PRESETS);
    }

    private void act(Command command) {
        actions.get(command).actionPerformed(new ActionEvent(panel, ActionEvent.ACTION_PERFORMED, ""));
    }

    private boolean has(Class<?> view) {
        return !Planned.all(panel, view).isEmpty();
    }

    @Test
    void theSheetIsThereBeforeTheOthers() {
        assertThat(panel.isWhole()).isFalse();
        assertThat(has(SheetView.class)).isTrue();
        assertThat(has(FiguresView.class)).isFalse();
        assertThat(has(WhyView.class)).isFalse();
    }

    @Test
    void viewsInSightAreBuiltOneAtATimeAndTabsWait() {
        panel.buildNext();

        assertThat(panel.isWhole()).isFalse();
        panel.buildNext();
        assertThat(panel.isWhole()).isTrue();
        assertThat(has(FiguresView.class)).isTrue();
        assertThat(has(WhyView.class)).isTrue();
        assertThat(has(TasteView.class)).isFalse();
    }

    @Test
    void whatTheCommandOrTheTabCallsForIsBuiltThen() {
        act(Command.SHOW_TASTE);

        assertThat(has(TasteView.class)).isTrue();
        Planned.all(panel, JTabbedPane.class).get(0).setSelectedIndex(1);
        assertThat(has(DifferencesView.class)).isTrue();
        act(Command.SHOW_TABLE);
        assertThat(has(SheetTableView.class)).isTrue();
        act(Command.SHOW_FIGURES);
        assertThat(has(FiguresView.class)).isTrue();
    }

    @Test
    void viewsBuiltLaterShowTheTuneThatWasOpenBefore() {
        model.open(States.open("the-rusty-gate"));

        while (!panel.isWhole()) panel.buildNext();

        assertThat(Planned.all(panel, FiguresView.class).get(0).getComponentCount())
                .isPositive();
        assertThat(Planned.all(panel, JTable.class).get(0).getColumnCount()).isGreaterThan(1);
    }

    @Test
    void aViewBehindATabCatchesUpWhenItComesToTheFront() {
        act(Command.SHOW_TABLE);
        SheetTableView table = Planned.all(panel, SheetTableView.class).get(0);
        int empty = rows(table);
        act(Command.SHOW_SHEET);

        model.open(States.open("the-rusty-gate"));

        assertThat(rows(table)).isEqualTo(empty);
        act(Command.SHOW_TABLE);
        assertThat(rows(table)).isGreaterThan(empty);
    }

    private static int rows(SheetTableView table) {
        return Planned.all(table, JTable.class).get(0).getRowCount();
    }

    @Test
    void whatWasBuiltLaterListensNoMoreOnceThePanelIsThrownAway() {
        panel.buildNext();

        panel.letGo();
        model.open(States.open("the-rusty-gate"));

        assertThat(Planned.all(Planned.all(panel, FiguresView.class).get(0), JTable.class))
                .allSatisfy(table -> assertThat(table.getColumnCount()).isLessThan(2));
    }
}
