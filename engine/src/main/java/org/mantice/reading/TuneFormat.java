package org.mantice.reading;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;

/** One kind of file. */
interface TuneFormat {
    /** Whether the bytes look like this format; reads only their beginning. */
    boolean claims(byte[] bytes);

    /** Divides them into tunes. @throws TuneReadException if that is not possible */
    TuneBook open(TuneSource source);

    /** A file of one tune, of which nothing is known before it is read. */
    static TuneBook single(Function<ReadOptions, ReadTune> reading) {
        TuneEntry only = new TuneEntry(1, "", "", Optional.empty(), Optional.empty(), OptionalInt.empty());
        return new TuneBook(List.of(only), reading);
    }
}
