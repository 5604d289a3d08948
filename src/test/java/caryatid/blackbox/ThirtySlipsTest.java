package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.blackbox.Fitting.Kind;
import caryatid.samples.GermanPlates;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Thirty slips of a tired clinician, each over a sample's files and over a two-plate export with
 * German names and y to the rear: each is refused, or asked about, before there is a result; none
 * passes in silence. What is said of each stands in {@code thirty-slips.txt}, which {@code
 * -Dapprove=true} writes anew.
 */
class ThirtySlipsTest {
  private static final Path APPROVED =
      Path.of("src/test/resources/caryatid/blackbox/thirty-slips.txt");

  private static final String DEMO_FOOT =
      "components[1].what=foot;components[1].name=demo foot;components[1].serial=";

  @TempDir private Path folder;

  /** One slip: its number, what it is, on which sample it is made, and how. */
  private record Slip(int number, String name, Kind sample, Function<Fitting, Run> made) {}

  private static final List<Slip> SLIPS =
      List.of(
          new Slip(1, "wrong side, frontal marks", Kind.K7, f -> otherSide(f).check()),
          new Slip(2, "wrong side, none", Kind.K7, f -> otherSide(f.sagittalOnly()).check()),
          new Slip(
              3,
              "another wearer's sheet",
              Kind.K7,
              f -> f.start().sheet("^wearer: .*", "wearer: X9").keep()),
          new Slip(
              4,
              "plates swapped in the sheet",
              Kind.M4,
              f -> f.sheet("left: (.*), right: (.*)}", "left: $2, right: $1}").check()),
          new Slip(
              5, "plates swapped at the cables", Kind.M4, f -> exchanged(f.sagittalOnly()).check()),
          new Slip(6, "export in cm called mm", Kind.K7, f -> momentsInNcm(f).check()),
          new Slip(7, "sheet in cm", Kind.K7, f -> inCm(f).check()),
          new Slip(8, "lengths in cm", Kind.K7, f -> lengths(f.start(), "98.6", "99.1")),
          new Slip(
              9, "yesterday's sheet", Kind.K7, f -> ofTheRecord(f.start(), Fitting::recordAgain)),
          new Slip(10, "knee below ankle", Kind.K7, f -> kneeBelowAnkle(f).check()),
          new Slip(
              11,
              "missing landmark",
              Kind.K7,
              f -> f.sheet("name: knee centre", "name: hip").check()),
          new Slip(
              12,
              "landmark not confirmed",
              Kind.K7,
              f -> based(f, "[ankle axis]", "barefoot", 0).check()),
          new Slip(
              13,
              "heel changed, landmarks confirmed",
              Kind.K7,
              f -> based(f, "[ankle axis, knee centre]", "boot", 40).check()),
          new Slip(14, "heel 1", Kind.K7, f -> shoe(f, 1).check()),
          new Slip(15, "stance width 22", Kind.K7, f -> width(f, 22).check()),
          new Slip(
              16,
              "barefoot with a heel",
              Kind.K7,
              f -> f.sheet("heel-height-mm: 0", "heel-height-mm: 15").check()),
          new Slip(
              17,
              "decimal comma",
              Kind.K7,
              f -> f.sheet("rightward-mm: (\\d+)", "rightward-mm: $1,5").check()),
          new Slip(
              18,
              "rightward sign forgotten",
              Kind.K7,
              f -> f.sheet("rightward-mm: (20|11\\d)", "rightward-mm: -$1").check()),
          new Slip(
              19,
              "target's sign reversed",
              Kind.K7,
              f -> f.sheet("recommended-mm: (20|15)", "recommended-mm: -$1").check()),
          new Slip(20, "serial not the record's", Kind.K7, f -> withFoot(f, "D-0999").keep()),
          new Slip(
              21,
              "target of another foot",
              Kind.K7,
              f ->
                  ofTheRecord(
                      f.start(),
                      g ->
                          later(g.recordAgain())
                              .sheet("Invented instructions for the demo", "Of another"))),
          new Slip(22, "date in the future", Kind.K7, f -> f.sheet("at: 2026", "at: 2062").check()),
          new Slip(
              23,
              "same recording twice",
              Kind.K7,
              f -> ofTheRecord(f.start(), ThirtySlipsTest::later)),
          new Slip(24, "mass over the limit", Kind.K7, f -> tooHeavy(f.start()).keep()),
          new Slip(
              25, "plantarflexion 40", Kind.K7, f -> bench(f.start(), "ankle plantarflexion", 40)),
          new Slip(26, "misspelt item", Kind.K7, f -> bench(f.start(), "ankle plantar flexion", 4)),
          new Slip(
              27,
              "misspelt deviation",
              Kind.K7,
              f -> f.start().add("walking", "observations[1].deviation=" + misspelt(f))),
          new Slip(28, "comfort 70", Kind.K7, f -> f.start().add("walking", "comfort=70")),
          new Slip(29, "form saved unfilled", Kind.K7, f -> unfilled(f.start())),
          new Slip(
              30,
              "telephone in a note",
              Kind.K7,
              f -> f.sheet("comfort: .*", "comfort: call 0171 5551234").check()));

