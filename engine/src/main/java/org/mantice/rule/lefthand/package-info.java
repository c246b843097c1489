/** Our own left-hand rules, one final class each; start at {@link org.mantice.rule.lefthand.LeftHandRules}. */
package org.mantice.rule.lefthand;
