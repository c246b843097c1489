package org.mantice.reading.abc;

import java.util.List;
import org.mantice.fault.TextPlace;

/**
 * One tune with all that is written in it.
 *
 * @param place where it begins
 * @param head of the file and of the tune, up to its key
 * @param body what follows
 */
public record AbcTune(TextPlace place, List<AbcElement> head, List<AbcElement> body) {
    public AbcTune {
        head = List.copyOf(head);
        body = List.copyOf(body);
    }
}