  @TestFactory
  Stream<DynamicTest> noneOfThirtySlipsPassesInSilence() {
    StringBuilder all = new StringBuilder();
    Stream<DynamicTest> slips =
        SLIPS.stream()
            .flatMap(
                slip ->
                    Stream.of(slip.sample, Kind.R3)
                        .map(
                            kind ->
                                DynamicTest.dynamicTest(
                                    name(slip, kind), () -> all.append(told(slip, kind)))));
    return Stream.concat(
        slips, Stream.of(DynamicTest.dynamicTest("as approved", () -> approved(all.toString()))));
  }

  private static String name(Slip slip, Kind kind) {
    return slip.number + " " + slip.name + ", " + kind;
  }

  private String told(Slip slip, Kind kind) {
    Run run = slip.made.apply(Fitting.of(folder.resolve(slip.number + "-" + kind), kind));
    assertThat(run.code()).as("remarked after the result at most: " + run.out()).isEqualTo(1);
    String said = run.err();
    assertThat(said).isNotBlank();
    String how = isQuestion(said) ? "asked" : "refused";
    return name(slip, kind) + ": " + how + "\n" + said.strip().indent(4) + "\n";
  }

  private static boolean isQuestion(String said) {
    return said.contains("add to the sheet: ") || said.contains(" add: ");
  }

  private static void approved(String all) throws IOException {
    if (Boolean.getBoolean("approve")) {
      Files.writeString(APPROVED, all);
    }
    assertThat(all).isEqualTo(Files.readString(APPROVED));
  }

  @TestFactory
  Stream<DynamicTest> withoutASlipNothingIsAsked() {
    return Stream.of(Kind.values())
        .map(
            kind ->
                DynamicTest.dynamicTest(
                    kind.name(),
                    () -> {
                      Fitting fitting = Fitting.of(folder.resolve("clean-" + kind), kind).start();
                      assertThat(fitting.check())
                          .extracting(Run::code, Run::err)
                          .containsExactly(0, "");
                      assertThat(fitting.keep())
                          .extracting(Run::code, Run::err)
                          .containsExactly(0, "");
                    }));
  }

  /**
   * Whatever is asked of a stand, its line answers it, and is kept: the report needs no question.
   */
  @TestFactory
  Stream<DynamicTest> theLineThatIsAskedForAnswersAndIsKept() {
    return SLIPS.stream()
        .filter(slip -> List.of(2, 14, 18, 19, 20, 21, 23, 24, 30).contains(slip.number))
        .map(slip -> DynamicTest.dynamicTest(slip.name, () -> answered(slip)));
  }

  private void answered(Slip slip) {
    Fitting fitting = Fitting.of(folder.resolve("answered-" + slip.number), slip.sample);
    Run asked = slip.made.apply(fitting);
    String answers =
        Pattern.compile("as-meant: \\['(.*)'\\]")
            .matcher(asked.err())
            .results()
            .map(m -> "'" + m.group(1) + "'")
            .collect(Collectors.joining(", "));
    fitting.line("as-meant: [" + answers + "]");
    Run again = slip.number < 20 || slip.number == 30 ? fitting.check() : fitting.keep();
    assertThat(again.err()).isEmpty();
    String confirmed =
        slip.number == 24 ? "Beyond what" : "Asked about and confirmed in the sheet: ";
    assertThat(again.out()).contains(confirmed);
    Run recheck = Run.caryatid("check", fitting.file("out/stand-report.pdf"));
    assertThat(recheck.code()).as(recheck.err()).isZero();
    assertThat(recheck.out()).contains(confirmed);
  }

  private static Fitting otherSide(Fitting f) {
    return f.is(Kind.M4)
        ? f.sheet("^side: left", "side: right")
        : f.sheet("^side: right", "side: left");
  }

