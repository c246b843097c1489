package org.mantice.app.view;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.awt.event.MouseEvent;
import java.util.Optional;
import java.util.function.BiConsumer;
import javax.swing.Action;
import javax.swing.ToolTipManager;
import org.mantice.app.look.Looks;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.PlannerState;
import org.mantice.app.model.TuneEditor;
import org.mantice.app.sheet.ChordTarget;
import org.mantice.app.sheet.Pointing;
import org.mantice.app.sheet.SheetContent;
import org.mantice.app.sheet.SheetPainter;
import org.mantice.app.words.PlanWords;
import org.mantice.app.words.Words;
import org.mantice.tune.WrittenPlace;

/**
 * The sheet in a window: shows what the model holds, lets the player point at any decision and any place of the chord line
 * by mouse or key, and type chords there. Put it into a scroll pane.
 */
public final class SheetView extends ScrolledCanvas {
    /** Pixels between two staff lines at the usual size and 100 %. */
    private static final float USUAL_SPACE = 8;

    private static final double LEAST_ZOOM = 0.25;
    private static final double MOST_ZOOM = 8;
    /** Before the view has a size. */
    private static final int FIRST_WIDTH = 1000;

    private final transient Words words;
    private final transient Actions actions;
    private final transient SheetContents contents;
    private final transient SheetPointer pointer;
    private final transient SheetSaying saying;
    private final transient ChordTyping typing;
    private transient PlannerState state;
    private transient Optional<SheetContent> content = Optional.empty();
    private transient Optional<SheetPainter> painter = Optional.empty();
    private transient BiConsumer<WrittenPlace, WrittenPlace> move = (from, to) -> {};
    private double zoom = 1;

    public SheetView(PlannerModel model, TuneEditor editor, Words words, Actions actions) {
        this.words = words;
        this.actions = actions;
        this.contents = new SheetContents(new PlanWords(words, model.packs().providers()), editor);
        this.pointer = new SheetPointer(model, editor, this);
        this.saying = new SheetSaying(words, editor);
        this.state = model.state();
        this.typing = new ChordTyping(this, editor, words);
        updateUI();
        setOpaque(true);
        setFocusable(true);
        ToolTipManager.sharedInstance().registerComponent(this);
        new SheetGestures(this, editor).install();
        getAccessibleContext().setAccessibleName(words.text("sheet.name"));
        model.addListener(this::show);
        editor.addListener(this::pointElsewhere);
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

    double space() {
        return UIScale.scale(USUAL_SPACE) * zoom;
    }

    @Override
    double scrollStep() {
        return 4 * space();
    }

    private void show(PlannerState next) {
        PlannerState before = state;
        state = next;
        Optional<SheetContent> shown = contents.of(next);
        if (SheetContents.areLaidOutAlike(content, shown)) {
            pointElsewhere();
        } else {
            SheetAnchor anchor = SheetAnchor.of(this);
            content = shown;
            layAgain();
            pointer.findAgain();
            anchor.hold();
            describe();
        }
        if (!before.selection().equals(next.selection())) showSelection();
    }

    /** Nothing has changed but what is pointed at. */
    private void pointElsewhere() {
        Pointing pointing = contents.pointing(state);
        boolean elsewhere = !pointing.chord().equals(pointing().chord());
        content = content.map(sheet -> sheet.pointing(pointing));
        painter = painter.map(sheet -> sheet.pointing(pointing));
        repaint();
        describe();
        if (elsewhere) showSelection();
    }

    private void layAgain() {
        painter = Optional.empty();
        revalidate();
        repaint();
        typing.placeAgain();
    }

    /** The sheet as laid out for the present width. */
    Optional<SheetPainter> sheet() {
        if (painter.isEmpty() && content.isPresent()) {
            int width = getWidth() > 0 ? getWidth() : FIRST_WIDTH;
            SheetPainter laid = new SheetPainter(content.get(), words, width, space());
            painter = Optional.of(laid.pointing(contents.pointing(state)));
        }
        return painter;
    }

    int bands() {
        return content.map(sheet -> sheet.bands().size()).orElse(0);
    }

    Pointing pointing() {
        return content.map(SheetContent::pointing).orElse(Pointing.NOWHERE);
    }

    SheetPointer pointer() {
        return pointer;
    }

    ChordTyping typing() {
        return typing;
    }

    private void showSelection() {
        pointer.selected().ifPresent(stop -> {
            Rectangle bounds = stop.bounds().getBounds();
            int air = (int) Math.ceil(4 * space());
            bounds.grow(air, air);
            scrollRectToVisible(bounds);
        });
    }

    private void describe() {
        getAccessibleContext().setAccessibleDescription(saying.selected(content));
    }

    String placeWords(ChordTarget target) {
        return saying.place(target.spot().place());
    }

    /** @param work moves a chord from one place to another */
    void onMove(BiConsumer<WrittenPlace, WrittenPlace> work) {
        move = work;
    }

    void move(WrittenPlace from, WrittenPlace to) {
        move.accept(from, to);
    }

    void perform(Command command) {
        Action action = actions.get(command);
        if (action.isEnabled()) action.actionPerformed(new ActionEvent(this, ActionEvent.ACTION_PERFORMED, null));
    }

    Actions actions() {
        return actions;
    }

    /** Null where there is nothing to say, as Swing asks. */
    @Override
    @SuppressWarnings("NullAway")
    public String getToolTipText(MouseEvent event) {
        return pointer.at(event.getX(), event.getY())
                .flatMap(stop -> content.map(sheet -> saying.at(sheet, stop)))
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
        if (contents != null) layAgain();
    }
}
