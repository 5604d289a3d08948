package caryatid;

import static java.util.stream.Collectors.toSet;
import static org.assertj.core.api.Assertions.assertThat;

import caryatid.remark.Topic;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Limits that keep the main code easy to survey: sizes, names, and what is public. */
class StructureTest {
  private static final Path SOURCE = Path.of("src/main/java");
  private static final int MOST_FILES = 40;
  private static final int MOST_LINES = 300;
  private static final int MOST_LINES_OF_A_METHOD = 40;

  /** Reads the rows of a recording in one loop, for speed. */
  private static final String ROW_READER = "FastRow.read";

  private static final Pattern NO_CODE =
      Pattern.compile(
          "\"(?:[^\"\\\\\n]++|\\\\.)*+\"|'(?:[^'\\\\\n]++|\\\\.)++'|//[^\n]*+|/\\*.*?\\*/",
          Pattern.DOTALL);

  private static final Pattern TYPE =
      Pattern.compile(
          "(?m)^( *)(?:public |protected |private |static |final |abstract |sealed |non-sealed )*"
              + "(?:class|record|interface|@interface|enum) (\\w+)");

  /** A line that may begin a method or constructor; the formatter's indents tell it from others. */
  private static final Pattern BEGINNING =
      Pattern.compile(
          "(?m)^((?: "
              + " )+)(?!if|for|while|switch|try|catch|synchronized|return|throw|new|else|super|this)((?:[\\w<>\\[\\],"
              + " .?@&]+ )?(\\w+)\\()");

  @Test
  void noPackageHasMoreThan40Files() {
    Map<Path, Long> files =
        sources().stream()
            .collect(Collectors.groupingBy(Path::getParent, TreeMap::new, Collectors.counting()));
    files.values().removeIf(n -> n <= MOST_FILES);
    assertThat(files).as("packages with too many files; split them or merge classes").isEmpty();
  }

  @Test
  void noFileHasMoreThan300Lines() {
    Map<Path, Integer> lines = new TreeMap<>();
    sources().forEach(file -> lines.put(file, text(file).split("\n").length));
    assertThat(lines).as("source files").isNotEmpty();
    lines.values().removeIf(n -> n <= MOST_LINES);
    assertThat(lines).as("files with too many lines; divide their work").isEmpty();
  }

  @Test
  void noMethodHasMoreThan40LinesButTheOneThatReadsRows() {
    List<String> found = new ArrayList<>();
    for (Path file : sources()) {
      found.addAll(longMethods(simpleName(file), text(file)));
    }
    assertThat(found)
        .as("methods with too many lines, and how many")
        .singleElement()
        .asString()
        .startsWith(ROW_READER + " ");
  }

  @Test
  void aMethodOf41LinesIsFoundAndOneOf40IsNot() {
    String before = "class A {\n  int a(\n      int b) {\n";
    String after = "    return 1;\n  }\n\n  private int c = 1;\n}\n";
    assertThat(longMethods("A", before + "    b();\n".repeat(36) + after)).isEmpty();
    assertThat(longMethods("A", before + "    b();\n".repeat(37) + after))
        .containsExactly("A.a 41");
  }

  private static List<String> longMethods(String type, String source) {
    List<String> found = new ArrayList<>();
    String code = withoutTexts(source);
    Matcher beginning = BEGINNING.matcher(code);
    while (beginning.find()) {
      int closing = closing(code, beginning.end() - 1);
      if (code.substring(closing + 1).stripLeading().matches("(?s)(throws [\\w., \n]+)?\\{.*")
          && !beginning.group(2).matches("(.* )?(class|record|enum|interface|new) .*")) {
        int end = code.indexOf("\n" + beginning.group(1) + "}", closing);
        boolean empty = code.startsWith("{}", code.indexOf('{', closing));
        long lines = empty ? 1 : code.substring(beginning.start(), end + 1).lines().count() + 1;
        if (lines > MOST_LINES_OF_A_METHOD) {
          found.add(type + "." + beginning.group(3) + " " + lines);
        }
      }
    }
    return found;
  }

  /** Where the parenthesis that opens at an index closes. */
  private static int closing(String code, int opening) {
    int open = 0;
    for (int i = opening; i < code.length(); i++) {
      open += code.charAt(i) == '(' ? 1 : code.charAt(i) == ')' ? -1 : 0;
      if (open == 0) {
        return i;
      }
    }
    return code.length() - 1;
  }

  /** But for variants, which are read with the name of the sealed interface around them. */
  @Test
  void noTwoTypesHaveOneName() {
    Map<String, List<String>> places = new TreeMap<>();
    Map<String, List<String>> variants = new TreeMap<>();
    Set<String> topLevel = new HashSet<>();
    for (Path file : sources()) {
      String code = withoutTexts(text(file));
      Set<String> declared = TYPE.matcher(code).results().map(m -> m.group(2)).collect(toSet());
      for (MatchResult type : TYPE.matcher(code).results().toList()) {
        boolean variant = isVariant(code, type, declared);
        (variant ? variants : places)
            .computeIfAbsent(type.group(2), n -> new ArrayList<>())
            .add(file.toString());
        if (type.group(1).isEmpty()) {
          topLevel.add(type.group(2));
        }
      }
    }
    assertThat(topLevel).as("top-level types").isNotEmpty();
    variants.keySet().retainAll(topLevel);
    variants.forEach((name, files) -> places.get(name).addAll(files));
    places.values().removeIf(files -> files.size() < 2);
    assertThat(places).as("names of several types, and where they are declared").isEmpty();
  }

  private static boolean isVariant(String code, MatchResult type, Set<String> declared) {
    String header = code.substring(type.end(), code.indexOf('{', type.end()));
    return !type.group(1).isEmpty()
        && declared.stream().anyMatch(d -> header.matches("(?s).*\\bimplements\\s+" + d + "\\b.*"));
  }

  /** By the class files, and by imports for classes of which only constants are used. */
  @Test
  void eachPublicTypeIsUsedByMainCodeOutsideItsPackage() {
    Set<String> imported = new HashSet<>();
    Pattern line = Pattern.compile("(?m)^import (?:static )?(caryatid\\.[a-z.]+\\.[A-Z]\\w*)");
    sources().forEach(f -> line.matcher(text(f)).results().forEach(m -> imported.add(m.group(1))));
    Set<String> unused = new TreeSet<>();
    for (JavaClass type :
        new ClassFileImporter()
            .importUrl(Topic.class.getProtectionDomain().getCodeSource().getLocation())) {
      if (type.getModifiers().contains(JavaModifier.PUBLIC)
          && !type.isNestedClass()
          && !imported.contains(type.getName())
          && type.getDirectDependenciesToSelf().stream()
              .allMatch(d -> d.getOriginClass().getPackage().equals(type.getPackage()))) {
        unused.add(type.getName());
      }
    }
    assertThat(unused)
        .as("public types that only their own package uses; make them package-private")
        .isEmpty();
  }

  private static List<Path> sources() {
    try (Stream<Path> files = Files.walk(SOURCE)) {
      return files.filter(f -> f.toString().endsWith(".java")).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String simpleName(Path file) {
    return file.getFileName().toString().replace(".java", "");
  }

  /** The code with its lines, but without comments and what stands in quotes. */
  private static String withoutTexts(String source) {
    return NO_CODE
        .matcher(source)
        .replaceAll(
            m -> "\"\"" + "\n".repeat((int) m.group().chars().filter(c -> c == '\n').count()));
  }
}
