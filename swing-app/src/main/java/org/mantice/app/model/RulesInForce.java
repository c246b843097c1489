package org.mantice.app.model;

import java.util.HashSet;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.mantice.layer.RuleBook;
import org.mantice.plugin.Packs;

/** The rules of all packs but those that are off. */
final class RulesInForce {
    private final RuleBook all;
    private final Set<String> packsOff = new HashSet<>();

    RulesInForce(Packs packs) {
        this.all = RuleBook.of(packs.providers());
    }

    /** For as long as the program runs. */
    void turnOff(String packId) {
        packsOff.add(packId);
    }

    /** @param leftOut ids of rules to go on without; those that are not there anyway are ignored */
    RuleBook without(Set<String> leftOut) {
        RuleBook book = all;
        for (RuleBook.Entry entry : all.entries())
            if (leftOut.contains(entry.id())
                    || packsOff.contains(entry.provider().id())) book = book.without(entry.id());
        return book;
    }

    /** The rules that a book lacks. */
    SortedSet<String> missingIn(RuleBook book) {
        Set<String> there = ids(book);
        SortedSet<String> missing = new TreeSet<>(ids(all));
        missing.removeAll(there);
        return missing;
    }

    private static Set<String> ids(RuleBook book) {
        return book.entries().stream().map(RuleBook.Entry::id).collect(Collectors.toSet());
    }
}
