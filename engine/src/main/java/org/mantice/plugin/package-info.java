/**
 * Finds packs of rules on the class path and in the jars of a folder, keeps them apart, and reports those that cannot
 * be used. Start at {@link org.mantice.plugin.Packs}. Depends on {@code org.mantice.rule}.
 */
package org.mantice.plugin;
