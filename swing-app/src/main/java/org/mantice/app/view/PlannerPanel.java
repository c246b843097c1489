package org.mantice.app.view;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTabbedPane;
import javax.swing.LayoutFocusTraversalPolicy;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.ProfileChoices;
import org.mantice.app.model.TuneEditor;
import org.mantice.app.words.Words;

/**
 * The whole planner in one panel: setup, figures, sheet, why, differences, taste, button map.
 * It knows no frame and brings its own
 * keys, so that it works in any program's window. Files, looks and languages are the host's: it binds their commands.
 */
public final class PlannerPanel extends JPanel {
    private static final String MUSIC = "music";
    private static final String TABLE = "table";
    /** Lines that the reasons and the differences need to be of use. */
    private static final int SIDE_LINES = 34;

    private final transient PlannerModel model;
    private final transient Words words;
    private final transient Actions actions;
    private final SetupBar setup;
    private final LaterView figures;
    private final transient TuneEditor editor;
    private final SheetView sheet;
    private final SheetHead head;
    private final MessageArea messages;
    private final CardLayout cards = new CardLayout();
    private final JPanel deck = new JPanel(cards);
    private final JTabbedPane side = new JTabbedPane();
    /** Views in sight that a window can do without at first, then those behind tabs. */
    private final List<LaterView> inSight = new ArrayList<>();

    private final List<LaterView> behind = new ArrayList<>();
    private String card = MUSIC;
    private int zoomPercent = Zoom.USUAL;

    /**
     * Makes the panel and binds the planner's commands.
     *
     * @param choices the accordions and players to pick from
     */
    public PlannerPanel(PlannerModel model, Words words, Actions actions, ProfileChoices choices) {
        this(model, words, actions, choices, true);
    }

    private PlannerPanel(
            PlannerModel model, Words words, Actions actions, ProfileChoices choices, boolean wholeAtOnce) {
        super(new BorderLayout());
        this.model = model;
        this.words = words;
        this.actions = actions;
        PlannerCommands.bind(model, words, actions);
        bindViews();
        this.setup = new SetupBar(model, words, actions, choices);
        this.figures = later(inSight, () -> new FiguresView(model, words));
        this.editor = new TuneEditor(model);
        this.sheet = new SheetView(model, editor, words, actions);
        this.head = new SheetHead(new SheetBar(model, words, actions), words, actions);
        this.messages = new MessageArea(model, words, actions);
        new TuneCommands(editor, sheet, words, messages::refuse).bind(model, actions);
        layOut();
        actions.installKeys(this);
        head.showZoom(zoomPercent);
        actions.follow(model.state());
        getAccessibleContext().setAccessibleName(words.text("window.planner"));
        if (!wholeAtOnce) return;
        while (!isWhole()) buildNext();
        behind.forEach(this::callFor);
    }

    /**
     * The panel without the views that show nothing of a tune without plans: a window is there sooner if it shows the sheet
     * before these are built, with {@link #buildNext}. Those behind tabs come when they are called for.
     */
    public static PlannerPanel withViewsToCome(
            PlannerModel model, Words words, Actions actions, ProfileChoices choices) {
        return new PlannerPanel(model, words, actions, choices, false);
    }

    /** Whether every view in sight is built. */
    public boolean isWhole() {
        return inSight.stream().allMatch(LaterView::isBuilt);
    }

    /** Builds one of the views to come, if there is one. */
    public void buildNext() {
        inSight.stream().filter(view -> !view.isBuilt()).findFirst().ifPresent(this::build);
    }

    private void build(LaterView view) {
        view.build(model);
        actions.follow(model.state());
    }

    /** Lets the views that were built later listen no more: the panel is thrown away. */
    public void letGo() {
        inSight.forEach(LaterView::letGo);
        behind.forEach(LaterView::letGo);
    }

    private static LaterView later(List<LaterView> kind, Supplier<Component> view) {
        LaterView made = new LaterView(view);
        kind.add(made);
        return made;
    }

