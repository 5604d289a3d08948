package caryatid.usecase.inspect;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import caryatid.recording.importer.Importer;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.PlateTrack;
import caryatid.remark.BadInput;
import caryatid.sheet.DescriptionReader;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Finishes a description from {@code inspect --write} alone, for each family of exports, by a page
 * of the plate's facts: every {@code unknown} is replaced by the fact of its key, and what the page
 * does not know is deleted, as the written file says. Validation: the mean of the invented stand is
 * known by construction.
 */
class DescriptionFromWriteTest {
  private static final Wording WORDING = Wording.in(Locale.ENGLISH);
  private static final int MOST_TRIES = 2;

  /** The invented stand: sample i at i/100 s, where and under how much. */
  private record Sample(double timeS, double rightMm, double anteriorMm, double upN) {
    static Sample of(int i) {
      double t = i / 100.0;
      return new Sample(
          t,
          12 + 4 * Math.sin(0.9 * t) + Math.sin(5 * t),
          -30 + 6 * Math.sin(0.7 * t) + Math.cos(4 * t),
          790 + 2 * Math.sin(6 * t));
    }
  }

  private interface Row {
    String of(int number, Sample sample);
  }

  /** An export, and the page of its plate's facts by the keys of a plate description. */
  private record Family(String name, String head, Row row, Map<String, String> facts) {}

  private static final Map<String, String> AXES =
      Map.of("axes.right", "+x", "axes.anterior", "+y", "axes.up", "+z");

  private static Map<String, String> facts(String... keysAndValues) {
    Map<String, String> facts = new java.util.HashMap<>(AXES);
    for (int i = 0; i < keysAndValues.length; i += 2) {
      facts.put(keysAndValues[i], keysAndValues[i + 1]);
    }
    return facts;
  }

  private static String row(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }

  private static String comma(String row) {
    return row.replace('.', ',');
  }

  private static Row plain(double perMm, double perN) {
    return (i, s) ->
        row("%.2f,%.4f,%.6f,%.6f", s.timeS, s.upN * perN, s.rightMm * perMm, s.anteriorMm * perMm);
  }

  private static Row semicolons(double perMm, double perN) {
    return (i, s) ->
        comma(
            row(
                "%.2f;%.4f;%.6f;%.6f",
                s.timeS, s.upN * perN, s.rightMm * perMm, s.anteriorMm * perMm));
  }

  /** Six channels with moments in N m about the surface. */
  private static Row sixChannels(double perNm) {
    return (i, s) ->
        row(
            "%.2f,%.3f,%.3f,%.4f,%.6f,%.6f,%.4f",
            s.timeS,
            2.0 + Math.sin(i),
            -1.0 + Math.cos(i),
            s.upN,
            s.upN * s.anteriorMm / 1000 * perNm,
            -s.upN * s.rightMm / 1000 * perNm,
            0.1 * Math.sin(i));
  }

