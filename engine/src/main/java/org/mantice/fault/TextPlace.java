package org.mantice.fault;

/**
 * A place in the text of a file.
 *
 * @param line from 1
 * @param column characters from the start of the line, from 1
 */
public record TextPlace(int line, int column) implements Comparable<TextPlace> {
    public TextPlace {
        if (line < 1) throw new IllegalArgumentException("line is " + line + "; allowed: 1 or more");
        if (column < 1) throw new IllegalArgumentException("column is " + column + "; allowed: 1 or more");
    }

    @Override
    public int compareTo(TextPlace other) {
        return line != other.line ? Integer.compare(line, other.line) : Integer.compare(column, other.column);
    }

    /** As {@code "line 12, column 7"}. */
    @Override
    public String toString() {
        return "line " + line + ", column " + column;
    }
}
