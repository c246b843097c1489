package org.mantice.reading;

/** One kind of file. */
interface TuneFormat {
    /** Whether the bytes look like this format; reads only their beginning. */
    boolean claims(byte[] bytes);

    /** Reads them. @throws TuneReadException if that is not possible */
    ReadTune read(TuneSource source, ReadOptions options);
}
