/**
 * From a recording to the quiet stretch, the mean centre of pressure and force with their
 * uncertainty, sway and remarks on quality. Pure. Entry point: {@link
 * caryatid.standing.StandAnalysis}. May use {@code recording}, {@code geometry}, {@code
 * uncertainty} and {@code remark}.
 */
package caryatid.standing;
