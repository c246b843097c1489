package org.mantice.app.view;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.awt.event.MouseEvent;
import java.util.Optional;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.Scrollable;
import javax.swing.SwingConstants;
import javax.swing.ToolTipManager;
import org.mantice.app.look.Looks;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.PlannerState;
import org.mantice.app.model.Selection;
import org.mantice.app.sheet.SheetContent;
import org.mantice.app.sheet.SheetPainter;
import org.mantice.app.sheet.SheetPainter.Target;
import org.mantice.app.words.PlanWords;
import org.mantice.app.words.Words;

/**
 * The sheet in a window: shows what the model holds, lets the player point at any decision by mouse or key. Put it into a
 * scroll pane.
 */
public final class SheetView extends JComponent implements Scrollable {
    /** Pixels between two staff lines at the usual size and 100 %. */
    private static final float USUAL_SPACE = 8;

    private static final double LEAST_ZOOM = 0.25;
    private static final double MOST_ZOOM = 8;
    /** Before the view has a size. */
    private static final int FIRST_WIDTH = 1000;

    private final transient PlannerModel model;
    private final transient Words words;
    private final transient Actions actions;
    private final transient SheetContents contents;
    private final transient SpotWords spots;
    private transient PlannerState state;
    private transient Optional<SheetContent> content = Optional.empty();
    private transient Optional<SheetPainter> painter = Optional.empty();
    private double zoom = 1;
    private double column;

    public SheetView(PlannerModel model, Words words, Actions actions) {
        this.model = model;
        this.words = words;
        this.actions = actions;
        this.contents = new SheetContents(new PlanWords(words, model.packs().providers()));
        this.spots = new SpotWords(words);
        this.state = model.state();
        updateUI();
        setOpaque(true);
        setFocusable(true);
        ToolTipManager.sharedInstance().registerComponent(this);
        new SheetGestures(this).install();
        getAccessibleContext().setAccessibleName(words.text("sheet.name"));
        model.addListener(this::show);
        content = contents.of(state);
        describe();
    }

    /** @param factor of the usual size, 1 for 100 % */
    public void setZoom(double factor) {
        if (!(factor >= LEAST_ZOOM && factor <= MOST_ZOOM))
            throw new IllegalArgumentException("zoom is " + factor + "; allowed: " + LEAST_ZOOM + " to " + MOST_ZOOM);
        if (factor == zoom) return;
        zoom = factor;
        layAgain();
    }

    public double zoom() {
        return zoom;
    }

    private double space() {
        return UIScale.scale(USUAL_SPACE) * zoom;
    }

    private void show(PlannerState next) {
        PlannerState before = state;
        state = next;
        if (!SheetContents.isLaidOutAlike(before, next)) {
            content = contents.of(next);
            layAgain();
        } else {
            int band = SheetContents.selectedBand(next);
            painter = painter.map(
                    sheet -> sheet.pointing(band, SheetContents.selected(next), SheetContents.current(next)));
            repaint();
        }
        describe();
        if (!before.selection().equals(next.selection())) showSelection();
    }

    private void layAgain() {
        painter = Optional.empty();
        revalidate();
        repaint();
    }

    /** The sheet as laid out for the present width. */
    Optional<SheetPainter> sheet() {
        if (painter.isEmpty() && content.isPresent()) {
            int width = getWidth() > 0 ? getWidth() : FIRST_WIDTH;
            SheetPainter laid = new SheetPainter(content.get(), words, width, space());
            painter = Optional.of(laid.pointing(
                    SheetContents.selectedBand(state), SheetContents.selected(state), SheetContents.current(state)));
        }
        return painter;
    }

    int bands() {
        return state.compared().size();
    }

    private Optional<Target> selected() {
        return sheet().flatMap(sheet -> SheetContents.selected(state)
                .flatMap(spot -> new SheetWalk(sheet, bands()).find(SheetContents.selectedBand(state), spot)));
    }

