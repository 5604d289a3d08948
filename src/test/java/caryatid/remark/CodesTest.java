package caryatid.remark;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Codes are written to files and must be understood for ever. The list holds every code there ever
 * was; {@code -Dapprove=true} adds new ones to it and never takes one away.
 */
class CodesTest {
  private static final Path LIST = Path.of("src/test/resources/caryatid/remark/codes.txt");

  @Test
  void noTwoTermsShareACode() {
    Set<String> seen = new HashSet<>();
    assertThat(codes().filter(code -> !seen.add(code))).isEmpty();
  }

  @Test
  void everyCodeThereEverWasIsStillKnown() throws IOException {
    assertThat(Files.readAllLines(LIST)).isNotEmpty().isSubsetOf(codes().toList());
  }

  @Test
  void newCodesAreListedFromTheirFirstDay() throws IOException {
    List<String> listed = Files.readAllLines(LIST);
    if (Boolean.getBoolean("approve")) {
      Set<String> all = new TreeSet<>(listed);
      codes().forEach(all::add);
      Files.write(LIST, all);
      listed = List.copyOf(all);
    }
    List<String> known = listed;
    assertThat(codes().filter(code -> !known.contains(code)))
        .as("new codes; run this test with -Dapprove=true, which adds them to the list")
        .isEmpty();
  }

  private static Stream<String> codes() {
    return new ClassFileImporter()
        .importUrl(Topic.class.getProtectionDomain().getCodeSource().getLocation()).stream()
            .filter(type -> type.isEnum() && type.isAssignableTo(Coded.class))
            .map(JavaClass::reflect)
            .flatMap(type -> Arrays.stream(type.getEnumConstants()))
            .map(constant -> ((Coded) constant).code());
  }
}
