/**
 * Tunes out: MusicXML 4.0, plain and compressed, as written or with every time through written out. Start at {@link
 * org.mantice.writing.MusicXmlWriter}. Depends on tune, performance, plan, instrument and fault.
 */
package org.mantice.writing;
