package caryatid.entry;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class KeptFileTest {
  @ParameterizedTest
  @CsvSource({
    "RECORDING, walk 3.csv, recording-walk_3.csv",
    "RECORDING, /home/ab/walk.csv, recording-walk.csv",
    "RECORDING, C:\\plates\\walk.csv, recording-walk.csv",
    "RESULT, result.json, result.json",
    "SHEET, sheet-2.yaml, sheet-2.yaml",
    "EARLIER_SHEET, sheet-1.yaml, earlier-sheet-sheet-1.yaml",
    "OTHER, ..., other-",
    "OTHER, nul.txt, other-nul.txt",
    "RECORDING, COM1, recording-COM1",
    "RECORDING, a:b?.csv, recording-a_b_.csv",
    "OTHER, .profile, other-profile"
  })
  void aKeptFilesNameSaysWhatItIsAndWhatItWasCalled(
      KeptFile.Role is, String original, String name) {
    assertThat(KeptFile.nameFor(is, original)).isEqualTo(name);
    assertThat(KeptFile.isName(name)).isTrue();
  }

  @Test
  void aNameThatOnlyBeginsLikeADeviceIsOne() {
    assertThat(KeptFile.isName("console.csv")).isTrue();
    assertThat(KeptFile.isName("com10")).isTrue();
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 80, 99, 100, 101, 300})
  void aLongNameIsCutInItsMiddle(int length) {
    String name = KeptFile.nameFor(KeptFile.Role.OTHER, "a".repeat(length) + ".csv");
    assertThat(KeptFile.isName(name)).isTrue();
    assertThat(name).endsWith(".csv");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        ".",
        "..",
        "a/b",
        "a.",
        ".a",
        "entry.json",
        "a b",
        "nul",
        "Con.csv",
        "lpt1.a.b"
      })
  void whatNotEveryFileSystemTakesIsNoName(String name) {
    assertThat(KeptFile.isName(name)).isFalse();
  }
}
