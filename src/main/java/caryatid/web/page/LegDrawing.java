package caryatid.web.page;

import caryatid.usecase.stand.StandFields;
import caryatid.usecase.stand.TypedNumber;
import caryatid.wording.LandmarkWords;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The leg from its side, to scale, with the landmarks as they are typed. The one that is still to
 * be measured is a ring. For orientation only: nothing is read from it.
 */
public final class LegDrawing {
  /** Landmarks that are usually marked; a further one is not asked for. */
  private static final int USUAL = 3;

  private static final double ABOVE_MM = 60;
  private static final double BESIDE_MM = 130;
  private static final double LEAST_TOP_MM = 420;

  /** For orientation only (common practice, no source). */
  private static final double USUAL_HIP_MM = 860;

  private final Map<String, String> typed;
  private final List<String> marks = new ArrayList<>();
  private final List<MarkedPoint> placed = new ArrayList<>();

  /** A landmark in the drawing: across from the first one and above the plate, mm. */
  private record MarkedPoint(String name, double acrossMm, double upMm) {}

  private LegDrawing(Map<String, String> typed) {
    this.typed = typed;
  }

  /**
   * The drawing, as an element of a page.
   *
   * @param prostheticKnee whether the knee belongs to the prosthesis
   */
  public static String svg(Map<String, String> typed, boolean prostheticKnee, Wording wording) {
    return new LegDrawing(typed).drawing(prostheticKnee, wording);
  }

  private String drawing(boolean prostheticKnee, Wording wording) {
    Optional<String> asked = Optional.empty();
    for (int i = 1; i <= 4; i++) {
      String row = StandFields.LANDMARK + "[" + i + "].";
      Optional<Double> across = signed(row + "forward", StandFields.BEHIND);
      Optional<Double> up = number(row + "up");
      String name = typed.getOrDefault(row + "name", "");
      if (across.isPresent() && up.isPresent()) {
        placed.add(new MarkedPoint(name, across.get(), up.get()));
      } else if (i <= USUAL && asked.isEmpty() && !name.isEmpty() && up.isEmpty()) {
        asked = Optional.of(name);
      }
    }
    double base = placed.stream().mapToDouble(MarkedPoint::acrossMm).min().orElse(0);
    double marked = placed.stream().mapToDouble(MarkedPoint::upMm).max().orElse(0);
    double top = Math.max(marked, asked.map(LegDrawing::usualUpMm).orElse(0.0));
    double height = Math.max(top, LEAST_TOP_MM) + ABOVE_MM;
    outline(base, height);
    LandmarkWords names = new LandmarkWords(wording, prostheticKnee);
    placed.forEach(
        mark -> mark(mark.acrossMm() - base, mark.upMm(), names.name(mark.name()), true));
    asked.ifPresent(name -> mark(0, usualUpMm(name), names.name(name), false));
    return head(height, wording) + String.join("", marks) + "</g></svg>";
  }

  private static String head(double height, Wording wording) {
    return ("<svg class=\"leg-drawing\" role=\"img\" aria-label=\"%s\" viewBox=\"%d %d %d %d\">"
            + "<g transform=\"scale(1,-1)\">")
        .formatted(
            wording.word("Web.landmarks"), (int) -BESIDE_MM, (int) -height, 620, (int) height + 30);
  }

  /** A leg through the marks, or a usual one where there are none. */
  private void outline(double base, double height) {
    double ankle = acrossAt("ankle", 0, base);
    double knee = acrossAt("knee", ankle + 20, base);
    double kneeUp =
        placed.stream()
            .filter(m -> m.name().contains("knee"))
            .findFirst()
            .map(MarkedPoint::upMm)
            .orElse(480.0);
    add(
        "<path class=\"limb\" d=\"M%1$.0f %2$.0fL%3$.0f %2$.0fL%4$.0f 70L%5$.0f 70Z\"/>",
        knee - 55, Math.min(kneeUp + 40, height), knee + 55, ankle + 32, ankle - 32);
    add(
        "<path class=\"limb\" d=\"M%.0f 0L%.0f 0L%.0f 25L%.0f 75L%.0f 75Z\"/>",
        ankle - 60, ankle + 180, ankle + 170, ankle + 35, ankle - 45);
    add("<path class=\"floor\" d=\"M%.0f 0L490 0\"/>", -BESIDE_MM);
  }

  private double acrossAt(String part, double usual, double base) {
    return placed.stream()
        .filter(m -> m.name().contains(part))
        .findFirst()
        .map(m -> m.acrossMm() - base)
        .orElse(usual);
  }

  private static double usualUpMm(String name) {
    boolean low = name.contains("ankle") || name.contains("foot");
    return low ? 80 : name.equals("hip") ? USUAL_HIP_MM : 480;
  }

  private void mark(double acrossMm, double upMm, String name, boolean measured) {
    add(
        "<circle class=\"%s\" cx=\"%.0f\" cy=\"%.0f\" r=\"%d\"/>",
        measured ? "measured" : "asked", acrossMm, upMm, measured ? 9 : 14);
    String escaped = new Markup().text(name).toString();
    add(
        "<text transform=\"translate(%.0f,%.0f) scale(1,-1)\" class=\"%s\">%s</text>",
        acrossMm + 75, upMm - 10, measured ? "measured" : "asked", escaped);
  }

  private void add(String shape, Object... values) {
    marks.add(String.format(Locale.ROOT, shape, values));
  }

  private Optional<Double> signed(String name, String negative) {
    boolean minus = negative.equals(typed.get(name + "-sense"));
    return number(name).map(value -> minus ? -value : value);
  }

  private Optional<Double> number(String name) {
    return Optional.ofNullable(typed.get(name))
        .map(TypedNumber::plain)
        .filter(text -> text.matches("\\d{1,4}(\\.\\d{1,3})?"))
        .map(Double::valueOf);
  }
}