  private static Fitting exchanged(Fitting f) {
    if (f.is(Kind.R3)) {
      bytes(f, GermanPlates.export(true, 1, 3));
      return f;
    }
    return f.replace("stand.csv", "P1 ", "P3 ")
        .replace("stand.csv", "P2 ", "P1 ")
        .replace("stand.csv", "P3 ", "P2 ");
  }

  private static Fitting momentsInNcm(Fitting f) {
    if (f.is(Kind.R3)) {
      bytes(f, GermanPlates.export(false, 10, 3));
      return f;
    }
    String tenth =
        f.read("stand.csv")
            .lines()
            .map(ThirtySlipsTest::momentsByTen)
            .collect(Collectors.joining("\n", "", "\n"));
    return f.write("stand.csv", tenth);
  }

  private static String momentsByTen(String line) {
    String[] cells = line.split(";");
    for (int i = 4; i < cells.length && !line.startsWith("Time"); i++) {
      double tenth = Double.parseDouble(cells[i].replace(',', '.')) / 10;
      cells[i] = String.format(java.util.Locale.ROOT, "%.2f", tenth).replace('.', ',');
    }
    return String.join(";", cells);
  }

  private static void bytes(Fitting f, byte[] export) {
    try {
      Files.write(f.folder().resolve("stand.csv"), export);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Fitting inCm(Fitting f) {
    Matcher lengths =
        Pattern.compile("(forward-mm|rightward-mm|up-mm|stance-width-mm): (-?\\d+)")
            .matcher(f.read("sheet.yaml"));
    return f.write(
        "sheet.yaml",
        lengths.replaceAll(m -> m.group(1) + ": " + Integer.parseInt(m.group(2)) / 10.0));
  }

  private static Run lengths(Fitting f, String left, String right) {
    return f.add(
        "length",
        "landmarks[1].landmark=iliac crest",
        "landmarks[1].left-mm=" + left,
        "landmarks[1].right-mm=" + right);
  }

  /** A stand is in the record; another follows. */
  private static Run ofTheRecord(Fitting f, java.util.function.UnaryOperator<Fitting> change) {
    assertThat(f.keep().err()).isEmpty();
    return change.apply(f).keep();
  }

  private static Fitting later(Fitting f) {
    return f.sheet("^at: (.*)T\\d\\d:", "at: $1T17:");
  }

  private static Fitting kneeBelowAnkle(Fitting f) {
    return f.sheet("up-mm: 82", "up-mm: 4999")
        .sheet("up-mm: (492|500)", "up-mm: 82")
        .sheet("up-mm: 4999", "up-mm: 492");
  }

  private static Fitting based(Fitting f, String confirmed, String worn, int heelMm) {
    f.write("earlier.yaml", f.read("sheet.yaml"));
    f.sheet("^landmarks:\n((  |#).*\n)*", "").sheet("^targets:\n(  .*\n)*", "");
    return shoe(f, worn, heelMm).line("based-on: earlier.yaml").line("confirmed: " + confirmed);
  }

  private static Fitting shoe(Fitting f, int heelMm) {
    return shoe(f, "shoe", heelMm);
  }

  private static Fitting shoe(Fitting f, String worn, int heelMm) {
    return heelMm == 0
        ? f
        : f.sheet(
            "^footwear: .*", "footwear: {worn: " + worn + ", heel-height-mm: " + heelMm + "}");
  }

  private static Fitting width(Fitting f, int mm) {
    return f.sheet("stance-width-mm: .*", "stance-width-mm: " + mm);
  }

  private static Fitting withFoot(Fitting f, String serial) {
    Run added = f.start().add("components", (DEMO_FOOT + serial).split(";"));
    assertThat(added.err()).isEmpty();
    return f;
  }

  private static Fitting tooHeavy(Fitting f) {
    String serial = f.is(Kind.K7) ? "D-0001" : "D-0013";
    String foot = DEMO_FOOT + serial + ";components[1].body-mass-highest-kg=70";
    f.add("components", foot.split(";"));
    return f;
  }

  private static Run bench(Fitting f, String item, int set) {
    return f.add(
        "bench-alignment", "items[1].item=" + item, "items[1].set=" + set, "items[1].unit=deg");
  }

  private static String misspelt(Fitting f) {
    return f.is(Kind.K7) ? "knee thrust medialy" : "Knie weicht nach medial aux";
  }

  private static Run unfilled(Fitting f) {
    Run form = Run.caryatid("record", "form", "walking", "--records", f.file("records"));
    f.write("form.yaml", form.out());
    return f.add("walking", "--from", f.file("form.yaml"));
  }
}
