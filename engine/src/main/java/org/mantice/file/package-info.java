/**
 * The files that are ours, as JSON, written whole or not at all and read back: plans, and profiles of accordion and
 * player. Start at {@link org.mantice.file.PlanFile} and {@link org.mantice.file.AccordionFile}. Format types stay inside.
 */
package org.mantice.file;
