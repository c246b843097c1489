package org.mantice.app.sheet;

import org.mantice.app.words.MusicWords;
import org.mantice.app.words.Words;

/** The words on a sheet. */
record SheetWords(Words texts, MusicWords music) {
    static SheetWords of(Words words) {
        return new SheetWords(words, new MusicWords(words));
    }
}
