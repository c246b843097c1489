package org.mantice.reading;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.mantice.fault.Cause;
import org.mantice.fault.FilePlace;
import org.mantice.reading.TuneReadException.Reason;

/**
 * Finds the score in a compressed MusicXML file: the first root file that META-INF/container.xml names (MusicXML 4.0,
 * "compressed .mxl files"), or, where that is missing, damaged or names nothing, the first entry that begins like a
 * score; the second way is reported. All entries together may not unpack to more than a stated size.
 */
final class MxlArchive {
    private static final String CONTAINER = "META-INF/container.xml";
    private static final Pattern ROOT_FILE =
            Pattern.compile("<rootfile\\s[^>]*?full-path\\s*=\\s*(\"[^\"]*\"|'[^']*')");

    private final FilePlace place;
    private final List<Finding> findings;

    /** @param findings takes what is worth listing about the archive */
    MxlArchive(FilePlace place, List<Finding> findings) {
        this.place = place;
        this.findings = findings;
    }

    static boolean isArchive(byte[] bytes) {
        return bytes.length >= 4 && bytes[0] == 'P' && bytes[1] == 'K' && bytes[2] < 9 && bytes[3] < 9;
    }

    /** The bytes of the score. */
    byte[] music(byte[] archive) {
        Map<String, byte[]> entries = unpack(archive);
        Optional<String> named = named(entries);
        Optional<byte[]> music = named.map(entries::get);
        if (music.isPresent()) return music.get();
        Map.Entry<String, byte[]> found = entries.entrySet().stream()
                .filter(entry -> isScore(entry.getKey(), entry.getValue()))
                .findFirst()
                .orElseThrow(() -> TuneReadException.of(
                        Reason.ARCHIVE_WITHOUT_MUSIC,
                        place,
                        entries.isEmpty() ? "nothing" : String.join(", ", entries.keySet())));
        findings.add(Finding.of(SkippedWhat.ARCHIVE, complaint(entries, named) + ", \"" + found.getKey() + "\" taken"));
        return found.getValue();
    }

    private static String complaint(Map<String, byte[]> entries, Optional<String> named) {
        if (!entries.containsKey(CONTAINER)) return CONTAINER + " is missing";
        return named.map(name -> CONTAINER + " names the missing entry \"" + name + "\"")
                .orElse(CONTAINER + " is damaged or names no score");
    }

    /** A container that is not well-formed names nothing, because a quote inside a name cuts it short. */
    private Optional<String> named(Map<String, byte[]> entries) {
        byte[] container = entries.get(CONTAINER);
        if (container == null) return Optional.empty();
        String text = new XmlText(place, new ReadReport()).decode(container);
        if (!XmlScan.isWellFormed(text)) return Optional.empty();
        Matcher matcher = ROOT_FILE.matcher(text);
        if (!matcher.find()) return Optional.empty();
        String path = matcher.group(1).substring(1, matcher.group(1).length() - 1);
        return Optional.of(path.replace("&apos;", "'")
                .replace("&quot;", "\"")
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&amp;", "&"));
    }

    private static boolean isScore(String name, byte[] bytes) {
        if (name.startsWith("META-INF/") || name.startsWith("__MACOSX/")) return false;
        if (!MusicXmlFormat.looksLikeXml(bytes)) return false;
        return MusicXmlFormat.namesAScore(Arrays.copyOf(bytes, Math.min(bytes.length, 8192)));
    }

    private Map<String, byte[]> unpack(byte[] archive) {
        Map<String, byte[]> entries = new LinkedHashMap<>();
        int left = ReadLimits.UNPACKED_BYTES;
        int seen = 0;
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(archive))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                if (++seen > ReadLimits.ARCHIVE_ENTRIES)
                    throw TuneReadException.of(Reason.ARCHIVE_TOO_MANY_ENTRIES, place, ReadLimits.ARCHIVE_ENTRIES);
                byte[] bytes = zip.readNBytes(left + 1);
                if (bytes.length > left)
                    throw TuneReadException.of(Reason.ARCHIVE_TOO_LARGE, place, ReadLimits.UNPACKED_BYTES);
                left -= bytes.length;
                if (!entry.isDirectory()) entries.putIfAbsent(entry.getName(), bytes);
            }
        } catch (IOException | IllegalArgumentException e) {
            throw TuneReadException.causedBy(e, Reason.ARCHIVE_DAMAGED, place, Cause.words(e));
        }
        if (seen == 0) throw TuneReadException.of(Reason.ARCHIVE_DAMAGED, place, "no entry found");
        return entries;
    }
}
