package org.mantice.app.view;

import java.util.List;
import javax.swing.table.AbstractTableModel;
import org.mantice.app.model.FiguresModel;
import org.mantice.app.text.FigureRow;
import org.mantice.app.words.Words;

/**
 * The figures as rows and columns: first whether each plan is on the sheet, then whether it is chosen, then a row a
 * figure.
 */
final class FiguresTable extends AbstractTableModel {
    static final int ON_SHEET = 0;
    static final int CHOSEN = 1;
    private static final int HEAD = 2;

    private final transient Words words;
    private transient FiguresModel figures = new FiguresModel(List.of(), List.of());

    FiguresTable(Words words) {
        this.words = words;
    }

    FiguresModel figures() {
        return figures;
    }

    /** Returns whether there are other columns or rows than before, which makes all of them new. */
    boolean show(FiguresModel shown) {
        boolean other = shown.columns().size() != figures.columns().size()
                || shown.lines().size() != figures.lines().size();
        figures = shown;
        if (other) fireTableStructureChanged();
        else fireTableDataChanged();
        return other;
    }

    @Override
    public int getRowCount() {
        return figures.lines().isEmpty() ? 0 : HEAD + figures.lines().size();
    }

    @Override
    public int getColumnCount() {
        return figures.columns().size();
    }

    @Override
    public String getColumnName(int column) {
        FiguresModel.Column plan = figures.columns().get(column);
        return words.text("figures.plan", plan.mark(), plan.label(), plan.cost(), plan.proven());
    }

    String title(int row) {
        return switch (row) {
            case ON_SHEET -> words.text("figures.onSheet.row");
            case CHOSEN -> words.text("figures.chosen.row");
            default -> figures.lines().get(row - HEAD).title();
        };
    }

    String meaning(int row) {
        return switch (row) {
            case ON_SHEET -> words.text("figures.onSheet.meaning");
            case CHOSEN -> words.text("figures.chosen.meaning");
            default -> figures.lines().get(row - HEAD).meaning();
        };
    }

    /** Whether the plan is on the sheet or chosen, in the two first rows. */
    boolean isOn(int row, int column) {
        FiguresModel.Column plan = figures.columns().get(column);
        return row == ON_SHEET ? plan.compared() : plan.chosen();
    }

    FigureRow.Standing rank(int row, int column) {
        return row < HEAD
                ? FigureRow.Standing.NEITHER
                : figures.lines().get(row - HEAD).values().get(column).rank();
    }

    @Override
    public String getValueAt(int row, int column) {
        return switch (row) {
            case ON_SHEET -> words.text(isOn(row, column) ? "figures.onSheet" : "figures.notOnSheet");
            case CHOSEN -> words.text(isOn(row, column) ? "figures.chosen" : "figures.notChosen");
            default -> figures.lines().get(row - HEAD).values().get(column).inCell();
        };
    }

    /** The whole cell in a sentence, for those who do not see the table. */
    String spoken(int row, int column) {
        return words.text(
                "figures.cell",
                title(row),
                figures.columns().get(column).letter() + ", "
                        + figures.columns().get(column).label(),
                getValueAt(row, column));
    }
}
