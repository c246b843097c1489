package org.mantice.search;

/** How often each state was taken: open addressing over long keys, without boxing. */
final class LabelCounts {
    private long[] keys = new long[2048];
    private int[] counts = new int[2048];
    private int used;

    /** Counts {@code key} (0 or more) and returns how often it has been counted, this time included. */
    int count(long key) {
        if (2 * used >= keys.length) grow();
        int slot = slot(keys, key);
        if (keys[slot] == 0) {
            keys[slot] = key + 1;
            used++;
        }
        return ++counts[slot];
    }

    private static int slot(long[] table, long key) {
        long mixed = (key + 1) * 0x9E3779B97F4A7C15L;
        int slot = (int) (mixed >>> 32) & table.length - 1;
        while (table[slot] != 0 && table[slot] != key + 1) slot = slot + 1 & table.length - 1;
        return slot;
    }

    private void grow() {
        long[] oldKeys = keys;
        int[] oldCounts = counts;
        keys = new long[oldKeys.length * 2];
        counts = new int[keys.length];
        for (int old = 0; old < oldKeys.length; old++) {
            if (oldKeys[old] == 0) continue;
            int slot = slot(keys, oldKeys[old] - 1);
            keys[slot] = oldKeys[old];
            counts[slot] = oldCounts[old];
        }
    }
}
