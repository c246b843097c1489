/** Our own bellows rules, one final class each; start at {@link org.mantice.rule.bellows.BellowsRules}. */
package org.mantice.rule.bellows;
