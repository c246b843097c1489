package org.mantice.reading;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.mantice.fault.FilePlace;
import org.mantice.reading.TuneReadException.Reason;

/**
 * Makes text of bytes: UTF-8 or UTF-16 where its mark stands at the beginning, else the encoding that the file names,
 * else UTF-8, and Latin-1 where it is not valid UTF-8.
 */
final class AbcText {
    private static final Pattern NAMED =
            Pattern.compile("(?m)^(?:%%|I:)\\s*abc-charset\\s+([A-Za-z][\\w.-]{0,39})\\s*$");
    /** Bytes in which the encoding may be named. */
    private static final int BEGINNING = 65_536;

    private final FilePlace place;
    private final List<Finding> findings;

    /** @param findings takes what is worth listing about the encoding */
    AbcText(FilePlace place, List<Finding> findings) {
        this.place = place;
        this.findings = findings;
    }

    static String beginning(byte[] bytes) {
        return new String(bytes, 0, Math.min(bytes.length, BEGINNING), StandardCharsets.ISO_8859_1);
    }

    String decode(byte[] bytes) {
        if (startsWith(bytes, 0xEF, 0xBB, 0xBF)) return marked(bytes, 3, StandardCharsets.UTF_8);
        if (startsWith(bytes, 0xFE, 0xFF)) return marked(bytes, 2, StandardCharsets.UTF_16BE);
        if (startsWith(bytes, 0xFF, 0xFE)) return marked(bytes, 2, StandardCharsets.UTF_16LE);
        Matcher named = NAMED.matcher(beginning(bytes));
        Charset charset = StandardCharsets.UTF_8;
        if (named.find()) {
            try {
                charset = Charset.forName(named.group(1));
            } catch (IllegalArgumentException e) {
                findings.add(Finding.of(SkippedWhat.ENCODING, named.group(1), "UTF-8"));
            }
        }
        try {
            return decode(bytes, 0, charset);
        } catch (CharacterCodingException e) {
            findings.add(Finding.of(SkippedWhat.ENCODING, charset.name(), "ISO-8859-1"));
            return new String(bytes, StandardCharsets.ISO_8859_1);
        }
    }

    private static boolean startsWith(byte[] bytes, int... mark) {
        if (bytes.length < mark.length) return false;
        for (int i = 0; i < mark.length; i++) if ((bytes[i] & 0xFF) != mark[i]) return false;
        return true;
    }

    private String marked(byte[] bytes, int from, Charset charset) {
        try {
            return decode(bytes, from, charset);
        } catch (CharacterCodingException e) {
            if (charset.equals(StandardCharsets.UTF_8)) {
                findings.add(Finding.of(SkippedWhat.ENCODING, charset.name(), "ISO-8859-1"));
                return new String(bytes, from, bytes.length - from, StandardCharsets.ISO_8859_1);
            }
            throw TuneReadException.causedBy(e, Reason.BAD_ENCODING, place, charset.name());
        }
    }

    private static String decode(byte[] bytes, int from, Charset charset) throws CharacterCodingException {
        return charset.newDecoder()
                .decode(ByteBuffer.wrap(bytes, from, bytes.length - from))
                .toString();
    }
}
