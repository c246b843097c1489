package org.mantice.reading;

import org.mantice.fault.FilePlace;

/** The bytes of a file with its name for messages and the fingerprint of its bytes. Passed inside this package only. */
final class TuneSource {
    private final FilePlace place;
    private final byte[] bytes;
    private final String fingerprint;

    TuneSource(FilePlace place, byte[] bytes, String fingerprint) {
        this.place = place;
        this.bytes = bytes;
        this.fingerprint = fingerprint;
    }

    FilePlace place() {
        return place;
    }

    byte[] bytes() {
        return bytes;
    }

    String fingerprint() {
        return fingerprint;
    }
}
