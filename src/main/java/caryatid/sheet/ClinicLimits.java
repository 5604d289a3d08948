package caryatid.sheet;

import static java.nio.charset.StandardCharsets.UTF_8;

import caryatid.loadline.Bounds;
import caryatid.loadline.GeometryLimits;
import caryatid.loadline.LimitedQuantity;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.sheet.yaml.Section;
import java.util.EnumMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A clinic's limits of what can hardly be and what cannot be: a YAML file of its own. */
public final class ClinicLimits {
  private static final String KIND = "clinic-limits";

  private static final Pattern IN_BRACES = Pattern.compile("(?m)^limits:[ \\t]*\\{");
  private static final Pattern LINE_BY_LINE = Pattern.compile("(?m)^limits:[ \\t]*\\n([ \\t]+)");

  private ClinicLimits() {}

  /**
   * Reads a file of limits.
   *
   * @throws BadInput with every problem found, each with its line and column
   */
  public static GeometryLimits read(NamedBytes yaml) throws BadInput {
    return Section.read(
        yaml,
        KIND,
        root ->
            root.requiredSection("limits")
                .flatMap(section -> LimitsSection.limits(section, LimitsSection.ALL)));
  }

  /**
   * A sheet's bytes with the clinic's limits of what the sheet itself sets no limits for.
   *
   * @param sheet the sheet's bytes
   * @param own the sheet's own limits
   */
  public static byte[] into(byte[] sheet, GeometryLimits own, GeometryLimits clinic) {
    Map<LimitedQuantity, Bounds> more = new EnumMap<>(LimitedQuantity.class);
    more.putAll(clinic.own());
    more.keySet().retainAll(LimitsSection.OF_A_SHEET);
    more.keySet().removeAll(own.own().keySet());
    return more.isEmpty() ? sheet.clone() : into(new String(sheet, UTF_8), more).getBytes(UTF_8);
  }

  private static String into(String sheet, Map<LimitedQuantity, Bounds> more) {
    Matcher braces = IN_BRACES.matcher(sheet);
    if (braces.find()) {
      return sheet.substring(0, braces.end())
          + lines(more, ", ")
          + ", "
          + sheet.substring(braces.end());
    }
    Matcher lines = LINE_BY_LINE.matcher(sheet);
    if (lines.find()) {
      String indent = "\n" + lines.group(1);
      return sheet.substring(0, lines.end())
          + lines(more, indent)
          + indent
          + sheet.substring(lines.end());
    }
    String end = sheet.endsWith("\n") ? "" : "\n";
    return sheet + end + "limits: {" + lines(more, ", ") + "}\n";
  }

  private static String lines(Map<LimitedQuantity, Bounds> limits, String between) {
    return limits.entrySet().stream()
        .map(limit -> limit.getKey().key() + ": " + bounds(limit.getValue()))
        .collect(Collectors.joining(between));
  }

  private static String bounds(Bounds bounds) {
    return "{ask-below: "
        + YamlWords.number(bounds.askBelow())
        + ", ask-above: "
        + YamlWords.number(bounds.askAbove())
        + ", refuse-below: "
        + YamlWords.number(bounds.refuseBelow())
        + ", refuse-above: "
        + YamlWords.number(bounds.refuseAbove())
        + "}";
  }
}
