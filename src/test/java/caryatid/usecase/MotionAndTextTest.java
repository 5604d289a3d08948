package caryatid.usecase;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import caryatid.alignment.Result;
import caryatid.format.ResultJson;
import caryatid.recording.c3d.LaboratoryStand;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The same stand as C3D and as CSV gives the same result. */
class MotionAndTextTest {
  private static Result check(NamedBytes recording, String description) throws BadInput {
    Inputs inputs =
        new Inputs(
            List.of(recording),
            LaboratoryStand.named("sheet.yaml", LaboratoryStand.SHEET),
            Optional.of(LaboratoryStand.named("plates.yaml", description)),
            name -> Optional.empty());
    return Check.run(inputs, OffsetDateTime.parse("2026-03-04T11:00+01:00")).result();
  }

  @Test
  void theSameStandAsC3dAndAsCsvGivesTheSameResult() throws BadInput {
    Result motion =
        check(NamedBytes.of("stand.c3d", LaboratoryStand.c3d()), LaboratoryStand.DESCRIPTION);
    Result text =
        check(
            NamedBytes.of("stand.csv", LaboratoryStand.csv()), LaboratoryStand.DESCRIPTION_OF_TEXT);
    assertThat(motion.state().findings()).hasSize(1);
    assertThat(written(motion)).isEqualTo(written(text));
  }

  /** A result but for the names, lengths and digests of the recording and its description. */
  private static String written(Result result) {
    return new String(ResultJson.write(result), UTF_8)
        .replaceAll("(?s)\"(recording|description)\" : \\{\\s+\"name\".*?\\}", "\"$1\" : differs");
  }
}
