package org.mantice.fuzz;

/** Where a coverage-guided fuzzer enters the reading of MIDI. */
public final class FuzzMidi {
    private static final ReadingCheck CHECK = new ReadingCheck("fuzz.mid");

    private FuzzMidi() {}

    /** Called with every input that the fuzzer thinks of. @throws AssertionError if it finds something */
    public static void fuzzerTestOneInput(byte[] bytes) {
        CHECK.check(bytes);
    }
}
