/** Our own fingering rules, one final class each; start at {@link org.mantice.rule.righthand.RightHandRules}. */
package org.mantice.rule.righthand;
