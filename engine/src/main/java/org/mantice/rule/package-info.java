/**
 * What a rule author needs, small and stable. Start at {@link org.mantice.rule.Rule} and
 * {@link org.mantice.rule.RuleProvider}. Depends on {@code tune}, {@code instrument} and {@code player}.
 */
package org.mantice.rule;
