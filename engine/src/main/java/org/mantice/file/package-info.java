/**
 * The files that are ours, as JSON, written whole or not at all and read back: profiles of accordion and player. Start
 * at {@link org.mantice.file.AccordionFile} and {@link org.mantice.file.PlayerFile}. Format types stay inside.
 */
package org.mantice.file;
