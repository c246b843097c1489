package org.mantice.writing;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javax.xml.XMLConstants;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.Schema;
import javax.xml.validation.SchemaFactory;
import org.mantice.reading.Corpus;
import org.w3c.dom.bootstrap.DOMImplementationRegistry;
import org.w3c.dom.ls.DOMImplementationLS;
import org.w3c.dom.ls.LSInput;
import org.xml.sax.SAXException;

/** The schema of MusicXML 4.0 as the standard publishes it; nothing is fetched from elsewhere. */
final class MusicXmlSchema {
    private final Schema schema;

    private MusicXmlSchema(Schema schema) {
        this.schema = schema;
    }

    /** @param file musicxml.xsd or container.xsd; the test is skipped where the corpus is absent */
    static MusicXmlSchema of(String file) {
        Path folder = Corpus.folder("musicxml-4.0-schema");
        SchemaFactory factory = SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI);
        factory.setResourceResolver(
                (type, namespace, publicId, systemId, base) -> input(folder.resolve(Path.of(systemId).getFileName())));
        try {
            return new MusicXmlSchema(factory.newSchema(folder.resolve(file).toFile()));
        } catch (SAXException e) {
            throw new IllegalStateException("schema " + file + " in " + folder, e);
        }
    }

    private static LSInput input(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            DOMImplementationLS dom = (DOMImplementationLS)
                    DOMImplementationRegistry.newInstance().getDOMImplementation("LS");
            LSInput input = dom.createLSInput();
            input.setSystemId(file.toUri().toString());
            input.setByteStream(new ByteArrayInputStream(in.readAllBytes()));
            return input;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("every Java platform can load and save XML", e);
        }
    }

    /** The first thing that is wrong; empty if nothing is. */
    Optional<String> complaint(byte[] xml) {
        try {
            schema.newValidator().validate(new StreamSource(new ByteArrayInputStream(xml)));
            return Optional.empty();
        } catch (SAXException e) {
            return Optional.of(e.toString());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
