package caryatid.sheet;

import caryatid.geometry.Axes;
import caryatid.geometry.Direction;
import caryatid.recording.model.Channel;
import caryatid.recording.model.ImportProblem;
import caryatid.recording.model.MeasuringLine;
import caryatid.recording.model.PlateAccuracy;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.PlateLayout;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.sheet.yaml.ValueParsers;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * Writes a plate description (YAML) that {@link DescriptionReader} reads. Unknown values are
 * written as {@code unknown}, which the reader refuses, below the question that asks for them.
 */
public final class DescriptionWriter {
  private static final String UNKNOWN = "unknown";

  /** Questions because of which nothing of a plate could be read. */
  private static final Set<ImportProblem> UNREAD =
      EnumSet.of(ImportProblem.NO_PLATE, ImportProblem.NO_NAMES, ImportProblem.NAMES_COUNT);

  private final StringBuilder text = new StringBuilder();
  private final Map<ImportProblem, String> open = new LinkedHashMap<>();
  private final Set<ImportProblem> written = EnumSet.noneOf(ImportProblem.class);
  private final Set<ImportProblem> asked = EnumSet.noneOf(ImportProblem.class);

  private DescriptionWriter() {}

  /**
   * Writes a description.
   *
   * @param draft what is known
   * @param questions what is open
   * @param notes lines of comment that lead it
   * @param wording the sentence of a question
   */
  public static String write(
      PlateDescription draft,
      List<Problem> questions,
      List<String> notes,
      Function<Problem, String> wording) {
    DescriptionWriter writer = new DescriptionWriter();
    notes.forEach(note -> writer.line("# " + plain(note)));
    for (Problem question : questions) {
      if (question.topic() instanceof ImportProblem reading) {
        writer.open.put(reading, plain(wording.apply(question)));
      }
    }
    writer.asked.addAll(writer.open.keySet());
    if (writer.open.keySet().stream().anyMatch(UNREAD::contains)) {
      writer.askAll(draft, questions.get(0).place(), wording);
    }
    return writer.write(draft);
  }

  /** No-break spaces are for terminals and pages; in a file to be edited they surprise. */
  private static String plain(String text) {
    return text.replace('\u00a0', ' ');
  }

  /** Where no plate was found, everything about it is open. */
  private void askAll(PlateDescription draft, Place place, Function<Problem, String> wording) {
    asked.addAll(EnumSet.of(ImportProblem.COP_UNIT, ImportProblem.FORCE_UNIT));
    if (draft.axes().isEmpty()) {
      open.put(
          ImportProblem.AXES,
          plain(wording.apply(Problem.at(Place.of(place.file()), ImportProblem.AXES))));
      asked.add(ImportProblem.AXES);
    }
    if (draft.time().column().isPresent() && draft.time().unit().isEmpty()) {
      asked.add(ImportProblem.TIME_UNIT);
    } else if (draft.time().column().isEmpty() && draft.time().rateHz().isEmpty()) {
      asked.add(ImportProblem.NO_RATE);
    }
  }

  private String write(PlateDescription draft) {
    line("plate-description: 1");
    line("name: " + YamlWords.text(draft.name()));
    comments(
        EnumSet.of(
            ImportProblem.WHICH_RECORDING,
            ImportProblem.THOUSANDS,
            ImportProblem.TWICE,
            ImportProblem.NO_NAMES,
            ImportProblem.NAMES_COUNT));
    flow("export", LayoutWriter.export(draft.layout(), asked));
    comments(
        EnumSet.of(
            ImportProblem.NO_RATE,
            ImportProblem.RATE_UNCLEAR,
            ImportProblem.RATE_OF_ROWS,
            ImportProblem.WHOLE_SECONDS,
            ImportProblem.TIME_UNIT,
            ImportProblem.TIME_UNIT_WRONG));
    flow("time", LayoutWriter.time(draft.time(), asked));
    comments(EnumSet.of(ImportProblem.AXES));
    flow("axes", draft.axes().map(DescriptionWriter::axes).orElseGet(this::openAxes));
    draft.forceIs().ifPresent(force -> line("force-is: " + ValueParsers.wordFor(force)));
    plates(draft);
    if (!draft.lines().isEmpty()) {
      line("measuring-lines:");
      draft.lines().forEach(l -> line("  - {" + YamlWords.flow(measuringLine(l)) + "}"));
    }
    draft.accuracy().ifPresent(a -> flow("accuracy", accuracy(a)));
    if (draft.removeUnloadedOffset()) {
      line("remove-unloaded-offset: yes");
    }
    return text.toString();
  }