    private void layOut() {
        JPanel top = new JPanel(new BorderLayout());
        top.add(setup);
        top.add(messages, BorderLayout.PAGE_END);
        JScrollPane scroll = new JScrollPane(sheet);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        deck.add(scroll, MUSIC);
        LaterView why = later(inSight, () -> LeastHeight.of(new WhyView(model, editor, words, actions), SIDE_LINES));
        LaterView differences =
                later(behind, () -> LeastHeight.of(new DifferencesView(model, words, actions), SIDE_LINES));
        LaterView taste = later(behind, () -> new TasteView(model, words, actions));
        LaterView map = later(behind, () -> new ButtonMapView(model, words));
        deck.add(later(behind, () -> new SheetTableView(model, words)), TABLE);
        JPanel below = new JPanel(new BorderLayout());
        below.add(head, BorderLayout.PAGE_START);
        below.add(deck);
        side.addTab(words.text("window.tab.why"), why);
        side.addTab(words.text("window.tab.differences"), differences);
        side.addTab(words.text("window.tab.taste"), taste);
        side.addTab(words.text("window.tab.map"), map);
        side.addChangeListener(event -> callFor(side.getSelectedComponent()));
        side.getAccessibleContext().setAccessibleName(words.text("window.side"));
        below.setMinimumSize(new Dimension());
        figures.setMinimumSize(new Dimension());
        JSplitPane plans =
                new FirstSplit(JSplitPane.VERTICAL_SPLIT, figures, below, 0.28, words.text("window.split.figures"));
        plans.setMinimumSize(new Dimension());
        side.setMinimumSize(new Dimension());
        add(top, BorderLayout.PAGE_START);
        add(new FirstSplit(JSplitPane.HORIZONTAL_SPLIT, plans, side, 0.71, words.text("window.split.side")));
    }

    private void bindViews() {
        actions.bind(Command.SHOW_SETUP, () -> focusInto(setup), state -> true);
        actions.bind(Command.TIMES_THROUGH, () -> setup.goToTimes(), state -> state.tune()
                .isPresent());
        actions.bind(Command.TRANSPOSE, () -> setup.goToTransposition(), state -> state.tune()
                .isPresent());
        actions.bind(
                Command.SHOW_FIGURES,
                () -> {
                    callFor(figures);
                    focusInto(figures);
                },
                state -> true);
        actions.bindSwitch(Command.SHOW_SHEET, () -> show(MUSIC), state -> true, state -> card.equals(MUSIC));
        actions.bindSwitch(Command.SHOW_TABLE, () -> show(TABLE), state -> true, state -> card.equals(TABLE));
        actions.bind(Command.SHOW_WHY, () -> showSide(0), state -> true);
        actions.bind(Command.SHOW_DIFFERENCES, () -> showSide(1), state -> true);
        actions.bind(Command.SHOW_TASTE, () -> showSide(2), state -> true);
        actions.bind(Command.SHOW_MAP, () -> showSide(3), state -> true);
        actions.bind(
                Command.LARGER, () -> setZoomPercent(Zoom.larger(zoomPercent)), state -> zoomPercent < Zoom.most());
        actions.bind(
                Command.SMALLER, () -> setZoomPercent(Zoom.smaller(zoomPercent)), state -> zoomPercent > Zoom.least());
        actions.bind(Command.USUAL_SIZE, () -> setZoomPercent(Zoom.USUAL), state -> true);
    }

    /** Builds a view that the player wants to see now. */
    private void callFor(Component view) {
        if (view instanceof LaterView asked && !asked.isBuilt()) build(asked);
    }

    private void show(String which) {
        card = which;
        if (which.equals(TABLE)) for (Component each : deck.getComponents()) callFor(each);
        cards.show(deck, which);
        actions.follow(model.state());
        focusInto(deck);
    }

    private void showSide(int tab) {
        side.setSelectedIndex(tab);
        callFor(side.getSelectedComponent());
        focusInto((Container) side.getSelectedComponent());
    }

    private static void focusInto(Container view) {
        Component first = new LayoutFocusTraversalPolicy().getFirstComponent(view);
        if (first != null) first.requestFocusInWindow();
    }

    /** The size of the sheet. */
    public int zoomPercent() {
        return zoomPercent;
    }

    /** @param percent what lies outside 75 to 200 is taken to the nearer end */
    public void setZoomPercent(int percent) {
        zoomPercent = Zoom.within(percent);
        sheet.setZoom(zoomPercent / 100.0);
        head.showZoom(zoomPercent);
        actions.follow(model.state());
    }

    /** Tells the player something, above the plans, until it is put away; blocks nothing. */
    public void say(String sentence) {
        messages.say(sentence);
    }
}
