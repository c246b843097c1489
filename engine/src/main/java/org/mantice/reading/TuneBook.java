package org.mantice.reading;

import java.util.List;
import java.util.function.Function;

/**
 * The tunes of one file. Its text is divided into tunes once, when it is made; each tune is then read at its own cost,
 * so that reading all of a book takes time linear in the file. Immutable.
 */
public final class TuneBook {
    private final List<TuneEntry> entries;
    private final Function<ReadOptions, ReadTune> reading;

    TuneBook(List<TuneEntry> entries, Function<ReadOptions, ReadTune> reading) {
        this.entries = List.copyOf(entries);
        this.reading = reading;
    }

    /**
     * The tunes in the order of the file; one or more. They are not read, so each may yet be refused; of a file that
     * holds but one, title, key and meter may be missing.
     */
    public List<TuneEntry> entries() {
        return entries;
    }

    /** Reads a tune. @throws TuneReadException if that is not possible, or it or its part is not there */
    public ReadTune read(ReadOptions options) {
        return reading.apply(options);
    }
}