  private void line(String line) {
    text.append(line).append('\n');
  }

  private void comments(Set<ImportProblem> topics) {
    topics.forEach(topic -> comment("", topic));
  }

  private void flow(String key, Map<String, String> values) {
    if (!values.isEmpty()) {
      line(key + ": {" + YamlWords.flow(values) + "}");
    }
  }

  private static Map<String, String> axes(Axes axes) {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("right", direction(axes.right()));
    values.put("anterior", direction(axes.anterior()));
    values.put("up", direction(axes.up()));
    return values;
  }

  private static String direction(Direction direction) {
    return (direction.sign() < 0 ? "-" : "+") + direction.axis().letter();
  }

  private Map<String, String> openAxes() {
    Map<String, String> values = new LinkedHashMap<>();
    if (asked.contains(ImportProblem.AXES)) {
      List.of("right", "anterior", "up").forEach(key -> values.put(key, UNKNOWN));
    }
    return values;
  }

  private void plates(PlateDescription draft) {
    List<PlateLayout> plates = new ArrayList<>(draft.plates());
    comments(
        EnumSet.of(
            ImportProblem.SUM_OR_PLATE, ImportProblem.NO_PLATE, ImportProblem.NO_PLATE_NAMES));
    if (!plates.isEmpty()) {
      line("plates:");
      plates.forEach(this::plate);
      if (asked.contains(ImportProblem.SUM_OR_PLATE)) {
        line("  - name: " + UNKNOWN);
      }
    }
  }

  private void plate(PlateLayout plate) {
    line("  - name: " + YamlWords.text(plate.name()));
    Map<String, String> columns = new LinkedHashMap<>();
    new TreeMap<>(plate.columns()).forEach((c, name) -> columns.put(key(c), YamlWords.text(name)));
    platesQuestions(ImportProblem.WHICH_VERSION);
    inPlate("columns", columns);
    platesQuestions(ImportProblem.ONE_DIRECTION);
    PlateWriter.measures(plate, asked).ifPresent(words -> line("    measures: " + words));
    platesQuestions(ImportProblem.FORCE_UNIT, ImportProblem.MOMENT_UNIT, ImportProblem.COP_UNIT);
    inPlate("units", PlateWriter.units(plate, asked));
    inPlate("edges-mm", PlateWriter.edges(plate));
    platesQuestions(ImportProblem.TRUE_ORIGIN);
    inPlate("true-origin-mm", PlateWriter.trueOrigin(plate, asked));
    platesQuestions(ImportProblem.EXPORT_ORIGIN);
    inPlate("export-origin-mm", PlateWriter.exportOrigin(plate, asked));
    plate.sensors().ifPresent(sensors -> PlateWriter.sensors(sensors).forEach(this::line));
  }

  private static String key(Channel channel) {
    return ValueParsers.wordFor(channel).replace(' ', '-');
  }

  private void platesQuestions(ImportProblem... topics) {
    for (ImportProblem topic : topics) {
      comment("    ", topic);
    }
  }

  /** Each question stands once, above the first place it concerns. */
  private void comment(String indent, ImportProblem topic) {
    if (open.containsKey(topic) && written.add(topic)) {
      line(indent + "# " + open.get(topic).replace("\n", "\n" + indent + "# "));
    }
  }

  private void inPlate(String key, Map<String, String> values) {
    if (!values.isEmpty()) {
      line("    " + key + ": {" + YamlWords.flow(values) + "}");
    }
  }

  private static Map<String, String> measuringLine(MeasuringLine line) {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("name", YamlWords.text(line.name()));
    boolean forward = line.sense() == MeasuringLine.Sense.FORWARD;
    values.put(
        forward ? "forward-from-mm" : "rightward-from-mm", YamlWords.number(line.positionMm()));
    values.put("registration-mm", YamlWords.number(line.registrationMm()));
    return values;
  }

  private static Map<String, String> accuracy(PlateAccuracy accuracy) {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("cop-mm", YamlWords.number(accuracy.copMm()));
    values.put("level-deg", YamlWords.number(Math.toDegrees(accuracy.levelRad())));
    values.put("force-percent", YamlWords.number(accuracy.forceFraction() * 100));
    if (accuracy.leanRad() != PlateAccuracy.ASSUMED.leanRad()) {
      values.put("lean-deg", YamlWords.number(Math.toDegrees(accuracy.leanRad())));
    }
    return values;
  }
}
