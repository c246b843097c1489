package org.mantice.examples;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.XMLConstants;
import javax.xml.catalog.CatalogFeatures;
import javax.xml.catalog.CatalogManager;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParserFactory;
import javax.xml.transform.sax.SAXSource;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.Schema;
import javax.xml.validation.SchemaFactory;
import javax.xml.validation.Validator;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.XMLReader;

/** The W3C schema of MusicXML 4.0 out of the corpus; never touches the network. */
public final class MusicXmlSchema {
    private final Schema schema;

    private MusicXmlSchema(Schema schema) {
        this.schema = schema;
    }

    /** Empty where the corpus is absent. */
    public static Optional<MusicXmlSchema> find() throws SAXException {
        return find("musicxml.xsd");
    }

    /** One of the standard's schemas; empty where the corpus is absent. */
    public static Optional<MusicXmlSchema> find(String file) throws SAXException {
        Path folder = Path.of(System.getProperty("mantice.corpus", ""), "musicxml-4.0-schema");
        if (!Files.isRegularFile(folder.resolve(file))) return Optional.empty();
        SchemaFactory factory = SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI);
        factory.setResourceResolver(CatalogManager.catalogResolver(
                CatalogFeatures.defaults(),
                folder.resolve("offline-catalog.xml").toUri()));
        return Optional.of(new MusicXmlSchema(
                factory.newSchema(new StreamSource(folder.resolve(file).toFile()))));
    }

    /** What is wrong with the text, a line each; empty if nothing. The document type is not loaded. */
    public List<String> problems(InputSource document) throws SAXException, IOException, ParserConfigurationException {
        SAXParserFactory parsers = SAXParserFactory.newInstance();
        parsers.setNamespaceAware(true);
        parsers.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        XMLReader reader = parsers.newSAXParser().getXMLReader();
        List<String> problems = new ArrayList<>();
        Validator validator = schema.newValidator();
        validator.setErrorHandler(new Listing(problems));
        validator.validate(new SAXSource(reader, document));
        return problems;
    }

    private record Listing(List<String> problems) implements ErrorHandler {
        @Override
        public void warning(SAXParseException problem) {
            add(problem);
        }

        @Override
        public void error(SAXParseException problem) {
            add(problem);
        }

        @Override
        public void fatalError(SAXParseException problem) throws SAXException {
            throw problem;
        }

        private void add(SAXParseException problem) {
            problems.add("line " + problem.getLineNumber() + ": " + problem.getMessage());
        }
    }
}
