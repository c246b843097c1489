/** Our own repeat variation rules, one final class each; start at {@link org.mantice.rule.variation.VariationRules}. */
package org.mantice.rule.variation;
