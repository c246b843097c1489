package org.mantice.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.mantice.reading.ReadOptions;
import org.mantice.reading.TuneReader;

/** Prints the milliseconds that each pass over all files takes to be read; the bytes are in memory before. */
public final class ReadingTimes {
    private ReadingTimes() {}

    /** @param args number of passes; a file with a name a line */
    public static void main(String[] args) throws IOException {
        List<byte[]> files = new ArrayList<>();
        for (String name : Files.readAllLines(Path.of(args[1]))) files.add(Files.readAllBytes(Path.of(name)));
        TuneReader reader = new TuneReader();
        for (int pass = Integer.parseInt(args[0]); pass > 0; pass--) {
            long start = System.nanoTime();
            int measures = 0;
            for (byte[] bytes : files)
                measures += reader.read("tune.abc", bytes, ReadOptions.DEFAULT)
                        .tune()
                        .measures()
                        .size();
            if (measures == 0) throw new IllegalStateException("nothing was read");
            System.out.println((System.nanoTime() - start) / 1e6);
        }
    }
}
