package org.mantice.reading;

import org.mantice.fault.FilePlace;

/** The bytes of a file with its name for messages and the fingerprint of its bytes. Passed inside this package only. */
record TuneSource(FilePlace place, byte[] bytes, String fingerprint) {}
