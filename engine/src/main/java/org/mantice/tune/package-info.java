/**
 * The written music in exact time: melody, chord symbols, a bass staff where there is one, meters, keys, repeats,
 * phrases and marks. Start at {@link org.mantice.tune.Tune}. Depends on the JDK alone.
 */
package org.mantice.tune;
