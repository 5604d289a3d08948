/**
 * From a stand, landmarks and targets to offsets, moments and findings. Pure. Entry point: {@link
 * caryatid.loadline.LoadLineCheck}. May use {@code standing}, {@code geometry}, {@code uncertainty}
 * and {@code remark}.
 */
package caryatid.loadline;
