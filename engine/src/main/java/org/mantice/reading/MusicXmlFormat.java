package org.mantice.reading;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** MusicXML 2.0 to 4.0, plain or in an archive. */
final class MusicXmlFormat implements TuneFormat {
    @Override
    public boolean claims(byte[] bytes) {
        return MxlArchive.isArchive(bytes) || looksLikeXml(bytes);
    }

    /** Unpacks an archive at once, so that one without a score is refused here. */
    @Override
    public TuneBook open(TuneSource source) {
        List<Finding> aboutArchive = new ArrayList<>();
        byte[] given = source.bytes();
        byte[] music = MxlArchive.isArchive(given) ? new MxlArchive(source.place(), aboutArchive).music(given) : given;
        return TuneFormat.single(options -> {
            ReadReport report = new ReadReport();
            aboutArchive.forEach(report::add);
            return read(source, music, report, options);
        });
    }

    private static ReadTune read(TuneSource source, byte[] music, ReadReport report, ReadOptions options) {
        String text = new XmlText(source.place(), report).decode(music);
        Score score = new ScoreParser(source.place()).parse(text);
        return new TuneBuilder(source, score, report).build(options);
    }

    /** Whether XML that begins so, in any encoding, names a score's outermost element. */
    static boolean namesAScore(byte[] beginning) {
        String shown = new String(beginning, StandardCharsets.ISO_8859_1).replace("\0", "");
        return shown.contains("<score-partwise") || shown.contains("<score-timewise");
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
