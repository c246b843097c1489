package org.mantice.rule.righthand;

import org.mantice.rule.FingerSpans;

/** What it costs two fingers to lie farther apart or closer than relaxed. */
final class Strain {
    /** Millipoints per semitone beyond relaxed, with the thumb; a tenth of a point of the published model (estimate). */
    private static final long WITH_THUMB = 100;

    private static final long WITHOUT_THUMB = 200;
    /** On top, per semitone beyond comfortable. */
    private static final long UNCOMFORTABLE = 200;

    private Strain() {}

    /**
     * Millipoints for two fingers that lie in order.
     *
     * @param span semitones from the lower finger's key to the higher finger's, 1 or more
     */
    static long of(int lower, int higher, int span, int handSpanTenths) {
        FingerSpans.Row row = FingerSpans.published(lower, higher);
        long perSemitone = lower == 1 ? WITH_THUMB : WITHOUT_THUMB;
        long closer = Math.max(0, row.minRelaxed() - span) * 1_000L;
        long wider = Math.max(0, span * 1_000L - FingerSpans.milliSemitones(row.maxRelaxed(), handSpanTenths));
        long far = Math.max(0, span * 1_000L - FingerSpans.milliSemitones(row.maxComfortable(), handSpanTenths));
        return (perSemitone * (closer + wider) + UNCOMFORTABLE * far) / 1_000;
    }
}