    private void showSelection() {
        selected().ifPresent(target -> {
            Rectangle bounds = target.bounds().getBounds();
            int air = (int) Math.ceil(4 * space());
            bounds.grow(air, air);
            scrollRectToVisible(bounds);
        });
    }

    private void describe() {
        getAccessibleContext()
                .setAccessibleDescription(content.flatMap(sheet -> SheetContents.selected(state)
                                .map(spot -> spots.at(sheet, SheetContents.selectedBand(state), spot)))
                        .orElse(words.text(content.isEmpty() ? "sheet.empty" : "sheet.nothingSelected")));
    }

    void select(Target target) {
        model.select(Optional.of(new Selection(state.compared().get(target.band()), target.spot())));
    }

    void pointAt(MouseEvent event) {
        requestFocusInWindow();
        sheet().flatMap(sheet -> sheet.targetAt(event.getX(), event.getY())).ifPresent(target -> {
            column = target.bounds().getCenterX();
            select(target);
        });
    }

    void chooseAt(MouseEvent event) {
        sheet().ifPresent(sheet -> sheet.headAt(event.getX(), event.getY())
                .ifPresent(band -> model.choose(state.compared().get(band))));
    }

    void step(SheetWalk.Step step) {
        if (sheet().isEmpty()) return;
        SheetWalk walk = new SheetWalk(sheet().get(), bands());
        Optional<Target> here = selected();
        Optional<Target> next = here.isEmpty() ? walk.start() : walk.from(here.get(), step, column);
        next.ifPresent(target -> {
            if (here.isEmpty() || !step.isUpright()) column = target.bounds().getCenterX();
            select(target);
        });
    }

    void perform(Command command) {
        Action action = actions.get(command);
        if (action.isEnabled()) action.actionPerformed(new ActionEvent(this, ActionEvent.ACTION_PERFORMED, null));
    }

    /** Null where there is nothing to say, as Swing asks. */
    @Override
    @SuppressWarnings("NullAway")
    public String getToolTipText(MouseEvent event) {
        return sheet().flatMap(sheet -> sheet.targetAt(event.getX(), event.getY()))
                .flatMap(target -> content.map(sheet -> spots.at(sheet, target.band(), target.spot())))
                .orElse(null);
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean other = width != getWidth();
        super.setBounds(x, y, width, height);
        if (other) layAgain();
    }

    @Override
    public Dimension getPreferredSize() {
        int width = getWidth() > 0 ? getWidth() : FIRST_WIDTH;
        return new Dimension(width, sheet().map(sheet -> (int) sheet.height()).orElse((int) (40 * space())));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Rectangle clip = graphics.getClipBounds();
        graphics.setColor(Looks.sheetColours().paper());
        graphics.fillRect(clip.x, clip.y, clip.width, clip.height);
        if (sheet().isPresent()) sheet().get().paint((Graphics2D) graphics, Looks.sheetColours(), clip);
        else SheetFrame.paintMessage(this, (Graphics2D) graphics, words.text("sheet.empty"));
        if (isFocusOwner()) SheetFrame.paintFocus(this, (Graphics2D) graphics);
    }

    @Override
    public void updateUI() {
        setFont(javax.swing.UIManager.getFont("Label.font"));
        if (model != null) layAgain();
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return new Dimension(UIScale.scale(FIRST_WIDTH), UIScale.scale(600));
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return (int) Math.ceil(4 * space());
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        int page = orientation == SwingConstants.VERTICAL ? visible.height : visible.width;
        return Math.max(1, page - (int) (4 * space()));
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return getParent() != null && getParent().getHeight() > getPreferredSize().height;
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) accessibleContext = new AccessibleSheet();
        return accessibleContext;
    }

    /** A picture with a description that says what is selected; the table beside the sheet has every value. */
    private final class AccessibleSheet extends AccessibleJComponent {
        @Override
        public AccessibleRole getAccessibleRole() {
            return AccessibleRole.CANVAS;
        }
    }
}