  private static final List<Family> FAMILIES =
      List.of(
          new Family(
              "names without units",
              "Time,Fz,CoPx,CoPy",
              plain(1, 1),
              facts("force", "N", "cop", "mm", "unit", "s")),
          new Family("bare axes", "Time (s),x,y", withoutForce(0.1), facts("cop", "cm")),
          new Family("capital axes", "Time (s),X,Y", withoutForce(1), facts("cop", "mm")),
          new Family("point of application", "Time (s),Fz (N),Ax (m),Ay (m)", plain(1e-3, 1), AXES),
          new Family(
              "other short names",
              "Time (s),Fz,CpX,CpY",
              plain(1, 1),
              facts("force", "N", "cop", "mm")),
          new Family(
              "letters of feet",
              "Time (s),RGRF_Z,RCOP_X,RCOP_Y",
              plain(1e-3, 1),
              facts("force", "N", "cop", "m")),
          new Family(
              "axes below devices",
              ",Force,,,CoP,\nTime (s),X - Global (N),Y - Global (N),Z - Global (N),X - Global (mm),Y"
                  + " - Global (mm)",
              (i, s) ->
                  row(
                      "%.2f,%.3f,%.3f,%.4f,%.4f,%.4f",
                      s.timeS, 2 + Math.sin(i), Math.cos(i) - 1, s.upN, s.rightMm, s.anteriorMm),
              AXES),
          new Family(
              "German",
              "Zeit [s];Kraft Z;Druckmittelpunkt X;Druckmittelpunkt Y",
              semicolons(0.1, 1),
              facts("force", "N", "cop", "cm")),
          new Family(
              "German, short, a row of units",
              "Zeit;Kraft Z;Druckpunkt X;Druckpunkt Y\ns;N;cm;cm",
              semicolons(0.1, 1),
              AXES),
          new Family(
              "French",
              "Temps (s);Force verticale;Centre de pression X;Centre de pression Y",
              semicolons(1, 1),
              facts("force", "N", "cop", "mm")),
          new Family(
              "Spanish",
              "Tiempo (s);Fuerza Z;Centro de presión X;Centro de presión Y",
              semicolons(1, 1),
              facts("force", "N", "cop", "mm")),
          new Family(
              "Italian",
              "Tempo (s);Forza verticale;Centro di pressione X;Centro di pressione Y",
              semicolons(1, 1),
              facts("force", "N", "cop", "mm")),
          new Family(
              "Portuguese",
              "Tempo (s);Força vertical;Centro de pressão X;Centro de pressão Y",
              semicolons(1e-3, 1),
              facts("force", "N", "cop", "m")),
          new Family("a row of units", "Time,Fz,CoPx,CoPy\ns,N,mm,mm", plain(1, 1), AXES),
          new Family(
              "force in kg",
              "Time (s),Fz,CoPx,CoPy",
              plain(1, 1 / 9.80665),
              facts("force", "kg", "cop", "mm")),
          new Family(
              "six channels",
              "Time (s),Fx,Fy,Fz,Mx,My,Mz",
              sixChannels(1),
              facts(
                  "force",
                  "N",
                  "moment",
                  "N m",
                  "true-origin-mm.x",
                  "0",
                  "true-origin-mm.y",
                  "0",
                  "true-origin-mm.z",
                  "0")),
          new Family(
              "six channels with units",
              "Time (s),Fx (N),Fy (N),Fz (N),Mx (N.mm),My (N.mm),Mz (N.mm)",
              sixChannels(1000),
              facts("true-origin-mm.x", "0", "true-origin-mm.y", "0", "true-origin-mm.z", "0")),
          new Family(
              "fore and aft only",
              "Time (s),Fz (N),CoPy (mm)",
              (i, s) -> row("%.2f,%.4f,%.6f", s.timeS, s.upN, s.anteriorMm),
              facts("measures", "fore and aft")),
          new Family(
              "one moment only",
              "Time (s),Fy (N),Fz (N),Mx (N.mm)",
              (i, s) ->
                  row("%.2f,%.4f,%.4f,%.4f", s.timeS, Math.sin(i), s.upN, s.upN * s.anteriorMm),
              facts(
                  "measures",
                  "fore and aft",
                  "true-origin-mm.x",
                  "0",
                  "true-origin-mm.y",
                  "0",
                  "true-origin-mm.z",
                  "0")),
          new Family(
              "no rate",
              "Fz (N),CoPx (mm),CoPy (mm)",
              (i, s) -> row("%.3f,%.4f,%.4f", s.upN, s.rightMm, s.anteriorMm),
              facts("rate-hz", "100")),
          new Family(
              "whole seconds",
              "Time (s),Fz (N),CoPx (mm),CoPy (mm)",
              (i, s) -> row("%d,%.3f,%.4f,%.4f", i / 100, s.upN, s.rightMm, s.anteriorMm),
              facts("rate-hz", "100")),
          new Family(
              "a rate of frames above",
              "Samples (#):,2000\nCapture Frame Rate,100.00\nFz (N),CoPx (mm),CoPy (mm)",
              (i, s) -> row("%.3f,%.4f,%.4f", s.upN, s.rightMm, s.anteriorMm),
              AXES),
          new Family(
              "names nobody knows",
              "Time (s),ch1,ch2,ch3",
              plain(1, 1),
              facts("force", "N", "cop", "mm", "cop-x", "ch2", "cop-y", "ch3", "force-z", "ch1")),
          new Family(
              "no names",
              "Level plate",
              plain(1, 1),
              facts(
                  "export.columns",
                  "[a, b, c, d]",
                  "time",
                  "{column: a, unit: s}",
                  "force",
                  "N",
                  "cop",
                  "mm",
                  "cop-x",
                  "c",
                  "cop-y",
                  "d",
                  "force-z",
                  "b")),
          new Family(
              "more names than cells",
              "Time,Trigger,Fz,CoPx,CoPy",
              plain(1, 1),
              facts(
                  "export.columns",
                  "[a, b, c, d]",
                  "time",
                  "{column: a, unit: s}",
                  "force",
                  "N",
                  "cop",
                  "mm",
                  "cop-x",
                  "c",
                  "cop-y",
                  "d",
                  "force-z",
                  "b")),
          new Family(
              "one name twice",
              "Time,Fz,CoP x,CoP x",
              plain(1, 1),
              facts(
                  "export.columns",
                  "[Time, Fz, CoPx, CoPy]",
                  "time",
                  "{column: Time, unit: s}",
                  "force",
                  "N",
                  "cop",
                  "mm",
                  "cop-x",
                  "CoPx",
                  "cop-y",
                  "CoPy",
                  "force-z",
                  "Fz")));

