package caryatid;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.type;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import caryatid.remark.Topic;
import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.Console;
import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.time.Clock;
import java.util.Arrays;
import java.util.Random;
import java.util.Scanner;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Holds the table of packages: what each may use. {@link ArchitecturePageTest} compares it with
 * DEVELOPERS.md.
 */
class ArchitectureTest {
  private static final JavaClasses PROGRAM =
      new ClassFileImporter()
          .importUrl(Topic.class.getProtectionDomain().getCodeSource().getLocation());

  /** A package, the project's packages it may use, and the libraries only such packages may use. */
  record Row(String name, String uses, String libraries) {}

  static final Row[] TABLE = {
    new Row("remark", "", ""),
    new Row("disk", "", ""),
    new Row("geometry", "remark", ""),
    new Row("uncertainty", "", "org.apache.commons.statistics.. org.apache.commons.math3.."),
    new Row("recording.model", "geometry remark", ""),
    new Row(
        "recording.table",
        "recording.model geometry remark",
        "org.apache.commons.csv.. ch.randelshofer.."),
    new Row("recording.time", "recording.model recording.table remark", ""),
    new Row(
        "recording.track", "recording.model recording.table recording.time geometry remark", ""),
    new Row("recording.workbook", "recording.model remark", "javax.xml.stream.."),
    new Row("recording.c3d", "recording.model recording.table geometry remark", ""),
    new Row(
        "recording.importer",
        "recording.model recording.table recording.time recording.track recording.c3d"
            + " recording.workbook geometry remark",
        ""),
    new Row(
        "standing",
        "recording.model geometry uncertainty remark",
        "org.apache.commons.statistics.. org.apache.commons.math3.."),
    new Row("loadline", "standing geometry uncertainty remark", ""),
    new Row("sheet.yaml", "recording.model geometry remark", "org.snakeyaml.engine.."),
    new Row(
        "sheet",
        "sheet.yaml recording.model standing loadline geometry uncertainty remark",
        "org.snakeyaml.engine.."),
    new Row("repeatability", "sheet.yaml recording.model uncertainty remark", ""),
    new Row("plate", "sheet.yaml recording.model geometry uncertainty remark", ""),
    new Row(
        "alignment",
        "sheet recording.model standing loadline geometry uncertainty remark",
        "org.apache.commons.math3.."),
    new Row(
        "advice",
        "alignment sheet recording.model standing loadline geometry uncertainty remark",
        "org.apache.commons.statistics.. org.apache.commons.math3.."),
    new Row(
        "entry",
        "alignment sheet sheet.yaml recording.model standing loadline geometry uncertainty remark",
        ""),
    new Row(
        "format",
        "entry alignment sheet sheet.yaml recording.model standing loadline geometry uncertainty"
            + " remark",
        "com.fasterxml.jackson.."),
    new Row(
        "fitting",
        "format entry alignment sheet recording.model standing loadline geometry uncertainty"
            + " remark",
        ""),
    new Row(
        "store",
        "disk fitting format entry alignment sheet recording.model standing loadline geometry"
            + " uncertainty remark",
        "io.ocfl.. com.fasterxml.jackson.."),
    new Row(
        "clinic",
        "disk format entry alignment sheet recording.model standing loadline geometry uncertainty"
            + " remark",
        ""),
    new Row(
        "views",
        "advice fitting entry alignment sheet recording.model standing loadline geometry"
            + " uncertainty remark",
        ""),
    new Row(
        "wording",
        "advice views fitting entry alignment sheet recording.model standing loadline geometry"
            + " uncertainty remark",
        ""),
    new Row(
        "chart.mark",
        "advice wording views fitting entry alignment sheet recording.model standing loadline"
            + " geometry uncertainty remark",
        "java.awt.."),
    new Row(
        "chart.leg",
        "advice chart.mark wording views fitting entry alignment sheet recording.model standing"
            + " loadline geometry uncertainty remark",
        ""),
    new Row(
        "chart.paint",
        "advice chart.leg chart.mark wording views fitting entry alignment sheet recording.model"
            + " standing loadline geometry uncertainty remark",
        "org.jfree.. java.awt.."),
    new Row(
        "chart",
        "advice chart.paint chart.leg chart.mark wording views fitting entry alignment sheet"
            + " recording.model standing loadline geometry uncertainty remark",
        ""),
    new Row(
        "report.pages",
        "advice chart chart.mark wording views fitting format entry alignment sheet recording.model"
            + " standing loadline geometry uncertainty remark",
        ""),
    new Row(
        "report.picture",
        "chart.paint chart.mark recording.model remark",
        "java.awt.. javax.imageio.. com.drew.."),
    new Row(
        "report.pdf",
        "advice report.pages report.picture chart.paint chart chart.mark wording views fitting"
            + " format entry alignment sheet recording.model standing loadline geometry uncertainty"
            + " remark",
        "org.apache.pdfbox.. org.apache.fontbox.. java.awt.. javax.imageio.."),
    new Row(
        "report",
        "advice report.pages report.pdf report.picture chart chart.mark wording views fitting"
            + " format entry alignment sheet recording.model standing loadline geometry uncertainty"
            + " remark",
        "org.apache.pdfbox.."),
    new Row("usecase.file", "disk recording.model remark", ""),
    new Row(
        "usecase.inspect",
        "wording sheet sheet.yaml recording.model recording.importer standing loadline geometry"
            + " uncertainty remark",
        ""),
    new Row(
        "usecase",
        "advice usecase.file disk clinic store disk views fitting format entry report report.pages"
            + " report.pdf report.picture wording alignment sheet sheet.yaml recording.model"
            + " recording.importer standing loadline geometry uncertainty remark",
        ""),
    new Row(
        "usecase.stand",
        "usecase usecase.file usecase.prove disk clinic store fitting views entry report"
            + " report.pages wording sheet sheet.yaml recording.model standing alignment loadline"
            + " geometry remark",
        ""),
    new Row(
        "usecase.prove",
        "usecase clinic plate repeatability sheet wording recording.model recording.importer"
            + " geometry uncertainty remark",
        ""),
    new Row(
        "usecase.batch",
        "usecase usecase.file report report.pages wording format alignment recording.model remark",
        "org.apache.commons.csv.."),
    new Row(
        "exchange",
        "usecase usecase.file report.pages store fitting views wording format entry alignment"
            + " recording.model sheet sheet.yaml loadline geometry uncertainty remark",
        "com.fasterxml.jackson.. java.net.http.. javax.net.ssl.."),
    new Row("web.safe", "remark", "com.sun.net.httpserver.."),
    new Row(
        "web.page", "usecase usecase.file usecase.inspect usecase.stand wording entry remark", ""),
    new Row(
        "web",
        "web.page web.safe exchange usecase usecase.file usecase.inspect usecase.prove"
            + " usecase.stand wording entry remark",
        "com.sun.net.httpserver.."),
    new Row(
        "cli",
        "web exchange usecase usecase.file usecase.inspect usecase.prove usecase.batch wording"
            + " entry remark",
        "picocli.."),
    new Row("rehearsal", "cli web usecase remark", "")
  };

