package org.mantice.reading;

/**
 * What a file may hold at most, so that no file can exhaust memory or time. All are estimates: ten and more times
 * what the largest tune known to us needs.
 */
public final class ReadLimits {
    /** Bytes of a file. */
    public static final int FILE_BYTES = 32 * 1024 * 1024;
    /** Bytes that an archive may unpack to, all entries together. */
    public static final int UNPACKED_BYTES = 64 * 1024 * 1024;
    /** Entries of an archive. */
    public static final int ARCHIVE_ENTRIES = 1_000;
    /** Elements inside each other. */
    public static final int XML_DEPTH = 64;
    /** Elements and attributes inside one measure or header block. */
    public static final int XML_BLOCK = 500_000;
    /** Parts of a score. */
    public static final int PARTS = 500;
    /** Measures of a part. */
    public static final int MEASURES = 20_000;
    /** Measures of all parts together. */
    public static final int ALL_MEASURES = 200_000;
    /** Notes and rests of all parts together. */
    public static final int NOTES = 200_000;
    /** How often a passage may be repeated, and the highest number of an ending. */
    public static final int REPEATS = 100;

    private ReadLimits() {}
}
