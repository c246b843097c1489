package org.mantice.reading;

import org.mantice.fault.FilePlace;
import org.mantice.fault.TextPlace;
import org.mantice.reading.TuneReadException.Reason;
import org.mantice.reading.abc.AbcElement.Flaw;

/** Lists what is not as ABC 2.1 has it, or refuses the tune for it. */
final class AbcReport {
    private final FilePlace file;
    private final boolean strict;
    private final ReadReport report;

    AbcReport(FilePlace file, boolean strict, ReadReport report) {
        this.file = file;
        this.strict = strict;
        this.report = report;
    }

    ReadReport list() {
        return report;
    }

    FilePlace at(TextPlace place) {
        return file.at(place);
    }

    /** @throws TuneReadException in strict reading, for what is forgiven otherwise */
    void add(TextPlace place, SkippedWhat what, String... args) {
        Finding finding = Finding.of(what, args);
        if (strict && what.kind() == SkippedWhat.Kind.FORGIVEN)
            throw TuneReadException.of(Reason.NOT_STRICT, file.at(place), what.sentence(finding.args()));
        report.addAt(place, finding);
    }

    void add(Flaw flaw) {
        SkippedWhat what =
                switch (flaw.kind()) {
                    case UNKNOWN -> SkippedWhat.STRAY_SIGN;
                    case RESERVED -> SkippedWhat.RESERVED_SIGN;
                    case UNCLOSED -> SkippedWhat.UNCLOSED;
                    case OLD_STYLE -> SkippedWhat.OLD_SPELLING;
                    case LENGTH -> SkippedWhat.BAD_LENGTH;
                    case LOOSE_ENDING -> SkippedWhat.LOOSE_ENDING;
                    case EMPTY_LINE -> SkippedWhat.EMPTY_LINE;
                    case HEAD -> SkippedWhat.HEAD_FIELD;
                    case FIELD -> SkippedWhat.BAD_FIELD;
                };
        if (what == SkippedWhat.EMPTY_LINE) add(flaw.place(), what);
        else add(flaw.place(), what, flaw.text());
    }
}
