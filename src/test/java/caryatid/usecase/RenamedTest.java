package caryatid.usecase;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;

import caryatid.demo.Numbered;
import caryatid.format.AnyResult;
import caryatid.format.EntryJson;
import caryatid.format.ResultJson;
import caryatid.loadline.Offset;
import caryatid.loadline.Verdict;
import java.io.IOException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A program in which every class, component and constant has another name reads what this one wrote
 * and writes it to the same byte.
 */
class RenamedTest {
  private static final Path ENTRIES = Path.of("src/test/resources/caryatid/frozen/v2/entries");

  private static Renamed renamed;

  @BeforeAll
  static void rename() {
    renamed = new Renamed();
  }

  private static Object call(Class<?> of, String method, Object... arguments) throws Exception {
    Method found =
        Arrays.stream(renamed.of(of).getDeclaredMethods())
            .filter(m -> m.getName().equals(method))
            .filter(m -> m.getParameterCount() == arguments.length)
            .findFirst()
            .orElseThrow();
    found.setAccessible(true);
    return found.invoke(null, arguments);
  }

  @Test
  void theOtherProgramHasOtherNames() throws Exception {
    assertThat(renamed.of(Offset.class).getSimpleName()).isEqualTo("OffsetLater");
    assertThat(renamed.of(Offset.class).getRecordComponents())
        .extracting(RecordComponent::getName)
        .as("an interface asks for the first")
        .containsExactly("at", "ofLater", "kindLater", "mmLater");
    assertThat(renamed.of(Verdict.class).getEnumConstants())
        .extracting(Object::toString)
        .containsExactly(
            "WITHINLater", "INSIDE_TOO_CLOSELater", "OUTSIDE_TOO_CLOSELater", "OUTSIDELater");
    assertThat(call(Numbered.class, "result").toString())
        .startsWith("ResultLater[methodLater=2, programLater=");
  }

  @Test
  void everythingIsWrittenToTheSameByte(@TempDir Path folder) throws Exception {
    Map<String, byte[]> here = Everything.in(folder.resolve("here"), Locale.GERMAN);
    @SuppressWarnings("unchecked") // what the method of the same name gives
    Map<String, byte[]> there =
        (Map<String, byte[]>) call(Everything.class, "in", folder.resolve("there"), Locale.GERMAN);
    assertThat(here.keySet()).hasSizeGreaterThan(20).anyMatch(name -> name.endsWith("entry.json"));
    assertThat(there.keySet()).isEqualTo(here.keySet());
    here.forEach(
        (name, bytes) -> assertThat(text(there.get(name))).as(name).isEqualTo(text(bytes)));
  }

  @Test
  void aResultIsWrittenToTheSameByte() throws Exception {
    Object result = call(Numbered.class, "result");
    assertThat(text(call(ResultJson.class, "write", result)))
        .isEqualTo(text(ResultJson.write(Numbered.result())));
  }

  @Test
  void anyResultIsReadAndWrittenToTheSameByte() throws Exception {
    for (int seed = 0; seed < 100; seed++) {
      byte[] json = ResultJson.write(new AnyResult(seed).next());
      Object read = call(ResultJson.class, "read", json);
      assertThat(text(call(ResultJson.class, "write", read))).isEqualTo(text(json));
    }
  }

  @ParameterizedTest
  @MethodSource("entries")
  void anEntryIsReadAndWrittenToTheSameByte(Path file) throws Exception {
    byte[] json = Files.readAllBytes(file);
    Object read = call(EntryJson.class, "own", json, "entry");
    assertThat(text(call(EntryJson.class, "write", read))).isEqualTo(text(json));
  }

  static List<Path> entries() throws IOException {
    try (Stream<Path> files = Files.list(ENTRIES)) {
      return files.sorted().toList();
    }
  }

  private static String text(Object json) {
    return new String((byte[]) json, ISO_8859_1);
  }
}
