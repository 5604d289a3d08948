package caryatid.chart.leg;

import caryatid.chart.mark.Box;
import caryatid.loadline.Target;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a strip's chart shows, in millimetres, before the chart library draws it. Across is to the
 * viewer's right; every place is already moved to where it is shown.
 *
 * @param strip what it is about
 * @param window what part of the view it shows
 * @param room its paper from the band's top to the axis, mm
 * @param zeroMm where the zero is shown, across, mm
 * @param interval the load line's 95 % interval, across, mm
 * @param band the tolerance, across, mm
 * @param recommendedMm the recommended offset, across, mm; empty where it lies beyond a break
 * @param beforeMm the load line in the state before, across, mm
 */
public record StripPlan(
    Strip strip,
    StripWindow window,
    Box room,
    double zeroMm,
    Optional<Ends> interval,
    Optional<Ends> band,
    OptionalDouble recommendedMm,
    OptionalDouble beforeMm) {

  /**
   * From where to where something reaches, across.
   *
   * @param fromMm left end, mm
   * @param toMm right end, mm
   * @param open whether it continues to the left beyond what is shown
   * @param goesOn whether it continues to the right
   */
  public record Ends(double fromMm, double toMm, boolean open, boolean goesOn) {}

  public static StripPlan of(Strip strip, StripWindow window, Box room) {
    return new StripPlan(
        strip,
        window,
        room,
        window.shownMm(strip.zeroMm()),
        strip.lineMm().isPresent() && strip.halfMm() > 0
            ? Optional.of(interval(strip, window))
            : Optional.empty(),
        strip.target().map(target -> band(strip, window, target)),
        strip
            .target()
            .map(target -> within(strip.acrossMm(target.recommendedMm()), window))
            .orElse(OptionalDouble.empty()),
        strip.beforeMm().isPresent()
            ? OptionalDouble.of(window.shownMm(strip.acrossMm(strip.beforeMm().getAsDouble())))
            : OptionalDouble.empty());
  }

  private static Ends interval(Strip strip, StripWindow window) {
    double line = strip.lineMm().orElseThrow();
    return ends(line - strip.halfMm(), line + strip.halfMm(), window);
  }

  private static Ends band(Strip strip, StripWindow window, Target target) {
    double low = strip.acrossMm(target.lowestMm());
    double high = strip.acrossMm(target.highestMm());
    return ends(Math.min(low, high), Math.max(low, high), window);
  }

  /** What lies wholly beyond a break is shown as a stub between the break and the end. */
  private static Ends ends(double from, double to, StripWindow window) {
    double stub = StripWindow.BREAK_MM / 2;
    if (window.isBeforeBreak(to)) {
      return new Ends(window.fromMm(), window.fromMm() + stub, true, true);
    }
    if (window.isAfterBreak(from)) {
      return new Ends(window.toMm() - stub, window.toMm(), true, true);
    }
    boolean open = window.isBeforeBreak(from);
    boolean goesOn = window.isAfterBreak(to);
    return new Ends(open ? window.fromMm() : from, goesOn ? window.toMm() : to, open, goesOn);
  }

  private static OptionalDouble within(double across, StripWindow window) {
    return window.isBeforeBreak(across) || window.isAfterBreak(across)
        ? OptionalDouble.empty()
        : OptionalDouble.of(across);
  }

  /** Whether something lies beyond a break to the left. */
  public boolean isBrokenBefore() {
    return strip.placesMm().stream().anyMatch(window::isBeforeBreak);
  }

  /** Whether something lies beyond a break to the right. */
  public boolean isBrokenAfter() {
    return strip.placesMm().stream().anyMatch(window::isAfterBreak);
  }

  /** The offset that belongs to a place across the view, mm. */
  public double offsetMm(double acrossMm) {
    return strip.sign() * (acrossMm - strip.zeroMm());
  }
}