  private static final Set<String> FACES = Set.of("cli", "web", "web.page");

  /** Of other packages, the values that use cases take and give; no importer, store or painter. */
  private static final String[] VALUES = {
    "caryatid.recording.model.NamedBytes",
    "caryatid.recording.model.Inspection",
    "caryatid.recording.model.PlateProof",
    "caryatid.standing.Stretch",
    "caryatid.standing.NamedStretch",
    "caryatid.sheet.yaml.InputValue",
    "caryatid.sheet.AmputationLevel",
    "caryatid.alignment.Result",
    "caryatid.alignment.Undecided",
    "caryatid.fitting.Addition$Attached",
    "caryatid.clinic.KnownPlate",
    "caryatid.clinic.PartTorque",
    "caryatid.clinic.MeasuredDoubt",
    "caryatid.format.NearlyKnown$Word",
    "caryatid.store.Backup$Made",
    "caryatid.views.Comparison",
    "caryatid.views.LastGood",
    "caryatid.views.SinceVisit",
    "caryatid.views.RecordView",
    "caryatid.views.RecordAdvice",
    "caryatid.report.pages.Paper",
    "caryatid.format.ResultDifference"
  };

  @TestFactory
  Stream<DynamicTest> eachPackageUsesOnlyWhatItMay() {
    return Arrays.stream(TABLE).map(row -> DynamicTest.dynamicTest(row.name(), () -> check(row)));
  }

