package caryatid.usecase.stand;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.recording.model.NamedBytes;
import caryatid.sheet.TrialSheetReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EarlierFieldsTest {
  @Test
  void aMomentOfReadingIsOfItsRecordingAndDoesNotReturn() throws Exception {
    String sheet = Files.readString(Path.of("sample-recordings/k7/barefoot.yaml"));
    String read = sheet.replaceFirst("(    up-mm: .*\n)", "$1    read-at-s: [4, 9]\n");
    assertThat(read).contains("read-at-s");
    assertThat(fields(read)).isEqualTo(fields(sheet));
  }

  private static Map<String, String> fields(String sheet) throws Exception {
    NamedBytes bytes = NamedBytes.of("sheet.yaml", sheet.getBytes(StandardCharsets.UTF_8));
    return EarlierFields.of(TrialSheetReader.read(bytes, name -> Optional.empty()));
  }

  @ParameterizedTest
  @CsvSource({"-8, -8", "0, 0", "12.5, 12.5"})
  void aHeelReturnsAsItWasTyped(String typed, String returned) throws Exception {
    String sheet =
        Files.readString(Path.of("sample-recordings/k7/barefoot.yaml"))
            .replace(
                "{worn: barefoot, heel-height-mm: 0}",
                "{worn: shoe, heel-height-mm: " + typed + "}");
    assertThat(sheet).contains("worn: shoe");
    assertThat(fields(sheet))
        .containsEntry(StandFields.HEEL, returned)
        .containsEntry(StandFields.WORN, "shoe");
  }
}
