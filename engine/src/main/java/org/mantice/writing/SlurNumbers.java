package org.mantice.writing;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/** Numbers slurs, which a tune only counts: the one begun last ends first. The schema has 16 numbers. */
final class SlurNumbers {
    private static final int MOST = 16;

    private final Deque<Integer> open = new ArrayDeque<>();

    /** An end without a beginning, as in a second ending, gets the number 1. */
    List<Integer> stop(int count) {
        List<Integer> numbers = new ArrayList<>();
        for (int i = 0; i < count; i++) numbers.add(open.isEmpty() ? 1 : open.pop());
        return numbers;
    }

    List<Integer> start(int count) {
        List<Integer> numbers = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int number = 1;
            while (number < MOST && open.contains(number)) number++;
            open.push(number);
            numbers.add(number);
        }
        return numbers;
    }
}
