package org.mantice.app.view;

import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import javax.swing.Scrollable;
import javax.swing.ToolTipManager;
import javax.swing.UIManager;
import org.mantice.app.look.Looks;
import org.mantice.app.model.ButtonMapModel;
import org.mantice.app.sheet.ButtonMap;
import org.mantice.app.sheet.ButtonMapPainter;
import org.mantice.app.words.Words;

/** The map itself: painted, walked over with the arrow keys, each button told by the mouse and to screen readers. */
final class ButtonMapCanvas extends JComponent implements Scrollable {
    /** Heights of a line of text that a button measures across. */
    private static final double LINES_A_BUTTON = 1.5;
    /** Small instruments are shown larger where there is room, up to this. */
    private static final double MOST_ENLARGED = 1.8;

    private static final Map<String, ButtonMap.Way> KEYS = Map.of(
            "UP",
            ButtonMap.Way.TO_CHIN,
            "DOWN",
            ButtonMap.Way.TO_FLOOR,
            "LEFT",
            ButtonMap.Way.TO_BELLOWS,
            "RIGHT",
            ButtonMap.Way.OUTWARD);

    private final transient Words words;
    private transient Optional<ButtonMapModel> shown = Optional.empty();
    private int cursor;

    ButtonMapCanvas(Words words) {
        this.words = words;
        setFocusable(true);
        updateUI();
        getAccessibleContext().setAccessibleName(words.text("map.title"));
        ToolTipManager.sharedInstance().registerComponent(this);
        KEYS.forEach(this::bind);
        addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                requestFocusInWindow();
                at(event).ifPresent(ButtonMapCanvas.this::moveTo);
            }
        });
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent event) {
                repaint();
            }

            @Override
            public void focusLost(FocusEvent event) {
                repaint();
            }
        });
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null)
            accessibleContext = new AccessibleJComponent() {
                @Override
                public AccessibleRole getAccessibleRole() {
                    return AccessibleRole.CANVAS;
                }
            };
        return accessibleContext;
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setFont(UIManager.getFont("Label.font"));
        revalidate();
    }

    private void bind(String key, ButtonMap.Way way) {
        getInputMap().put(KeyStroke.getKeyStroke(key), way);
        getActionMap().put(way, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                shown.filter(model -> !model.map().buttons().isEmpty())
                        .ifPresent(model -> moveTo(model.map().beside(cursor, way)));
            }
        });
    }

    void show(ButtonMapModel model) {
        boolean other = shown.map(before ->
                        before.map().buttons().size() != model.map().buttons().size())
                .orElse(true);
        shown = Optional.of(model);
        if (other) cursor = model.map().home();
        for (int i = model.map().buttons().size() - 1; i >= 0; i--)
            if (model.map().buttons().get(i).finger().isPresent()) cursor = i;
        getAccessibleContext()
                .setAccessibleName(
                        words.text("map.title") + ": " + model.heading().replace("\n", "; "));
        tell();
        revalidate();
        repaint();
        if (cursor < model.map().buttons().size()) scrollRectToVisible(around(cursor));
    }

    /** The first time there is room, the place of the cursor comes into sight. */
    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean first = getHeight() == 0 && height > 0;
        super.setBounds(x, y, width, height);
        boolean there =
                shown.filter(model -> cursor < model.map().buttons().size()).isPresent();
        if (first && there) EventQueue.invokeLater(() -> scrollRectToVisible(around(cursor)));
    }

    private void moveTo(int index) {
        cursor = index;
        tell();
        scrollRectToVisible(around(index));
        repaint();
    }

    private void tell() {
        String text = shown.filter(model -> cursor < model.map().buttons().size())
                .map(model -> model.words(cursor, words))
                .orElse("");
        getAccessibleContext().setAccessibleDescription(text);
    }

    /** A readable size, or as much more as shows the whole map in the room there is. */
    private double pixelsPerMm() {
        ButtonMap map = shown.orElseThrow().map();
        double readable = LINES_A_BUTTON * getFontMetrics(getFont()).getHeight() / map.buttonMm();
        if (getParent() == null) return readable;
        double whole =
                Math.min(getParent().getWidth() / map.widthMm(), getParent().getHeight() / map.heightMm());
        return Math.max(readable, Math.min(MOST_ENLARGED * readable, whole));
    }

    /** Where the map begins: it stands in the middle. */
    private double left() {
        return Math.max(0, (getWidth() - shown.orElseThrow().map().widthMm() * pixelsPerMm()) / 2);
    }

    private Rectangle around(int index) {
        ButtonMap.Button button = shown.orElseThrow().map().buttons().get(index);
        double scale = pixelsPerMm();
        int room = (int) (40 * scale);
        return new Rectangle(
                (int) (left() + button.x() * scale) - room / 2, (int) (button.y() * scale) - room / 2, room, room);
    }

    private OptionalInt at(MouseEvent event) {
        return shown.map(model -> model.map().at((event.getX() - left()) / pixelsPerMm(), event.getY() / pixelsPerMm()))
                .orElse(OptionalInt.empty());
    }

    /** Null where there is nothing to say, as Swing asks. */
    @Override
    @SuppressWarnings("NullAway")
    public String getToolTipText(MouseEvent event) {
        OptionalInt index = at(event);
        return index.isEmpty() ? null : shown.orElseThrow().words(index.getAsInt(), words);
    }

    @Override
    public Dimension getPreferredSize() {
        if (shown.isEmpty()) return new Dimension();
        ButtonMap map = shown.get().map();
        double scale = pixelsPerMm();
        return new Dimension((int) (map.widthMm() * scale), (int) (map.heightMm() * scale));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        if (shown.isEmpty()) return;
        Graphics2D scaled = (Graphics2D) graphics.create();
        scaled.setColor(Looks.sheetColours().paper());
        scaled.fillRect(0, 0, getWidth(), getHeight());
        scaled.translate(left(), 0);
        scaled.scale(pixelsPerMm(), pixelsPerMm());
        boolean framed = isFocusOwner() && cursor < shown.get().map().buttons().size();
        new ButtonMapPainter(shown.get().map(), Looks.sheetColours())
                .paint(scaled, framed ? OptionalInt.of(cursor) : OptionalInt.empty());
        scaled.dispose();
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return getFontMetrics(getFont()).getHeight();
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return visible.height;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return getParent() != null && getParent().getWidth() > getPreferredSize().width;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return getParent() != null && getParent().getHeight() > getPreferredSize().height;
    }
}
