package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.alignment.Result;
import caryatid.alignment.StateOffset;
import caryatid.format.ResultJson;
import caryatid.geometry.Plane;
import caryatid.loadline.Finding;
import caryatid.loadline.LoadLineMethod;
import caryatid.loadline.Offset;
import caryatid.remark.BadInput;
import caryatid.standing.LoadLineOwner;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The line that is judged is the prosthetic foot's own, never the whole body's. */
class WhichFootTest {
  private static final Path M4 = Path.of("sample-recordings/m4");

  private static Result barefoot() throws BadInput {
    Run run =
        Run.caryatid(
            "check",
            M4.resolve("barefoot.txt").toString(),
            "--trial",
            M4.resolve("barefoot.yaml").toString(),
            "--plate",
            M4.resolve("plates.yaml").toString(),
            "--json");
    assertThat(run.code()).as(run.err()).isZero();
    return ResultJson.read(run.out().getBytes(StandardCharsets.UTF_8));
  }

  private static Optional<Offset> wholeBody(Result result, Finding finding) {
    return result.state().offsets().stream()
        .map(StateOffset::offset)
        .filter(o -> o.of() == LoadLineOwner.WHOLE_BODY && o.kind() == LoadLineMethod.VERTICAL)
        .filter(o -> o.plane() == finding.offset().plane())
        .filter(o -> o.landmark().equals(finding.offset().landmark()))
        .findFirst();
  }

  /**
   * Validation against the generator's known truth (sample-recordings/truth-offsets.csv): with a
   * plate under each foot, the prosthetic foot's line lies within the tolerance in both planes, and
   * the whole body's line in neither.
   */
  @Test
  void theWholeBodysLineWouldHaveGivenAnotherResult() throws BadInput {
    Result result = barefoot();
    List<Finding> findings = result.state().findings();
    assertThat(findings)
        .extracting(f -> f.offset().plane())
        .contains(Plane.FRONTAL, Plane.SAGITTAL);
    for (Finding finding : findings) {
      assertThat(finding.offset().of()).isEqualTo(LoadLineOwner.LEFT_FOOT);
      assertThat(inside(finding, finding.offset())).isTrue();
      Optional<Offset> other = wholeBody(result, finding);
      assertThat(other.isPresent()).isEqualTo(finding.offset().plane() == Plane.SAGITTAL);
      other.ifPresent(offset -> assertThat(inside(finding, offset)).isFalse());
    }
  }

  private static boolean inside(Finding finding, Offset offset) {
    double mm = offset.mm().value();
    return mm >= finding.target().lowestMm() && mm <= finding.target().highestMm();
  }
}
