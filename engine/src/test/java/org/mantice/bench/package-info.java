/** Benchmarks, run by hand; start with {@link org.mantice.bench.Benchmarks}. May depend on everything. */
package org.mantice.bench;
