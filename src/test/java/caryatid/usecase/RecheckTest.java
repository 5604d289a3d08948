package caryatid.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.Result;
import caryatid.alignment.Stand;
import caryatid.format.ResultDifference;
import caryatid.format.ResultJson;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.Provenance;
import caryatid.recording.model.Recording;
import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import caryatid.report.Report;
import caryatid.report.pages.Paper;
import caryatid.report.pdf.Attachments;
import caryatid.report.pdf.Attachments.AttachedFile;
import caryatid.report.pdf.Attachments.AttachmentRole;
import caryatid.report.pdf.ReportReader;
import caryatid.wording.Wording;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A sample report, computed again by the method that made it, a later and an earlier one. */
class RecheckTest {
  private static final int LATER = Result.METHOD + 1;

  private static byte[] pdf;
  private static Attachments inside;
  private static Result kept;
  private static List<Recording> recordings;

  @BeforeAll
  static void readTheSample() throws IOException, BadInput {
    pdf = Files.readAllBytes(Path.of("reports/k7-shoe.pdf"));
    inside = ReportReader.read("k7-shoe.pdf", pdf);
    kept = ResultJson.read(file(AttachmentRole.RESULT).bytes());
    recordings = Check.withOpenQuestions(new ReportInputs(inside).inputs(kept)).recordings();
  }

  private static AttachedFile file(AttachmentRole role) {
    return inside.files().stream().filter(f -> f.role() == role).findFirst().orElseThrow();
  }

  /** The report with one of the files inside changed. */
  private static byte[] with(AttachmentRole role, UnaryOperator<byte[]> change) {
    List<AttachedFile> files =
        inside.files().stream()
            .map(
                f ->
                    f.role() == role
                        ? new AttachedFile(role, f.name(), change.apply(f.bytes()))
                        : f)
            .toList();
    return printed(kept, files);
  }

  private static byte[] printed(Result result, List<AttachedFile> files) {
    return Report.pdf(
        result, recordings, new Attachments(files), Wording.in(Locale.ENGLISH), Paper.A4);
  }

  private static byte[] with(Result result) {
    return printed(
        result,
        inside.files().stream()
            .map(
                f ->
                    f.role() == AttachmentRole.RESULT
                        ? new AttachedFile(f.role(), f.name(), ResultJson.write(result))
                        : f)
            .toList());
  }

  private static byte[] replaced(byte[] bytes, String before, String now) {
    String text = new String(bytes, StandardCharsets.UTF_8);
    assertThat(text).contains(before);
    return text.replaceFirst(java.util.regex.Pattern.quote(before), now)
        .getBytes(StandardCharsets.UTF_8);
  }

  @Test
  void theSameMethodReproducesTheResult() throws BadInput {
    assertThat(Recheck.run("k7-shoe.pdf", pdf))
        .isEqualTo(new RecheckResult.Reproduced(kept, kept.program()));
  }

  @Test
  void theSameMethodOfAnotherVersionReproducesIt() throws BadInput {
    byte[] other = with(new Result(kept.method(), "Caryatid 0.0.9", kept.state()));
    assertThat(Recheck.run("k7-shoe.pdf", other))
        .isEqualTo(new RecheckResult.Reproduced(kept, "Caryatid 0.0.9"));
  }

  @Test
  void aNumberThatDiffersInItsLastDigitIsAltered() throws BadInput {
    double was = kept.state().findings().get(0).probabilityWithin();
    String path = "\"probability-within\" : ";
    byte[] altered =
        with(
            AttachmentRole.RESULT,
            bytes ->
                replaced(
                    bytes,
                    path + caryatid.format.JsonNumber.of(was),
                    path + caryatid.format.JsonNumber.of(Math.nextUp(was))));
    assertThat(Recheck.run("k7-shoe.pdf", altered))
        .isEqualTo(
            new RecheckResult.Altered(
                List.of(
                    new ResultDifference(
                        "state.findings[0].probability-within",
                        Double.toString(Math.nextUp(was)),
                        Double.toString(was))),
                List.of()));
  }

  @Test
  void whatAnOlderMethodFoundStandsBesideTodaysNumbers() throws BadInput {
    assertThat(Recheck.run("k7-shoe.pdf", pdf, LATER))
        .isEqualTo(new RecheckResult.Older(kept, new RecheckResult.Today.Same()));
  }

  @Test
  void anOlderMethodsResultIsAlteredIfAFileInsideIsNotTheOneItWasFoundIn() throws BadInput {
    byte[] altered = with(AttachmentRole.TRIAL_SHEET, bytes -> replaced(bytes, "K7", "K8"));
    assertThat(Recheck.run("k7-shoe.pdf", altered, LATER))
        .isInstanceOfSatisfying(
            RecheckResult.Altered.class,
            a ->
                assertThat(a.differences())
                    .singleElement()
                    .satisfies(d -> assertThat(d.path()).isEqualTo("sheet[0].sha512"))
                    .satisfies(
                        d ->
                            assertThat(d.before())
                                .isEqualTo(kept.state().stands().get(0).sheet().sha512())));
  }

  @Test
  void aRecordingThatTodaysMethodRefusesLeavesTheOlderResultStanding() throws BadInput {
    byte[] empty = "no recording\n".getBytes(StandardCharsets.UTF_8);
    String name = file(AttachmentRole.RECORDING).name();
    Result of = foundIn(Provenance.of(NamedBytes.of(name, empty)));
    List<AttachedFile> files =
        inside.files().stream()
            .map(
                f ->
                    switch (f.role()) {
                      case RECORDING -> new AttachedFile(f.role(), name, empty);
                      case RESULT -> new AttachedFile(f.role(), f.name(), ResultJson.write(of));
                      default -> f;
                    })
            .toList();
    byte[] old = printed(of, files);
    assertThat(Recheck.run("k7-shoe.pdf", old, LATER))
        .isInstanceOfSatisfying(
            RecheckResult.Older.class,
            older -> {
              assertThat(older.kept()).isEqualTo(of);
              assertThat(older.today()).isInstanceOf(RecheckResult.Today.Refused.class);
            });
  }

  private static Result foundIn(Provenance recording) {
    AlignmentState state = kept.state();
    Stand s = state.stands().get(0);
    Stand stand =
        new Stand(
            recording,
            s.sheet(),
            s.description(),
            s.trial(),
            s.landmarks(),
            s.standing(),
            s.offsets(),
            s.moments(),
            s.remarks());
    return new Result(
        kept.method(),
        kept.program(),
        new AlignmentState(
            List.of(stand), state.offsets(), state.findings(), state.withheld(), state.remarks()));
  }

  @Test
  void aNewerMethodIsToldWithoutAResult() throws BadInput {
    assertNewer(with(new Result(LATER, "Caryatid 9", kept.state())));
  }

  @Test
  void aNewerFormIsToldWithoutAResult() throws BadInput {
    assertNewer(
        with(AttachmentRole.RESULT, bytes -> "{\"version\" : 9}".getBytes(StandardCharsets.UTF_8)));
  }

  private static void assertNewer(byte[] report) throws BadInput {
    assertThat(Recheck.run("k7-shoe.pdf", report))
        .isInstanceOfSatisfying(
            RecheckResult.Newer.class, newer -> assertThat(said(newer.problem())).isEqualTo(NEWER));
  }

  private static final String NEWER =
      "k7-shoe.pdf: was written by a newer version of the program. Use that version, or check the"
          + " recording again.";

  private static String said(Problem problem) {
    return Wording.in(Locale.ENGLISH).say(problem);
  }
}
