package org.mantice.tune;

/**
 * A syllable under a note.
 *
 * @param verse from 1
 * @param text with its punctuation, which shows where a singer breathes
 * @param endsWord false where a hyphen follows
 */
public record Lyric(int verse, String text, boolean endsWord) {}
