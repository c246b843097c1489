/**
 * Exact searches; knows no music. Start with {@link org.mantice.search.ShortestPaths} over a
 * {@link org.mantice.search.LayeredGraph}, or with {@link org.mantice.search.StrokeSearch} over a
 * {@link org.mantice.search.StrokeLattice}. May depend on the JDK only.
 */
package org.mantice.search;
