/**
 * What to change next, learnt from one wearer: what geometry expects of a change of the alignment,
 * how this wearer's offsets answered earlier ones, and which single change, or which two with a
 * stand between, most probably bring every offset within its tolerance. Entry point: {@link
 * caryatid.advice.Advisor}. Pure; may use {@code alignment} and what it uses, and Commons Math.
 */
package caryatid.advice;
