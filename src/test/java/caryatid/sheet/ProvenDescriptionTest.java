package caryatid.sheet;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateAccuracy;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.PlateProof;
import caryatid.recording.model.PlateProof.MeasuredValue;
import caryatid.recording.model.PlateProof.Shown;
import caryatid.recording.model.Provenance;
import caryatid.remark.BadInput;
import caryatid.wording.Wording;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class ProvenDescriptionTest {
  private static final String PLAIN =
      "plate-description: 1\nname: plate\naccuracy: {cop-mm: 3, level-deg: 0.2, force-percent: 1}\n";

  private static final PlateProof PROOF =
      new PlateProof(
          OffsetDateTime.parse("2026-11-28T09:00+01:00"),
          "A.B.",
          20,
          80,
          new PlateAccuracy(1.25, 0, 0.004, 0).knownTo(new PlateAccuracy.Degrees(5.5, 4, 8, 10)),
          List.of(
              new Shown(
                  "plate 1",
                  5,
                  new MeasuredValue(1.001, 0.004),
                  new MeasuredValue(0.998, 0.003),
                  new MeasuredValue(-0.2, 0.3),
                  new MeasuredValue(0.5, 1.5),
                  new MeasuredValue(-1, 1.25))),
          List.of(new Provenance("w1.csv", 1234, "0a".repeat(64))));

  private static PlateDescription read(byte[] yaml) throws BadInput {
    return DescriptionReader.read(NamedBytes.of("plate.yaml", yaml));
  }

  private static byte[] proven() {
    return ProvenDescription.with(PLAIN.getBytes(UTF_8), PROOF);
  }

  @Test
  void aProofIsReadAsItWasWritten() throws BadInput {
    assertThat(read(proven()).proof()).contains(PROOF);
  }

  @Test
  void whatWasMeasuredCountsInPlaceOfWhatIsStated() throws BadInput {
    assertThat(read(PLAIN.getBytes(UTF_8)).known().copMm()).isEqualTo(3);
    assertThat(read(proven()).known()).isEqualTo(PROOF.accuracy());
  }

  @Test
  void aProofOfAnotherDescriptionIsRefused() {
    String other = new String(proven(), UTF_8).replace("name: plate\n", "name: other\n");
    BadInput refused = catchThrowableOfType(BadInput.class, () -> read(other.getBytes(UTF_8)));
    assertThat(refused.problems().stream().map(Wording.in(Locale.ENGLISH)::say))
        .containsExactly(
            "plate.yaml line 7, column 23: the description was changed after it was proven, so the"
                + " proof no longer applies. Prove it again, or delete `proof` and what is below"
                + " it.");
  }

  @Test
  void otherLineEndsAreTheSameDescription() throws BadInput {
    String windows = new String(proven(), UTF_8).replace("\n", "\r\n");
    assertThat(read(windows.getBytes(UTF_8)).proof()).contains(PROOF);
  }

  @Test
  void aNewProofTakesThePlaceOfTheOldOne() {
    assertThat(ProvenDescription.with(proven(), PROOF)).isEqualTo(proven());
  }

  @Test
  void provenOrNotItIsTheSameDescription() {
    String text = new String(proven(), UTF_8);
    assertThat(ProvenDescription.isOf(text, PLAIN)).isTrue();
    assertThat(ProvenDescription.isOf(text, PLAIN.replace("3", "4"))).isFalse();
  }
}
