package caryatid.clinic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import caryatid.wording.Wording;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A clinic's file that was edited by hand. */
class ClinicFileTest {
  private static final String MEASURED =
      """
      {
        "clinic" : 1,
        "measured" : [ {
          "kind" : "KIND",
          "by" : "AB",
          "day" : "2026-11-28",
          "value" : VALUE,
          "degrees-of-freedom" : DEGREES
        } ]
      }
      """;

  @TempDir private Path folder;

  private Clinic read(String kind, String value, String degrees) throws BadInput, IOException {
    Path file = folder.resolve("clinic/clinic.json");
    Files.createDirectories(file.getParent());
    Files.writeString(
        file, MEASURED.replace("KIND", kind).replace("VALUE", value).replace("DEGREES", degrees));
    return new ClinicFile(folder).read();
  }

  @Test
  void aPossibleNumberIsTaken() throws BadInput, IOException {
    assertThat(read("hand", "1.5", "4").doubts()).hasSize(1);
    assertThat(read("turn", "45", "1").doubts()).hasSize(1);
    assertThat(read("hand", "100", "1000000").doubts()).hasSize(1);
  }

  @ParameterizedTest
  @CsvSource({
    "hand, 1.5, 0, measured[1].degrees-of-freedom: expected a number from 1 to 1000000; found 0",
    "hand, 1.5, -4, measured[1].degrees-of-freedom: expected a number from 1 to 1000000; found -4",
    "hand, 1.5, 1e9, measured[1].degrees-of-freedom: expected a number from 1 to 1000000; found 1e9",
    "hand, -1, 4, measured[1].value: expected a number from 0 to 100; found -1",
    "hand, 101, 4, measured[1].value: expected a number from 0 to 100; found 101",
    "turn, 46, 4, measured[1].value: expected a number from 0 to 45; found 46"
  })
  void anImpossibleNumberIsRefusedWithFileAndKey(
      String kind, String value, String degrees, String said) {
    assertThatThrownBy(() -> read(kind, value, degrees))
        .isInstanceOfSatisfying(
            BadInput.class,
            bad -> {
              Problem problem = bad.problems().get(0);
              assertThat(Wording.in(Locale.ENGLISH).say(problem).replace(", found", "; found"))
                  .startsWith(folder.resolve("clinic/clinic.json").toString())
                  .contains(said);
            });
  }
}