  private static void check(Row row) {
    Stream<String> own =
        Stream.concat(Stream.of(row.name()), words(row.uses())).map(ArchitectureTest::packages);
    Stream<String> jdk =
        Stream.of(
            "java.lang..",
            "java.util..",
            "java.io..",
            "java.nio..",
            "java.time..",
            "java.math..",
            "java.text..",
            "java.security..",
            "java.net..",
            "java..invoke..");
    String[] allowed =
        Stream.concat(Stream.concat(own, jdk), words(row.libraries())).toArray(String[]::new);
    classes()
        .that()
        .resideInAPackage(packages(row.name()))
        .should()
        .onlyDependOnClassesThat(resideInAnyPackage(allowed).or(primitiveOrArray()).or(values(row)))
        .allowEmptyShould(true)
        .check(PROGRAM);
  }

  /** A package and what is below it; without the latter if that has rows of its own. */
  private static String packages(String name) {
    boolean divided = Arrays.stream(TABLE).anyMatch(row -> row.name().startsWith(name + "."));
    return "caryatid." + name + (divided ? "" : "..");
  }

  private static DescribedPredicate<JavaClass> primitiveOrArray() {
    return DescribedPredicate.describe(
        "primitives and arrays", c -> c.isPrimitive() || c.isArray());
  }

  /** What a face may use beside use cases and wording. */
  private static DescribedPredicate<JavaClass> values(Row row) {
    return DescribedPredicate.describe(
        "values",
        c ->
            FACES.contains(row.name())
                && Arrays.stream(VALUES)
                    .anyMatch(v -> c.getName().equals(v) || c.getName().startsWith(v + "$")));
  }

  private static Stream<String> words(String list) {
    return Arrays.stream(list.split(" ")).filter(word -> !word.isEmpty());
  }

  @Test
  void noPackageIsLeftOutOfTheTable() {
    String[] listed = Arrays.stream(TABLE).map(row -> packages(row.name())).toArray(String[]::new);
    noClasses().should().resideOutsideOfPackages(listed).check(PROGRAM);
  }

  @Test
  void packagesFormNoCycle() {
    slices().matching("caryatid.(*)..").should().beFreeOfCycles().check(PROGRAM);
    slices().matching("caryatid.recording.(*)..").should().beFreeOfCycles().check(PROGRAM);
    noClasses()
        .that()
        .resideInAPackage("caryatid.sheet.yaml")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("caryatid.sheet")
        .check(PROGRAM);
    slices().matching("caryatid.chart.(*)..").should().beFreeOfCycles().check(PROGRAM);
    slices().matching("caryatid.report.(*)..").should().beFreeOfCycles().check(PROGRAM);
    slices().matching("caryatid.web.(*)..").should().beFreeOfCycles().check(PROGRAM);
  }

  /** By type; {@link PurityTest} goes by what is called. */
  @Test
  void computingKnowsNoFileStreamClockOrRandomSource() {
    noClasses()
        .that()
        .resideInAnyPackage(Purity.PACKAGES)
        .should()
        .dependOnClassesThat(
            resideInAnyPackage(
                    "java.io..",
                    "java.nio.file..",
                    "java.nio.channels..",
                    "java.net..",
                    "java.security..")
                .and(not(type(IOException.class)))
                .or(type(Random.class))
                .or(type(Clock.class)))
        .check(PROGRAM);
  }

  @Test
  void useCasesNeitherPrintNorAskNorLookAtTheSystem() {
    noClasses()
        .that()
        .resideInAPackage("caryatid.usecase..")
        .should()
        .dependOnClassesThat(
            type(System.class)
                .or(type(Console.class))
                .or(type(PrintStream.class))
                .or(type(PrintWriter.class))
                .or(type(Scanner.class)))
        .check(PROGRAM);
  }
}
