/**
 * A first rule from outside; start at {@link org.mantice.example.firstrule.LongNoteOnLittleFinger}. Depends on the
 * engine's packages for rule authors alone.
 */
package org.mantice.example.firstrule;
