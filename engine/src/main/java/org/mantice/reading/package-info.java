/**
 * Files in: bytes of any name become a {@link org.mantice.tune.Tune} and a list of all that was skipped, changed or
 * assumed on the way. Start at {@link org.mantice.reading.TuneReader}; then, for MusicXML, {@code MusicXmlFormat}
 * (bytes to text), {@code ScoreParser} (text to a plain score of parts and measures), {@code MelodyChooser} (which
 * part and staff) and {@code TuneBuilder} (score to tune); for ABC, {@code AbcFormat} (which tune of a book), {@code
 * AbcScore} (elements to the same score) and {@code TuneBuilder} again; for MIDI, {@code MidiTune}. Depends on {@code org.mantice.tune},
 * {@code org.mantice.fault} and the JDK alone; the types of a format stay inside.
 */
package org.mantice.reading;
