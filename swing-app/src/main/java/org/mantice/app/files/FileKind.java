package org.mantice.app.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.mantice.fault.ManticeException;
import org.mantice.file.AccordionFile;
import org.mantice.file.PatternFile;
import org.mantice.file.PlanFile;
import org.mantice.file.PlayerFile;
import org.mantice.reading.TuneReader;

/** What a file holds. Its content decides; its name only where the content is damaged or says nothing. */
public enum FileKind {
    TUNE,
    PLAN,
    ACCORDION,
    PLAYER,
    PATTERNS,
    /** Nothing that this program reads. */
    OTHER;

    /** {@code .xml} is not among them: many files of other programs end so. */
    private static final List<String> TUNE_ENDINGS = List.of(".musicxml", ".mxl", ".abc", ".mid", ".midi", ".rmi");

    private static final Pattern FORMAT = Pattern.compile("\"format\"\\s*:\\s*\"([^\"]*)\"");
    /** Ours name their format first. */
    private static final int FORMAT_WITHIN = 4_096;

    /** Looks at the beginning of a file; one that cannot be read is what its name says. */
    public static FileKind of(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            byte[] beginning = in.readNBytes(TuneReader.BEGINNING_BYTES);
            FileKind kind = of(beginning, file);
            return kind == TUNE && isArchive(beginning) && !hasTuneEnding(file) ? ofArchive(file) : kind;
        } catch (IOException e) {
            FileKind kind = byName(file);
            return kind == OTHER && file.toString().endsWith(".xml") ? TUNE : kind;
        }
    }

    /** @param beginning up to {@link TuneReader#BEGINNING_BYTES}; archives count as tunes */
    public static FileKind of(byte[] beginning, Path file) {
        String start =
                new String(beginning, 0, Math.min(beginning.length, FORMAT_WITHIN), StandardCharsets.UTF_8).strip();
        if (start.startsWith("{") || start.startsWith("\uFEFF{")) return ofJson(start, file);
        return new TuneReader().mayHoldTunes(beginning) ? TUNE : byName(file);
    }

    private static FileKind ofJson(String start, Path file) {
        Matcher format = FORMAT.matcher(start);
        return switch (format.find() ? format.group(1) : "") {
            case PlanFile.FORMAT -> PLAN;
            case AccordionFile.FORMAT -> ACCORDION;
            case PlayerFile.FORMAT -> PLAYER;
            case PatternFile.FORMAT -> PATTERNS;
            default -> byName(file) == TUNE ? OTHER : byName(file);
        };
    }

    private static boolean isArchive(byte[] beginning) {
        return beginning.length > 1 && beginning[0] == 'P' && beginning[1] == 'K';
    }

    /** Archives hold anything: only unpacking shows whether there is a score in one. */
    private static FileKind ofArchive(Path file) throws IOException {
        try {
            new TuneReader().open(file);
            return TUNE;
        } catch (ManticeException e) {
            return OTHER;
        }
    }

    private static FileKind byName(Path file) {
        String name = String.valueOf(file.getFileName());
        if (name.endsWith(PlanFile.SUFFIX)) return PLAN;
        if (name.endsWith(AccordionFile.SUFFIX)) return ACCORDION;
        if (name.endsWith(PlayerFile.SUFFIX)) return PLAYER;
        if (name.endsWith(PatternFile.SUFFIX)) return PATTERNS;
        return hasTuneEnding(file) ? TUNE : OTHER;
    }

    private static boolean hasTuneEnding(Path file) {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        return TUNE_ENDINGS.stream().anyMatch(name::endsWith);
    }
}
