package org.mantice.reading;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** An element with its children; what is absent reads as empty. */
final class XmlNode {
    private final String name;
    private final int line;
    private final Map<String, String> attributes = new LinkedHashMap<>(2);
    private final List<XmlNode> children = new ArrayList<>(2);
    private final StringBuilder text = new StringBuilder(0);

    XmlNode(String name, int line) {
        this.name = name;
        this.line = line;
    }

    void put(String attribute, String value) {
        attributes.put(attribute, value);
    }

    void add(XmlNode child) {
        children.add(child);
    }

    void append(String more) {
        text.append(more);
    }

    String name() {
        return name;
    }

    /** In the text of the file, from 1. */
    int line() {
        return line;
    }

    boolean is(String other) {
        return name.equals(other);
    }

    /** Value of an attribute, stripped; empty if absent. */
    String attribute(String key) {
        return attributes.getOrDefault(key, "").strip();
    }

    boolean has(String child) {
        return children.stream().anyMatch(node -> node.is(child));
    }

    List<XmlNode> children() {
        return children;
    }

    Stream<XmlNode> children(String child) {
        return children.stream().filter(node -> node.is(child));
    }

    Optional<XmlNode> child(String child) {
        return children(child).findFirst();
    }

    /** Own text, stripped. */
    String text() {
        return text.toString().strip();
    }

    /** Own text as it is, for lyrics and the like where spaces count. */
    String rawText() {
        return text.toString();
    }

    /** Text of the first such child, stripped; empty if absent. */
    String text(String child) {
        return child(child).map(XmlNode::text).orElse("");
    }
}
