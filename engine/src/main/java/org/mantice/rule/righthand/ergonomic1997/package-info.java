/**
 * The published ergonomic model of 1997 as a rule set beside ours; start at
 * {@link org.mantice.rule.righthand.ergonomic1997.Ergonomic1997Rules}.
 */
package org.mantice.rule.righthand.ergonomic1997;
