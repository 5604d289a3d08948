package caryatid.loadline;

import caryatid.remark.Remark;

/**
 * A target for which no finding is given.
 *
 * @param target the target
 * @param reason why
 */
public record UnjudgedTarget(Target target, Remark reason) {}