  private static Row withoutForce(double perMm) {
    return (i, s) -> row("%.2f,%.6f,%.6f", s.timeS, s.rightMm * perMm, s.anteriorMm * perMm);
  }

  @TestFactory
  Stream<DynamicTest> aDescriptionIsFinishedFromWhatIsWritten() {
    assertThat(FAMILIES).hasSizeGreaterThanOrEqualTo(20);
    return FAMILIES.stream()
        .map(family -> DynamicTest.dynamicTest(family.name, () -> finish(family)));
  }

  private static void finish(Family family) throws BadInput {
    StringBuilder text = new StringBuilder(family.head).append('\n');
    double right = 0;
    double anterior = 0;
    for (int i = 0; i < 2000; i++) {
      Sample sample = Sample.of(i);
      text.append(family.row.of(i, sample)).append('\n');
      right += sample.rightMm / 2000;
      anterior += sample.anteriorMm / 2000;
    }
    NamedBytes export = NamedBytes.of("stand.csv", text.toString().getBytes(UTF_8));
    List<String> said = new ArrayList<>();
    Optional<NamedBytes> description = Optional.empty();
    for (int tries = 0; tries < MOST_TRIES; tries++) {
      String draft =
          new String(Inspect.draft(export, Inspect.run(export, description), WORDING), UTF_8);
      String open = open(draft, export);
      said.add(draft + open);
      description = Optional.of(NamedBytes.of("plate.yaml", filled(draft, family.facts)));
      Optional<PlateTrack> track = read(export, description.get(), said);
      if (track.isPresent()) {
        if (family.facts.containsKey("measures")) {
          assertThat(track.get().copRightMm()).isEmpty();
        } else {
          assertThat(mean(track.get().copRightMm().orElseThrow(), track.get()))
              .isCloseTo(right, within(1e-3));
        }
        assertThat(mean(track.get().copAnteriorMm(), track.get()))
            .isCloseTo(anterior, within(1e-3));
        return;
      }
    }
    throw new AssertionError(String.join("\n----\n", said));
  }

  /** What is written is refused as long as a question is open. */
  private static String open(String draft, NamedBytes export) {
    if (draft.lines().noneMatch(l -> !l.strip().startsWith("#") && l.contains("unknown"))) {
      return "";
    }
    List<String> said = new ArrayList<>();
    assertThat(read(export, NamedBytes.of("plate.yaml", draft.getBytes(UTF_8)), said))
        .as(draft)
        .isEmpty();
    return String.join("\n", said);
  }

  private static Optional<PlateTrack> read(
      NamedBytes export, NamedBytes description, List<String> said) {
    try {
      PlateDescription plate = DescriptionReader.read(description);
      return Optional.of(Importer.read(export, Optional.of(plate)).plates().get(0));
    } catch (BadInput e) {
      e.problems().forEach(p -> said.add(WORDING.say(p)));
      return Optional.empty();
    }
  }

  private static double mean(caryatid.recording.model.Samples values, PlateTrack track) {
    double sum = 0;
    int count = 0;
    for (int i = 0; i < values.size(); i++) {
      if (track.usable().at(i)) {
        sum += values.at(i);
        count++;
      }
    }
    return sum / count;
  }

  private static final Pattern SECTION = Pattern.compile("( *)([a-z-]+): \\{(.*)\\}");
  private static final Pattern LIST = Pattern.compile("columns: \\[[^\\]]*unknown[^\\]]*\\]");
  private static final Pattern OPEN = Pattern.compile("([a-z-]+): unknown(, )?");

  private static byte[] filled(String draft, Map<String, String> facts) {
    StringBuilder text = new StringBuilder();
    draft
        .lines()
        .map(line -> line.strip().startsWith("#") ? line : filledLine(line, facts))
        .forEach(line -> text.append(line).append('\n'));
    return text.toString().getBytes(UTF_8);
  }

  private static String filledLine(String line, Map<String, String> facts) {
    String named = LIST.matcher(line).replaceAll("columns: " + facts.get("export.columns"));
    if (named.strip().equals("measures: unknown")) {
      return facts.containsKey("measures") ? "    measures: " + facts.get("measures") : "";
    }
    Matcher section = SECTION.matcher(named);
    if (!section.matches() || !named.contains("unknown")) {
      return named;
    }
    if (facts.containsKey(section.group(2))) {
      return section.group(1) + section.group(2) + ": " + facts.get(section.group(2));
    }
    String values =
        OPEN.matcher(section.group(3))
            .replaceAll(
                m -> {
                  String key = m.group(1);
                  String fact =
                      facts.getOrDefault(section.group(2) + "." + key, facts.getOrDefault(key, ""));
                  String rest = m.group(2) == null ? "" : m.group(2);
                  return fact.isEmpty() ? "" : key + ": " + fact + rest;
                });
    return section.group(1) + section.group(2) + ": {" + values.replaceAll(", $", "") + "}";
  }
}
