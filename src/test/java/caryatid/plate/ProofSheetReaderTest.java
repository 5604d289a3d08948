package caryatid.plate;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import caryatid.geometry.Side;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.wording.Wording;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class ProofSheetReaderTest {
  private static final String WHOLE =
      """
      plate-proof: 1
      at: 2026-11-28T09:00+01:00
      by: AB
      place-mm: 1
      weight-percent: 0.5
      body-load-kg: 90
      level-deg: [0.1, -0.1]
      weights:
        - {recording: w1.csv, right-mm: -150, anterior-mm: 200, kg: 20}
      person: {standing: s.csv, leaning-forward: f.csv, one-foot: o.csv, foot: left, body-mass-kg: 71}
      """;

  private static ProofSheet read(String text) throws BadInput {
    return ProofSheetReader.read(NamedBytes.of("proof.yaml", text.getBytes(UTF_8)));
  }

  @Test
  void everyKeyIsRead() throws BadInput {
    ProofSheet sheet = read(WHOLE);
    assertThat(sheet.by()).isEqualTo("AB");
    assertThat(sheet.at()).isEqualTo("2026-11-28T09:00+01:00");
    assertThat(sheet.doubts())
        .isEqualTo(
            new ProofDoubts(1, 0.005, 90, List.of(Math.toRadians(0.1), Math.toRadians(-0.1))));
    assertThat(sheet.weights())
        .containsExactly(new ProofSheet.PlacedWeight("w1.csv", -150, 200, 20));
    assertThat(sheet.person())
        .isEqualTo(
            new ProofSheet.Person("s.csv", "f.csv", "o.csv", Side.LEFT, OptionalDouble.of(71)));
    assertThat(sheet.recordings()).containsExactly("w1.csv", "s.csv", "f.csv", "o.csv");
  }

  @Test
  void whatMayBeLeftOutHasItsUsualValue() throws BadInput {
    String short_ =
        WHOLE
            .replace("weight-percent: 0.5\n", "")
            .replace("body-load-kg: 90\n", "")
            .replace("level-deg: [0.1, -0.1]\n", "")
            .replace(", body-mass-kg: 71", "");
    ProofSheet sheet = read(short_);
    assertThat(sheet.doubts()).isEqualTo(new ProofDoubts(1, 0.002, 80, List.of()));
    assertThat(sheet.person().kg()).isEmpty();
  }

  @Test
  void everyProblemIsToldWithItsPlace() {
    String wrong = WHOLE.replace("kg: 20", "kg: 2").replace("foot: left", "foot: both");
    List<String> said =
        org.assertj.core.api.Assertions.catchThrowableOfType(BadInput.class, () -> read(wrong))
            .problems()
            .stream()
            .map(Wording.in(Locale.ENGLISH)::say)
            .toList();
    assertThat(said)
        .containsExactly(
            "proof.yaml line 9, column 63: `kg`: expected a number from 3 to 300, found 2. Correct it;"
                + " the key says its unit.",
            "proof.yaml line 10, column 74: `foot`: expected one of: left, right; found 'both'. Write"
                + " one of these words.");
  }
}
