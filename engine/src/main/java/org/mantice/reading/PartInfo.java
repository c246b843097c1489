package org.mantice.reading;

/**
 * A part of the file, as it may be asked for in {@link ReadOptions}.
 *
 * @param id as in the file
 * @param name as printed; may be empty
 * @param notes pitched notes in it, cue and grace notes not counted
 * @param chordSymbols chord symbols in it
 */
public record PartInfo(String id, String name, int notes, int chordSymbols) {
    /** As {@code "P1 (Voice)"}. */
    public String label() {
        return name.isBlank() ? id : id + " (" + name + ")";
    }
}
