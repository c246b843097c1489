package org.mantice.reading;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.StandardCharsets;
import java.nio.charset.UnsupportedCharsetException;
import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.mantice.fault.FilePlace;
import org.mantice.reading.TuneReadException.Reason;

/**
 * Turns the bytes of an XML file into text: by byte order mark, else by the zero bytes of UTF-16, else by the
 * declaration, else as UTF-8. Bytes that are not what they claim to be are read as UTF-8 if they are that, else as
 * Latin-1, and this is reported. (XML 1.0, appendix F.)
 */
final class XmlText {
    private static final Pattern DECLARED = Pattern.compile("^<\\?xml[^>]*?encoding\\s*=\\s*[\"']([^\"']*)[\"']");

    private final FilePlace place;
    private final ReadReport report;

    XmlText(FilePlace place, ReadReport report) {
        this.place = place;
        this.report = report;
    }

    String decode(byte[] bytes) {
        if (starts(bytes, 0xEF, 0xBB, 0xBF)) return decodeEightBit(tail(bytes, 3), "UTF-8");
        if (starts(bytes, 0xFE, 0xFF)) return decodeWide(tail(bytes, 2), StandardCharsets.UTF_16BE);
        if (starts(bytes, 0xFF, 0xFE)) return decodeWide(tail(bytes, 2), StandardCharsets.UTF_16LE);
        if (starts(bytes, 0, '<')) return decodeWide(bytes, StandardCharsets.UTF_16BE);
        if (starts(bytes, '<', 0)) return decodeWide(bytes, StandardCharsets.UTF_16LE);
        return decodeEightBit(bytes, declared(bytes));
    }

    private static String declared(byte[] bytes) {
        String start = new String(bytes, 0, Math.min(bytes.length, 256), StandardCharsets.ISO_8859_1).stripLeading();
        Matcher matcher = DECLARED.matcher(start);
        return matcher.find() ? matcher.group(1) : "UTF-8";
    }

    private String decodeWide(byte[] bytes, Charset charset) {
        return strictly(bytes, charset)
                .orElseThrow(() -> TuneReadException.of(Reason.BAD_ENCODING, place, charset.name()));
    }

    private String decodeEightBit(byte[] bytes, String declared) {
        Optional<Charset> charset = eightBit(declared);
        Optional<String> text = charset.flatMap(known -> strictly(bytes, known));
        if (text.isPresent()) return text.get();
        Optional<String> utf8 = strictly(bytes, StandardCharsets.UTF_8);
        String taken = utf8.isPresent() ? "UTF-8" : "Latin-1";
        report.add(SkippedWhat.ENCODING, declared, taken);
        return utf8.orElseGet(() -> new String(bytes, StandardCharsets.ISO_8859_1));
    }

    /** The charset of a declaration, if it is one that eight-bit text can be in. */
    private static Optional<Charset> eightBit(String name) {
        try {
            Charset charset = Charset.forName(name);
            boolean wide = charset.name().startsWith("UTF-16") || charset.name().startsWith("UTF-32");
            return wide ? Optional.empty() : Optional.of(charset);
        } catch (IllegalCharsetNameException | UnsupportedCharsetException e) {
            return Optional.empty();
        }
    }

    private static Optional<String> strictly(byte[] bytes, Charset charset) {
        try {
            return Optional.of(charset.newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes))
                    .toString());
        } catch (CharacterCodingException e) {
            return Optional.empty();
        }
    }

    private static boolean starts(byte[] bytes, int... start) {
        if (bytes.length < start.length) return false;
        for (int i = 0; i < start.length; i++) if ((bytes[i] & 0xFF) != start[i]) return false;
        return true;
    }

    private static byte[] tail(byte[] bytes, int from) {
        return Arrays.copyOfRange(bytes, from, bytes.length);
    }
}
