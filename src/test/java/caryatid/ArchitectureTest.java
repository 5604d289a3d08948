package caryatid;

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
import java.time.Clock;
import java.util.Arrays;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Holds the table of packages: what each may use. The same table stands in DEVELOPERS.md. */
class ArchitectureTest {
  private static final JavaClasses PROGRAM =
      new ClassFileImporter()
          .importUrl(Topic.class.getProtectionDomain().getCodeSource().getLocation());

  /** A package, the project's packages it may use, and the libraries only such packages may use. */
  private record Row(String name, String uses, String libraries) {}

  private static final Row[] TABLE = {
    new Row("remark", "", ""),
    new Row("geometry", "remark", ""),
    new Row("uncertainty", "", "org.apache.commons.statistics.. org.apache.commons.math3.."),
    new Row("recording", "geometry remark", "org.apache.commons.csv.. ch.randelshofer.."),
    new Row(
        "standing",
        "recording geometry uncertainty remark",
        "org.apache.commons.statistics.. org.apache.commons.math3.."),
    new Row("loadline", "standing geometry uncertainty remark", ""),
    new Row(
        "sheet",
        "recording standing loadline geometry uncertainty remark",
        "org.snakeyaml.engine.."),
    new Row(
        "alignment",
        "sheet recording standing loadline geometry uncertainty remark",
        "org.apache.commons.math3.."),
    new Row("entry", "alignment sheet recording standing loadline geometry uncertainty remark", ""),
    new Row(
        "format",
        "entry alignment sheet recording standing loadline geometry uncertainty remark",
        "com.fasterxml.jackson.."),
    new Row(
        "fitting",
        "format entry alignment sheet recording standing loadline geometry uncertainty remark",
        "io.ocfl.. com.fasterxml.jackson.."),
    new Row(
        "wording",
        "fitting entry alignment sheet recording standing loadline geometry uncertainty remark",
        ""),
    new Row(
        "chart",
        "wording fitting entry alignment sheet recording standing loadline geometry uncertainty remark",
        "org.jfree.. java.awt.."),
    new Row(
        "report",
        "chart wording fitting format entry alignment sheet recording standing loadline geometry uncertainty remark",
        "com.fasterxml.jackson.. org.apache.pdfbox.. org.apache.xmpbox.. de.rototor.."
            + " org.apache.batik.. java.awt.. javax.imageio.. javax.xml.. org.w3c.dom.."),
    new Row(
        "usecase",
        "format fitting entry report chart wording alignment sheet recording standing loadline geometry"
            + " uncertainty remark",
        ""),
    new Row(
        "cli",
        "usecase format fitting entry report chart wording alignment sheet recording standing loadline"
            + " geometry uncertainty remark",
        "picocli..")
  };

  @TestFactory
  Stream<DynamicTest> eachPackageUsesOnlyWhatItMay() {
    return Arrays.stream(TABLE).map(row -> DynamicTest.dynamicTest(row.name(), () -> check(row)));
  }

  private static void check(Row row) {
    Stream<String> own =
        Stream.concat(Stream.of(row.name()), words(row.uses()))
            .map(name -> "caryatid." + name + "..");
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
        .resideInAPackage("caryatid." + row.name() + "..")
        .should()
        .onlyDependOnClassesThat(resideInAnyPackage(allowed).or(primitiveOrArray()))
        .allowEmptyShould(true)
        .check(PROGRAM);
  }

  private static DescribedPredicate<JavaClass> primitiveOrArray() {
    return DescribedPredicate.describe(
        "primitives and arrays", c -> c.isPrimitive() || c.isArray());
  }

  private static Stream<String> words(String list) {
    return Arrays.stream(list.split(" ")).filter(word -> !word.isEmpty());
  }

  @Test
  void noPackageIsLeftOutOfTheTable() {
    String[] listed =
        Arrays.stream(TABLE).map(row -> "caryatid." + row.name() + "..").toArray(String[]::new);
    noClasses().should().resideOutsideOfPackages(listed).check(PROGRAM);
  }

  @Test
  void packagesFormNoCycle() {
    slices().matching("caryatid.(*)..").should().beFreeOfCycles().check(PROGRAM);
  }

  @Test
  void computingTouchesNoFileClockLocaleOrRandomSource() {
    noClasses()
        .that()
        .resideInAnyPackage(
            "caryatid.geometry..",
            "caryatid.uncertainty..",
            "caryatid.standing..",
            "caryatid.loadline..",
            "caryatid.alignment..")
        .should()
        .dependOnClassesThat(
            resideInAnyPackage("java.io..", "java.nio..", "java.net..", "java.security..")
                .or(type(Locale.class))
                .or(type(Random.class))
                .or(type(Clock.class)))
        .check(PROGRAM);
  }
}
