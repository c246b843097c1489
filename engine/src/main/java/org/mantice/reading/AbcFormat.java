package org.mantice.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.mantice.reading.abc.AbcBook;

/** ABC 2.1: a book of tunes. */
final class AbcFormat implements TuneFormat {
    private static final Pattern TUNE = Pattern.compile("(?m)^\\W{0,3}(%abc\\b|X:[ \\t]*\\d)");
    private static final Pattern KEY = Pattern.compile("(?m)^K:[ \\t]*([A-G]|none|H[Pp]|$)");
    private static final Pattern HEAD = Pattern.compile("(?m)^\\W{0,3}[TMLQ]:");

    @Override
    public boolean claims(byte[] bytes) {
        String start = AbcText.beginning(bytes);
        if (start.startsWith("MThd")) return false;
        if (start.startsWith("\u00fe\u00ff") || start.startsWith("\u00ff\u00fe")) start = start.replace("\0", "");
        else if (start.indexOf('\0') >= 0) return false;
        return TUNE.matcher(start).find()
                || KEY.matcher(start).find() && HEAD.matcher(start).find();
    }

    @Override
    public TuneBook open(TuneSource source) {
        List<Finding> aboutText = new ArrayList<>();
        AbcBook book = AbcBook.of(new AbcText(source.place(), aboutText).decode(source.bytes()));
        AbcTunes tunes = new AbcTunes(source, book, aboutText);
        return new TuneBook(tunes.entries(), tunes::read);
    }
}
