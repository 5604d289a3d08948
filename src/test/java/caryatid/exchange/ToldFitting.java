package caryatid.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.blackbox.Run;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * An invented fitting of the sample wearer K7 in a folder of records: components, comfort, three
 * stands in one state, one of them corrected, a typed stand.
 *
 * @param folder where the records and what is made of them lie
 */
record ToldFitting(Path folder) {
  static final String CODE = "K7-right";
  static final String SYSTEM = "urn:oid:2.25.1234";

  /** Of no wearer. */
  static final String NUMBER = "Q8-77123";

  static final String PATIENT = SYSTEM + "|" + NUMBER;
  private static final String K7 = "sample-recordings/k7/";
  private static final ObjectMapper EXACT =
      new ObjectMapper().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS);

  static ToldFitting in(Path folder) {
    ToldFitting fitting = new ToldFitting(folder);
    fitting.said(
        "start", "--at", "2026-03-04T08:30+01:00", "wearer=K7", "side=right", "level=transtibial");
    fitting.add("before-any-screw", "08:40", "socket-comfort=7", "note=a < b & \"c\"");
    fitting.add(
        "components",
        "08:45",
        "components[1].what=foot",
        "components[1].name=demo foot",
        "components[1].serial=D-0001",
        "components[1].ankle-axis=false",
        "components[1].body-mass-highest-kg=100.50",
        "components[1].mobility-grade-lowest=2",
        "components[1].mobility-grade-highest=4",
        "components[1].heel-height-lowest-mm=0",
        "components[1].heel-height-highest-mm=20",
        "components[1].source=Invented instructions, section 2");
    fitting.check("barefoot.yaml", "plate.yaml", "barefoot-1.csv", "barefoot-2.csv");
    return fitting;
  }

  /** The last entry is corrected, and another one is typed. */
  ToldFitting corrected() {
    List<String> check = check("shoe.yaml", "plate-pressure.yaml", "shoe.csv");
    check.addAll(List.of("--corrects", "4", "--because", "it was in the shoe"));
    caryatid(check);
    add(
        "stand",
        "15:00",
        "findings[1].plane=sagittal",
        "findings[1].side=right",
        "findings[1].landmark=knee centre",
        "findings[1].offset-mm=12.50",
        "findings[1].expanded-mm=9.8",
        "findings[1].recommended-mm=20",
        "findings[1].below-mm=15",
        "findings[1].above-mm=15",
        "findings[1].source=Invented instructions, section 4",
        "load-share-percent=48.5");
    add("closing", "15:10", "socket-comfort=9");
    return this;
  }

  void add(String kind, String hour, String... values) {
    List<String> all = new ArrayList<>(List.of(kind, "--at", "2026-03-04T" + hour + "+01:00"));
    all.addAll(List.of(values));
    said("add", all.toArray(String[]::new));
  }

  private List<String> check(String sheet, String plate, String... recordings) {
    List<String> all = new ArrayList<>(List.of("check"));
    Stream.of(recordings).map(K7::concat).forEach(all::add);
    all.addAll(List.of("--trial", K7 + sheet, "--plate", K7 + plate, "--out", file("reports")));
    all.addAll(List.of("--record", CODE, "--records", records(), "--by", "CD"));
    if (sheet.equals("barefoot.yaml")) {
      caryatid(all);
    }
    return all;
  }

  private void said(String command, String... values) {
    List<String> all = new ArrayList<>(List.of("record", command, CODE, "--by", "AB"));
    all.addAll(List.of("--records", records()));
    all.addAll(List.of(values));
    caryatid(all);
  }

  private static void caryatid(List<String> all) {
    Run run = Run.caryatid(all.toArray(String[]::new));
    assertThat(run.code()).as(all + "\n" + run.err()).isZero();
  }

  String records() {
    return file("records");
  }

  String file(String name) {
    return folder.resolve(name).toString();
  }

  /** Writes a bundle. */
  Run bundle(String name, String... more) {
    List<String> all = new ArrayList<>(List.of("record", "bundle", CODE, file(name)));
    all.addAll(List.of("--records", records(), "--patient-identifier", PATIENT));
    all.addAll(List.of(more));
    return Run.caryatid(all.toArray(String[]::new));
  }

  /** A bundle that was written. */
  JsonNode bundled(String name, String... more) {
    Run run = bundle(name, more);
    assertThat(run.code()).as(run.err()).isZero();
    return json(folder.resolve(name));
  }

  byte[] bytes(String name) {
    try {
      return Files.readAllBytes(folder.resolve(name));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A JSON file, its numbers with all their digits. */
  static JsonNode json(Path file) {
    try {
      return EXACT.readTree(Files.readAllBytes(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** All files of the record whose names end so, in the order of their entries. */
  List<Path> kept(String end) {
    try (Stream<Path> files = Files.walk(folder.resolve("records").resolve("records"))) {
      return files
          .filter(Files::isRegularFile)
          .filter(f -> f.toString().endsWith(end))
          .sorted(Comparator.comparing(f -> f.getParent().getFileName() + "/" + f.getFileName()))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Everything that lies in the record, as one text. */
  String everything() {
    StringBuilder all = new StringBuilder();
    for (Path file : kept("")) {
      try {
        all.append(new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return all.toString();
  }

  static List<JsonNode> resources(JsonNode bundle, String type) {
    List<JsonNode> found = new ArrayList<>();
    bundle.path("entry").forEach(entry -> found.add(entry.path("resource")));
    found.removeIf(resource -> !resource.path("resourceType").asText().equals(type));
    return found;
  }

  /** The code of what was observed. */
  static String code(JsonNode resource) {
    return resource.path("code").path("coding").path(0).path("code").asText();
  }

  static Optional<JsonNode> component(JsonNode observation, String code) {
    for (JsonNode component : observation.path("component")) {
      if (code(component).equals(code)) {
        return Optional.of(component);
      }
    }
    return Optional.empty();
  }
}
