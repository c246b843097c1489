package org.mantice.app.text;

import java.util.ArrayList;
import java.util.List;

/** Rows of cells in columns as wide as their widest cell; the first column is left-aligned, the others right-aligned. */
public final class TextTable {
    private final List<List<String>> rows = new ArrayList<>();

    public void row(List<String> cells) {
        rows.add(List.copyOf(cells));
    }

    /** Lines ending in a line feed; no trailing blanks. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int column = 0; column < row.size(); column++) {
                String pad = " ".repeat(width(column) - row.get(column).length());
                if (column > 0) line.append("  ");
                line.append(column == 0 ? row.get(column) + pad : pad + row.get(column));
            }
            text.append(line.toString().stripTrailing()).append('\n');
        }
        return text.toString();
    }

    private int width(int column) {
        return rows.stream()
                .filter(row -> row.size() > column)
                .mapToInt(row -> row.get(column).length())
                .max()
                .orElse(0);
    }
}
