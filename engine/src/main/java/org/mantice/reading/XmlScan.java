package org.mantice.reading;

import java.io.StringReader;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.mantice.fault.FilePlace;
import org.mantice.reading.TuneReadException.Reason;

/**
 * Walks through XML text block by block. Document types are passed over without being read, so neither entities nor
 * the network are ever consulted; an entity in the text is refused.
 */
final class XmlScan {
    private final FilePlace place;
    private final String text;
    private final XMLStreamReader reader;
    private int depth;

    XmlScan(FilePlace place, String text) {
        this.place = place;
        this.text = text;
        try {
            reader = open(text);
        } catch (XMLStreamException e) {
            throw damaged(e);
        }
    }

    private static XMLStreamReader open(String text) throws XMLStreamException {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
        factory.setProperty(XMLInputFactory.IS_NAMESPACE_AWARE, false);
        return factory.createXMLStreamReader(new StringReader(text.stripLeading()));
    }

    static boolean isWellFormed(String text) {
        try {
            XMLStreamReader reader = open(text);
            while (reader.hasNext()) step(reader);
            return true;
        } catch (XMLStreamException e) {
            return false;
        }
    }

    /** Goes on to the next element that starts in the current one. @return false at the current one's end */
    boolean enterNext() {
        for (int event = next(); event != XMLStreamConstants.END_DOCUMENT; event = next()) {
            if (event == XMLStreamConstants.START_ELEMENT) {
                depth++;
                return true;
            }
            if (event == XMLStreamConstants.END_ELEMENT) {
                depth--;
                return false;
            }
        }
        return false;
    }

    /** Name of the element that was just entered. */
    String name() {
        return reader.getLocalName();
    }

    String attribute(String key) {
        String value = reader.getAttributeValue(null, key);
        return value == null ? "" : value.strip();
    }

    int line() {
        return reader.getLocation().getLineNumber();
    }

    FilePlace here() {
        return place.atLine(line());
    }

    /** Reads the element that was just entered to its end. */
    XmlNode block() {
        return block(new int[1]);
    }

    private XmlNode block(int[] size) {
        XmlNode node = new XmlNode(name(), line());
        size[0] += 1 + reader.getAttributeCount();
        if (size[0] > ReadLimits.XML_BLOCK)
            throw TuneReadException.of(Reason.BLOCK_TOO_LARGE, here(), ReadLimits.XML_BLOCK);
        if (depth > ReadLimits.XML_DEPTH) throw TuneReadException.of(Reason.TOO_DEEP, here(), ReadLimits.XML_DEPTH);
        for (int i = 0; i < reader.getAttributeCount(); i++)
            node.put(reader.getAttributeLocalName(i), reader.getAttributeValue(i));
        for (int event = next(); event != XMLStreamConstants.END_ELEMENT; event = next()) {
            switch (event) {
                case XMLStreamConstants.START_ELEMENT -> {
                    depth++;
                    node.add(block(size));
                }
                case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA, XMLStreamConstants.SPACE ->
                    node.append(reader.getText());
                default -> {}
            }
        }
        depth--;
        return node;
    }

    /** Passes over the element that was just entered. */
    void skip() {
        int outer = depth - 1;
        while (depth > outer) {
            int event = next();
            if (event == XMLStreamConstants.START_ELEMENT) depth++;
            if (event == XMLStreamConstants.END_ELEMENT) depth--;
        }
    }

    private int next() {
        try {
            if (!reader.hasNext()) return XMLStreamConstants.END_DOCUMENT;
            int event = step(reader);
            if (event == XMLStreamConstants.ENTITY_REFERENCE)
                throw TuneReadException.of(Reason.ENTITY, place.atLine(line()));
            return event;
        } catch (XMLStreamException e) {
            throw damaged(e);
        }
    }

    /**
     * One step of the parser, which meets some damage with errors that it does not declare: it finds no words for an
     * illegal character in a document type, for one.
     */
    private static int step(XMLStreamReader reader) throws XMLStreamException {
        try {
            return reader.next();
        } catch (RuntimeException e) {
            throw new XMLStreamException("it cannot be taken apart here", reader.getLocation(), e);
        }
    }

    private TuneReadException damaged(XMLStreamException e) {
        int line = e.getLocation() == null ? 0 : e.getLocation().getLineNumber();
        String why = e.getMessage() == null ? "" : e.getMessage();
        why = why.substring(why.indexOf("Message: ") < 0 ? 0 : why.indexOf("Message: ") + "Message: ".length());
        if (why.contains("entity") && why.contains("was referenced"))
            return TuneReadException.causedBy(e, Reason.ENTITY, place.atLine(line));
        boolean atEnd = e.getLocation() != null
                && e.getLocation().getCharacterOffset() >= text.strip().length() - 1;
        if (atEnd) return TuneReadException.causedBy(e, Reason.TRUNCATED, place.atLine(line));
        return TuneReadException.causedBy(e, Reason.NOT_WELL_FORMED, place.atLine(line), why);
    }
}
