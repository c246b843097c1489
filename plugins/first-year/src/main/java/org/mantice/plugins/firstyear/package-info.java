/**
 * Rules for pupils in their first year; start at {@link org.mantice.plugins.firstyear.FirstYearPack}. Depends on the
 * engine's packages for rule authors alone.
 */
package org.mantice.plugins.firstyear;
