/**
 * The files that are ours: plans as JSON, written atomically and read back. Start at
 * {@link org.mantice.file.PlanFile}. Format types stay inside.
 */
package org.mantice.file;
