/**
 * The spelling of ABC 2.1: text to books, tunes and elements, each with its line and column; what they mean is not known
 * here. Start at {@link org.mantice.reading.abc.AbcBook}, then {@code AbcTuneParser} (lines), {@code AbcMusic} (a line
 * of music). Depends on {@code org.mantice.tune}, {@code org.mantice.fault} and the JDK alone; used by {@code
 * org.mantice.reading} only.
 */
package org.mantice.reading.abc;
