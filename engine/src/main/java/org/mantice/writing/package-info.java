/**
 * Writing files: {@link org.mantice.writing.AtomicFile} puts a whole file in place or leaves the old one. Depends on
 * {@code org.mantice}'s exception and the JDK.
 */
package org.mantice.writing;
