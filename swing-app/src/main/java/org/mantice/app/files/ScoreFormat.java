package org.mantice.app.files;

import java.nio.file.Path;
import java.util.Locale;
import org.mantice.tune.Tune;
import org.mantice.writing.MusicXmlWriter;

/** How a tune is written as MusicXML; named as in a call and as files end. */
public enum ScoreFormat {
    /** As text. */
    musicxml,
    /** Compressed. */
    mxl;

    /** By the ending of a file's name, in any case; text where it ends in neither. */
    public static ScoreFormat of(Path file) {
        return isNamed(file, mxl) ? mxl : musicxml;
    }

    /** The same file, with the ending of text where its name has neither ending nor {@code .xml}. */
    public static Path named(Path file) {
        if (isNamed(file, mxl) || isNamed(file, musicxml) || ends(file, ".xml")) return file;
        return file.resolveSibling(file.getFileName() + "." + musicxml);
    }

    private static boolean isNamed(Path file, ScoreFormat format) {
        return ends(file, "." + format);
    }

    private static boolean ends(Path file, String ending) {
        return String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT).endsWith(ending);
    }

    public byte[] bytes(Tune tune) {
        return this == mxl ? MusicXmlWriter.writeCompressed(tune) : MusicXmlWriter.write(tune);
    }
}
