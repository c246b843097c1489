/**
 * Coverage-guided fuzzing of the readers, and the short part of it that every build repeats. Start at {@link
 * org.mantice.fuzz.ReadingCheck}.
 */
package org.mantice.fuzz;
