package org.mantice.reading;

import java.util.List;
import java.util.OptionalInt;

/** One kind of file. */
interface TuneFormat {
    /** Whether the bytes look like this format; reads only their beginning. */
    boolean claims(byte[] bytes);

    /** Reads them. @throws TuneReadException if that is not possible */
    ReadTune read(TuneSource source, ReadOptions options);

    /** The tunes in them, none of them read; one without a title where the format holds no more. */
    default List<TuneEntry> list(TuneSource source) {
        return List.of(new TuneEntry(1, "", "", OptionalInt.empty()));
    }
}
