package org.mantice.fuzz;

/** Where a coverage-guided fuzzer enters the reading of MusicXML. */
public final class FuzzMusicXml {
    private static final ReadingCheck CHECK = new ReadingCheck("fuzz.musicxml");

    private FuzzMusicXml() {}

    /** Called with every input that the fuzzer thinks of. @throws AssertionError if it finds something */
    public static void fuzzerTestOneInput(byte[] bytes) {
        CHECK.check(bytes);
    }
}
