package caryatid.sheet;

import caryatid.recording.model.MeasuringLine;
import caryatid.recording.model.MeasuringLine.Sense;
import caryatid.remark.Argument;
import caryatid.sheet.yaml.Section;
import caryatid.sheet.yaml.ValueParser;
import caryatid.sheet.yaml.ValueParsers;
import java.util.Optional;

/** Reads one measuring line of a plate description. */
final class LineSection {
  private static final ValueParser<Double> POSITION_MM = ValueParsers.number(-10_000, 10_000);

  private LineSection() {}

  static Optional<MeasuringLine> line(Section section) {
    Optional<String> name = section.required("name", ValueParsers.TEXT);
    Optional<Double> forward = section.optional("forward-from-mm", POSITION_MM);
    Optional<Double> rightward = section.optional("rightward-from-mm", POSITION_MM);
    Optional<Double> registration =
        section.required("registration-mm", ValueParsers.number(0, 100));
    oneSense(section, name.orElse(""));
    return section.build(
        () ->
            new MeasuringLine(
                name.orElseThrow(),
                forward.isPresent() ? Sense.FORWARD : Sense.RIGHTWARD,
                forward.or(() -> rightward).orElseThrow(),
                registration.orElseThrow()));
  }

  private static void oneSense(Section section, String name) {
    boolean forward = section.has("forward-from-mm");
    boolean rightward = section.has("rightward-from-mm");
    if (forward && rightward) {
      section.refuse(section.place(), DescriptionProblem.LINE_IN_BOTH_SENSES, Argument.text(name));
    } else if (!forward && !rightward) {
      section.refuse(section.place(), DescriptionProblem.LINE_WITHOUT_SENSE, Argument.text(name));
    }
  }
}
