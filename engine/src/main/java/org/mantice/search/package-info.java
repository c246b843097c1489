/**
 * Exact searches over layered lattices; knows no music. Start with {@link org.mantice.search.ShortestPaths} over a
 * {@link org.mantice.search.LayeredGraph}. May depend on the JDK only.
 */
package org.mantice.search;
