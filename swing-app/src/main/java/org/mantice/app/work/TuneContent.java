package org.mantice.app.work;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.mantice.app.model.OpenTune;
import org.mantice.reading.ReadLimits;
import org.mantice.reading.ReadOptions;
import org.mantice.reading.TuneBook;
import org.mantice.reading.TuneEntry;
import org.mantice.reading.TuneReader;

/** The bytes of a tune's file as they were when it was opened, so that the tune outlives its file. */
public final class TuneContent {
    /** The name of the shipped example, which goes into plans of it. */
    public static final String EXAMPLE = "examples/tunes/lanterns-at-the-weir.musicxml";

    /** Content up to this size is kept in copies of unsaved work. */
    static final int SMALL_BYTES = 1_000_000;

    private final String name;
    private final Optional<Path> file;
    private final byte[] bytes;
    private Optional<TuneBook> book = Optional.empty();

    /**
     * @param name as it was given; goes into plan files and messages
     * @param file absolute; empty if it does not come from a file
     * @param bytes not copied
     */
    TuneContent(String name, Optional<Path> file, byte[] bytes) {
        this.name = name;
        this.file = file;
        this.bytes = bytes;
    }

    /**
     * @throws org.mantice.reading.TuneReadException if there is no such file or it cannot be read
     * @throws IllegalArgumentException if it is neither a file nor a folder
     */
    static TuneContent of(Path file) {
        return named(file.toString(), file);
    }

    /** The same under another name. */
    static TuneContent named(String name, Path file) {
        if (Files.exists(file) && !Files.isRegularFile(file) && !Files.isDirectory(file))
            throw new IllegalArgumentException("file is " + file + "; allowed: a file with a tune or a plan");
        try (InputStream in = Files.newInputStream(file)) {
            return new TuneContent(
                    name, Optional.of(file.toAbsolutePath().normalize()), in.readNBytes(ReadLimits.FILE_BYTES + 1));
        } catch (IOException e) {
            new TuneReader().open(file);
            throw new IllegalArgumentException("file is " + file + "; allowed: one that can be read to its end", e);
        }
    }

    /** The example that comes with the app. */
    public static TuneContent example() {
        try (InputStream in = TuneContent.class.getResourceAsStream("/" + EXAMPLE)) {
            if (in == null) throw new IllegalStateException("the shipped example " + EXAMPLE + " is missing");
            return new TuneContent(EXAMPLE, Optional.empty(), in.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException("the shipped example " + EXAMPLE + " is damaged", e);
        }
    }

    public String name() {
        return name;
    }

    /** Where it came from, absolute; empty for the shipped example. */
    public Optional<Path> file() {
        return file;
    }

    /** A copy of the bytes; {@link ReadLimits#FILE_BYTES} and one more where the file is larger. */
    public byte[] bytes() {
        return bytes.clone();
    }

    boolean isSmall() {
        return bytes.length <= SMALL_BYTES;
    }

    /** SHA-256 in hexadecimal, as {@link org.mantice.reading.ReadTune#fingerprint()}. */
    String fingerprint() {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    boolean beginsAsJson() {
        return begin() == '{';
    }

    /** XML in any encoding, or an archive. */
    boolean beginsAsScore() {
        return Set.of((int) '<', (int) 'P', 0xfe, 0xff).contains(begin());
    }

    /** The first byte after white space and the byte order mark of UTF-8; -1 if there is none. */
    private int begin() {
        boolean marked = bytes.length >= 3 && (bytes[0] & 0xff) == 0xef && (bytes[1] & 0xff) == 0xbb;
        for (int i = marked ? 3 : 0; i < bytes.length; i++)
            if (!Character.isWhitespace(bytes[i])) return bytes[i] & 0xff;
        return -1;
    }

    /** Reads the tune; of a book, the first. */
    public OpenTune open(Optional<String> part) {
        return open(part, Optional.empty());
    }

    /** The tunes of the file, one or more. @throws org.mantice.reading.TuneReadException if it has none */
    public List<TuneEntry> entries() {
        return book().entries();
    }

    /** Divided into tunes when it is first asked for, and then kept: one after the other may be looked at. */
    private synchronized TuneBook book() {
        TuneBook divided = book.orElseGet(() -> new TuneReader().open(name, bytes));
        book = Optional.of(divided);
        return divided;
    }

    /**
     * Reads one tune.
     *
     * @param part the part of the score with the melody; empty to choose by the stated rule
     * @param entry the tune of a book, as {@link TuneEntry#handle()} or as {@link ReadOptions} allows; empty for the
     *     first
     * @throws org.mantice.reading.TuneReadException if the bytes are no tune, or the part or the entry is not there
     */
    public OpenTune open(Optional<String> part, Optional<String> entry) {
        ReadOptions options = part.map(ReadOptions::ofPart).orElse(ReadOptions.DEFAULT);
        return new OpenTune(name, book().read(entry.map(options::withTune).orElse(options)), part);
    }
}
