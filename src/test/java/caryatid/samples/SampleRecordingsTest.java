package caryatid.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Regression: the sample recordings are what the generator makes, byte by byte. */
class SampleRecordingsTest {
  private static final Path FOLDER = Path.of("sample-recordings");

  @TestFactory
  Stream<DynamicTest> the_generator_makes_each_file_again() {
    Map<String, byte[]> files = SampleRecordings.files();
    return files.entrySet().stream()
        .map(
            file ->
                DynamicTest.dynamicTest(
                    file.getKey(),
                    () ->
                        assertThat(Files.readAllBytes(FOLDER.resolve(file.getKey())))
                            .isEqualTo(file.getValue())));
  }

  @Test
  void no_other_recording_lies_beside_them() throws IOException {
    try (Stream<Path> found = Files.walk(FOLDER)) {
      Set<String> names =
          found
              .filter(Files::isRegularFile)
              .map(path -> FOLDER.relativize(path).toString().replace('\\', '/'))
              .filter(name -> name.endsWith(".csv") || name.endsWith(".txt"))
              .collect(Collectors.toSet());
      assertThat(names).isEqualTo(SampleRecordings.files().keySet());
    }
  }
}
