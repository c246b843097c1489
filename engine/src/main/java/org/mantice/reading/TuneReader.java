package org.mantice.reading;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import org.mantice.fault.Cause;
import org.mantice.fault.FilePlace;
import org.mantice.reading.TuneReadException.Reason;

/**
 * Reads a tune from a file. What the file is shows from its content, never from its name. Every way to fail ends in a
 * {@link TuneReadException} with the place and what is allowed; work and memory are bounded by {@link ReadLimits}.
 * Nothing is ever fetched from elsewhere. Stateless.
 */
public final class TuneReader {
    /** How much of a file shows what it is. */
    public static final int BEGINNING_BYTES = 65_536;

    private final List<TuneFormat> formats = List.of(new MidiFormat(), new MusicXmlFormat(), new AbcFormat());

    public ReadTune read(Path file) {
        return read(file, ReadOptions.DEFAULT);
    }

    public ReadTune read(Path file, ReadOptions options) {
        return open(file).read(options);
    }

    /** Divides a file into its tunes, to list them and to read any number of them. */
    public TuneBook open(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            return open(file.toString(), bytes(in));
        } catch (NoSuchFileException e) {
            throw TuneReadException.causedBy(e, Reason.NOT_FOUND, FilePlace.of(file.toString()));
        } catch (IOException e) {
            throw unreadable(file.toString(), e);
        }
    }

    /** Reads to the end of the stream without closing it. */
    public ReadTune read(String name, InputStream in, ReadOptions options) {
        try {
            return read(name, bytes(in), options);
        } catch (IOException e) {
            throw unreadable(name, e);
        }
    }

    /** @param name how messages call the file */
    public ReadTune read(String name, byte[] bytes, ReadOptions options) {
        return open(name, bytes).read(options);
    }

    private static byte[] bytes(InputStream in) throws IOException {
        return in.readNBytes(ReadLimits.FILE_BYTES + 1);
    }

    /** The same from the bytes of a file. @param name how messages call it */
    public TuneBook open(String name, byte[] bytes) {
        TuneSource source = source(name, bytes);
        return format(source).open(source);
    }

    /**
     * Whether a file that begins so may hold tunes: only reading it shows whether it does.
     *
     * @param beginning {@link #BEGINNING_BYTES} of it, or all if it is shorter
     */
    public boolean mayHoldTunes(byte[] beginning) {
        if (MusicXmlFormat.looksLikeXml(beginning)) return MusicXmlFormat.namesAScore(beginning);
        return formats.stream().anyMatch(format -> format.claims(beginning));
    }

    private static TuneSource source(String name, byte[] bytes) {
        FilePlace place = FilePlace.of(name);
        if (bytes.length == 0) throw TuneReadException.of(Reason.EMPTY, place);
        if (bytes.length > ReadLimits.FILE_BYTES)
            throw TuneReadException.of(
                    Reason.TOO_LARGE, place, "more than " + ReadLimits.FILE_BYTES, ReadLimits.FILE_BYTES);
        return new TuneSource(place, bytes, sha256(bytes));
    }

    private TuneFormat format(TuneSource source) {
        for (TuneFormat format : formats) if (format.claims(source.bytes())) return format;
        throw refuse(source);
    }

    private static TuneReadException unreadable(String name, IOException e) {
        return TuneReadException.causedBy(e, Reason.UNREADABLE, FilePlace.of(name), Cause.words(e));
    }

    private static TuneReadException refuse(TuneSource source) {
        String start =
                new String(source.bytes(), 0, Math.min(source.bytes().length, 1024), StandardCharsets.ISO_8859_1);
        if (start.isBlank()) return TuneReadException.of(Reason.EMPTY, source.place());
        if (start.chars().anyMatch(c -> c < 32 && c != '\t' && c != '\n' && c != '\r' && c != '\f'))
            return TuneReadException.of(Reason.BINARY, source.place());
        return TuneReadException.of(Reason.OTHER_FORMAT, source.place(), "plain text");
    }

    private static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
