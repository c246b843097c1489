package org.mantice.reading;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.mantice.fault.FilePlace;
import org.mantice.reading.TuneReadException.Reason;

/**
 * Reads MusicXML text into a plain score, measure by measure, so that never more than one measure's XML is held. Both
 * arrangements are read: parts that hold measures and measures that hold parts.
 */
final class ScoreParser {
    private final FilePlace place;
    private final Map<String, PartReader> parts = new LinkedHashMap<>();
    private final Map<String, String> names = new LinkedHashMap<>();
    private final ScoreHeader header = new ScoreHeader();
    private int measures;
    private int notes;

    ScoreParser(FilePlace place) {
        this.place = place;
    }

    Score parse(String text) {
        XmlScan scan = new XmlScan(place, text);
        if (!scan.enterNext()) throw TuneReadException.of(Reason.TRUNCATED, place);
        switch (scan.name()) {
            case "score-partwise" -> readBlocks(scan, "part", "measure");
            case "score-timewise" -> readBlocks(scan, "measure", "part");
            default -> throw TuneReadException.of(Reason.NOT_MUSICXML, scan.here(), scan.name());
        }
        if (measures == 0) throw TuneReadException.of(Reason.NO_MEASURES, place);
        List<ScorePart> read = new ArrayList<>();
        parts.forEach((id, part) -> read.add(part.finish(names.getOrDefault(id, ""))));
        return new Score(
                header.title(), header.dance(read), new MeasureSplitter(read).split(), header.isVerbatim(), false);
    }

    private void readBlocks(XmlScan scan, String outer, String inner) {
        while (scan.enterNext()) {
            if (scan.name().equals(outer)) readOuter(scan, scan.attribute("id"), inner);
            else if (scan.name().equals("defaults")) scan.skip();
            else readHeader(scan.block());
        }
    }

    private void readHeader(XmlNode block) {
        if (block.is("part-list"))
            block.children("score-part").forEach(part -> names.put(part.attribute("id"), part.text("part-name")));
        else header.read(block);
    }

    /** A part with its measures or a measure with its parts; the measure's own attributes stand at the measure. */
    private void readOuter(XmlScan scan, String partId, String inner) {
        String number = scan.attribute("number");
        String implicit = scan.attribute("implicit");
        while (scan.enterNext()) {
            if (!scan.name().equals(inner)) {
                scan.skip();
                continue;
            }
            XmlNode block = scan.block();
            if (inner.equals("measure"))
                readMeasure(partId, block.attribute("number"), block.attribute("implicit"), block);
            else readMeasure(block.attribute("id"), number, implicit, block);
        }
    }

    private void readMeasure(String partId, String number, String implicit, XmlNode block) {
        PartReader part = parts.computeIfAbsent(partId, id -> new PartReader(id, header.isVerbatim()));
        FilePlace here = place.atLine(block.line());
        if (parts.size() > ReadLimits.PARTS) throw TuneReadException.of(Reason.TOO_MANY_PARTS, here, ReadLimits.PARTS);
        if (part.size() == ReadLimits.MEASURES)
            throw TuneReadException.of(Reason.TOO_MANY_MEASURES, here, ReadLimits.MEASURES);
        if (++measures > ReadLimits.ALL_MEASURES)
            throw TuneReadException.of(Reason.TOO_MANY_MEASURES, here, ReadLimits.ALL_MEASURES);
        notes += (int) block.children("note").count();
        if (notes > ReadLimits.NOTES) throw TuneReadException.of(Reason.TOO_MANY_NOTES, here, ReadLimits.NOTES);
        try {
            part.read(number, implicit.equals("yes"), block);
        } catch (ArithmeticException e) {
            throw TuneReadException.causedBy(e, Reason.TIME_TOO_FINE, here.atMeasure(number));
        }
    }
}
