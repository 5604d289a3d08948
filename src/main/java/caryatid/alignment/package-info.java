/**
 * Looks across stands: the stands of one alignment state combined, states compared, and the {@link
 * caryatid.alignment.Result} that holds it all. Pure. May use {@code loadline}, {@code standing},
 * {@code sheet} and {@code recording} (their records only), {@code geometry}, {@code uncertainty},
 * {@code remark} and Commons Math.
 */
package caryatid.alignment;
