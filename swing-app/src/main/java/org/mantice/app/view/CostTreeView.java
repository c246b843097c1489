package org.mantice.app.view;

import java.awt.Component;
import java.awt.event.MouseEvent;
import javax.swing.JTree;
import javax.swing.ToolTipManager;
import javax.swing.tree.DefaultMutableTreeNode;
import javax.swing.tree.DefaultTreeCellRenderer;
import javax.swing.tree.DefaultTreeModel;
import javax.swing.tree.TreePath;
import org.mantice.app.model.CostTree;

/** Costs as a tree; a rule's line says in a tip what the rule is about. */
final class CostTreeView extends JTree {
    /** @param name for screen readers */
    CostTreeView(String name) {
        super(new DefaultMutableTreeNode());
        setVisibleRowCount(6);
        getAccessibleContext().setAccessibleName(name);
        ToolTipManager.sharedInstance().registerComponent(this);
    }

    /** Opens the tree as far as {@code levels} below its root. */
    void show(CostTree costs, int levels) {
        DefaultMutableTreeNode root = node(costs);
        setModel(new DefaultTreeModel(root));
        open(root, levels);
    }

    /** One sentence instead of a tree. */
    void say(String text) {
        setModel(new DefaultTreeModel(new DefaultMutableTreeNode(text)));
    }

    private void open(DefaultMutableTreeNode node, int levels) {
        if (levels == 0) return;
        expandPath(new TreePath(node.getPath()));
        for (int i = 0; i < node.getChildCount(); i++) open((DefaultMutableTreeNode) node.getChildAt(i), levels - 1);
    }

    private static DefaultMutableTreeNode node(CostTree costs) {
        DefaultMutableTreeNode node = new DefaultMutableTreeNode(costs);
        costs.children().forEach(child -> node.add(node(child)));
        return node;
    }

    @Override
    public String convertValueToText(
            Object value, boolean selected, boolean expanded, boolean leaf, int row, boolean focused) {
        Object own = value instanceof DefaultMutableTreeNode node ? node.getUserObject() : value;
        if (own instanceof CostTree costs) return costs.text();
        return own == null ? "" : own.toString();
    }

    /** What the rule of the selected line is about, or of the place below it; empty for none. */
    String aboutSelected() {
        TreePath path = getSelectionPath();
        while (path != null) {
            String about = about(path.getLastPathComponent());
            if (!about.isEmpty()) return about;
            path = path.getParentPath();
        }
        return "";
    }

    private static String about(Object line) {
        return line instanceof DefaultMutableTreeNode node && node.getUserObject() instanceof CostTree costs
                ? costs.about()
                : "";
    }

    /** Null where there is nothing to say, as Swing wants it. */
    @Override
    @SuppressWarnings("NullAway")
    public String getToolTipText(MouseEvent event) {
        TreePath path = getPathForLocation(event.getX(), event.getY());
        if (path == null || !(path.getLastPathComponent() instanceof DefaultMutableTreeNode node)) return null;
        if (!(node.getUserObject() instanceof CostTree costs)) return null;
        return costs.about().isEmpty() ? costs.text() : costs.about();
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setCellRenderer(new Line());
    }

    /** Without pictures; what a rule is about is read to those who do not see it. */
    private static final class Line extends DefaultTreeCellRenderer {
        Line() {
            setLeafIcon(null);
            setOpenIcon(null);
            setClosedIcon(null);
        }

        @Override
        public Component getTreeCellRendererComponent(
                JTree tree, Object value, boolean selected, boolean open, boolean leaf, int row, boolean focused) {
            super.getTreeCellRendererComponent(tree, value, selected, open, leaf, row, focused);
            getAccessibleContext().setAccessibleDescription(about(value));
            return this;
        }
    }
}
