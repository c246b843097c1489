package org.mantice.reading;

import java.nio.charset.StandardCharsets;

/** MusicXML 2.0 to 4.0, plain or in an archive. */
final class MusicXmlFormat implements TuneFormat {
    @Override
    public boolean claims(byte[] bytes) {
        return MxlArchive.isArchive(bytes) || looksLikeXml(bytes);
    }

    @Override
    public ReadTune read(TuneSource source, ReadOptions options) {
        ReadReport report = new ReadReport();
        byte[] bytes = source.bytes();
        if (MxlArchive.isArchive(bytes)) bytes = new MxlArchive(source.place(), report).music(bytes);
        String text = new XmlText(source.place(), report).decode(bytes);
        Score score = new ScoreParser(source.place()).parse(text);
        return new TuneBuilder(source, score, report).build(options);
    }

    /** A first angle bracket after at most a byte order mark, zero bytes of UTF-16 and white space. */
    static boolean looksLikeXml(byte[] bytes) {
        String start = new String(bytes, 0, Math.min(bytes.length, 4096), StandardCharsets.ISO_8859_1);
        String shown = start.replaceFirst("^(\u00ef\u00bb\u00bf|\u00fe\u00ff|\u00ff\u00fe)", "")
                .replace("\0", "")
                .strip();
        return shown.startsWith("<");
    }
}
