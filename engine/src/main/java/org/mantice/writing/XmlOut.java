package org.mantice.writing;

import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Builds indented XML. Attributes are given as names and values in turn; one with an empty value is left out. Characters
 * that XML 1.0 cannot hold are left out too.
 */
final class XmlOut {
    private final StringBuilder text = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    private final Deque<String> open = new ArrayDeque<>();

    XmlOut open(String name, String... attributes) {
        tag(name, attributes).append(">\n");
        open.push(name);
        return this;
    }

    XmlOut close() {
        String name = open.pop();
        indent().append("</").append(name).append(">\n");
        return this;
    }

    XmlOut empty(String name, String... attributes) {
        tag(name, attributes).append("/>\n");
        return this;
    }

    XmlOut leaf(String name, String content, String... attributes) {
        tag(name, attributes).append('>');
        escape(content, false);
        text.append("</").append(name).append(">\n");
        return this;
    }

    /** With an attribute that is there and empty. */
    XmlOut leafWithEmpty(String name, String content, String attribute) {
        indent().append('<').append(name).append(' ').append(attribute).append("=\"\">");
        escape(content, false);
        text.append("</").append(name).append(">\n");
        return this;
    }

    XmlOut leaf(String name, long content) {
        return leaf(name, String.valueOf(content));
    }

    byte[] bytes() {
        if (!open.isEmpty()) throw new IllegalStateException("element " + open.peek() + " is not closed");
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private StringBuilder tag(String name, String... attributes) {
        indent().append('<').append(name);
        for (int i = 0; i < attributes.length; i += 2) {
            if (attributes[i + 1].isEmpty()) continue;
            text.append(' ').append(attributes[i]).append("=\"");
            escape(attributes[i + 1], true);
            text.append('"');
        }
        return text;
    }

    private StringBuilder indent() {
        return text.append("  ".repeat(open.size()));
    }

    private void escape(String content, boolean attribute) {
        content.codePoints().filter(XmlOut::isAllowed).forEach(c -> {
            switch (c) {
                case '&' -> text.append("&amp;");
                case '<' -> text.append("&lt;");
                case '>' -> text.append("&gt;");
                case '"' -> text.append(attribute ? "&quot;" : "\"");
                case '\r' -> text.append("&#13;");
                case '\n', '\t' -> {
                    if (attribute) text.append("&#").append(c).append(';');
                    else text.append((char) c);
                }
                default -> text.appendCodePoint(c);
            }
        });
    }

    /** XML 1.0, production Char. */
    private static boolean isAllowed(int c) {
        return c == '\t'
                || c == '\n'
                || c == '\r'
                || c >= 0x20 && c <= 0xD7FF
                || c >= 0xE000 && c <= 0xFFFD
                || c >= 0x10000;
    }
}
