package org.mantice.reading;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Enumeration;
import java.util.HexFormat;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** A second, plain look at a MusicXML file through a document tree, to count notes by. */
record PlainMusicXml(Document document) {
    static PlainMusicXml of(Path path) throws IOException {
        byte[] bytes = path.toString().endsWith(".mxl") ? firstScore(path) : Files.readAllBytes(path);
        try {
            DocumentBuilder builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
            builder.setEntityResolver((publicId, systemId) -> new InputSource(new StringReader("")));
            boolean misdeclared =
                    new String(bytes, 0, 80, StandardCharsets.ISO_8859_1).matches("(?s)<\\?xml[^>]*[uU][tT][fF]-16.*");
            InputSource source = new InputSource(new ByteArrayInputStream(bytes));
            if (misdeclared) source = new InputSource(new StringReader(new String(bytes, StandardCharsets.UTF_8)));
            return new PlainMusicXml(builder.parse(source));
        } catch (ParserConfigurationException | SAXException e) {
            throw new IOException(path.toString(), e);
        }
    }

    private static byte[] firstScore(Path path) throws IOException {
        try (ZipFile zip = new ZipFile(path.toFile())) {
            Enumeration<? extends ZipEntry> entries = zip.entries();
            while (entries.hasMoreElements()) {
                ZipEntry entry = entries.nextElement();
                if (entry.getName().startsWith("META-INF") || !entry.getName().endsWith("xml")) continue;
                try (InputStream in = zip.getInputStream(entry)) {
                    return in.readAllBytes();
                }
            }
        }
        throw new IOException("no score in " + path);
    }

    static String fingerprint(Path path) throws IOException {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(path)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    int pitchedNotes() {
        return count(false);
    }

    /** Pitched notes that are neither chord members nor grace nor cue notes. */
    int mainNotes() {
        return count(true);
    }

    private int count(boolean mainOnly) {
        NodeList notes = document.getElementsByTagName("note");
        int count = 0;
        for (int i = 0; i < notes.getLength(); i++) {
            Element note = (Element) notes.item(i);
            boolean side = has(note, "chord") || has(note, "grace") || has(note, "cue");
            if (has(note, "pitch") && !(mainOnly && side)) count++;
        }
        return count;
    }

    private static boolean has(Element note, String child) {
        for (int i = 0; i < note.getChildNodes().getLength(); i++)
            if (note.getChildNodes().item(i).getNodeName().equals(child)) return true;
        return false;
    }
}
