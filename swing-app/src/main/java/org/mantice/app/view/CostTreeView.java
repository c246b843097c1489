package org.mantice.app.view;

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

    @Override
    public String getToolTipText(MouseEvent event) {
        TreePath path = getPathForLocation(event.getX(), event.getY());
        if (path == null || !(path.getLastPathComponent() instanceof DefaultMutableTreeNode node)) return null;
        if (!(node.getUserObject() instanceof CostTree costs)) return null;
        return costs.about().isEmpty() ? costs.text() : costs.about();
    }

    @Override
    public void updateUI() {
        super.updateUI();
        DefaultTreeCellRenderer plain = new DefaultTreeCellRenderer();
        plain.setLeafIcon(null);
        plain.setOpenIcon(null);
        plain.setClosedIcon(null);
        setCellRenderer(plain);
    }
}
