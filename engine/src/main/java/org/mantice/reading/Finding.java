package org.mantice.reading;

import java.util.List;

/** One thing worth listing, kept with what it was found at until that is known to be used. */
record Finding(SkippedWhat what, List<String> args) {
    Finding {
        args = args.stream().map(Finding::tidy).toList();
    }

    static Finding of(SkippedWhat what, String... args) {
        return new Finding(what, List.of(args));
    }

    /** One short line, whatever the file holds. */
    private static String tidy(String text) {
        String line = text.strip().replaceAll("[\\s\\p{Cntrl}]+", " ");
        return line.length() <= 160 ? line : line.substring(0, 157) + "...";
    }
}
