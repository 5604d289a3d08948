package caryatid.usecase;

import caryatid.alignment.Result;
import caryatid.alignment.Stand;
import caryatid.format.ResultJson;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.report.Attachments;
import caryatid.report.Attachments.Attached;
import caryatid.report.Attachments.Role;
import caryatid.report.ReportReader;
import caryatid.report.ResultDifference;
import caryatid.standing.QuietStretch;
import caryatid.standing.Stretch;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** Computes a report again from the files inside it. */
public final class Recheck {
  private Recheck() {}

  /**
   * What came of it.
   *
   * @param result the result as computed now
   * @param madeBy name and version of the program that made the report
   * @param differences what differs from the result inside the report; none when it is reproduced
   */
  public record Outcome(Result result, String madeBy, List<ResultDifference> differences) {
    public Outcome {
      differences = List.copyOf(differences);
    }
  }

  /**
   * Computes a report again. With the version that made it, the result must be the same to the last
   * digit; with another, numbers may differ relatively by {@value ResultDifference#TOLERANCE}.
   *
   * @param name the report's name, for problems
   * @throws BadInput if the report is none, or a file inside it cannot be used
   */
  public static Outcome run(String name, byte[] pdf) throws BadInput {
    Attachments inside = ReportReader.read(name, pdf);
    byte[] before = only(inside, Role.RESULT).bytes();
    Result kept = ResultJson.read(before);
    Result result = Check.run(inputs(inside, kept)).result();
    boolean sameProgram = kept.program().equals(result.program());
    Result comparable = new Result(result.version(), kept.program(), result.states());
    List<ResultDifference> differences =
        ResultDifference.between(
            before, ResultJson.write(comparable), sameProgram ? 0 : ResultDifference.TOLERANCE);
    return new Outcome(result, kept.program(), differences);
  }

  private static Inputs inputs(Attachments inside, Result kept) {
    return new Inputs(
        all(inside, Role.RECORDING).toList(),
        bytes(only(inside, Role.TRIAL_SHEET)),
        all(inside, Role.PLATE_DESCRIPTION).findFirst(),
        beside(inside),
        byHand(kept));
  }

  private static Function<String, Optional<NamedBytes>> beside(Attachments inside) {
    return sheet -> all(inside, Role.OTHER_SHEET).filter(f -> f.name().equals(sheet)).findFirst();
  }

  private static Optional<Stretch> byHand(Result kept) {
    List<QuietStretch> set =
        kept.states().stream()
            .flatMap(state -> state.stands().stream())
            .map(Stand::standing)
            .map(standing -> standing.stretch())
            .filter(QuietStretch::byHand)
            .toList();
    if (set.isEmpty()) {
      return Optional.empty();
    }
    double fromS = set.stream().mapToDouble(QuietStretch::fromS).min().orElseThrow();
    double toS = set.stream().mapToDouble(QuietStretch::toS).max().orElseThrow();
    return Optional.of(new Stretch(fromS, toS));
  }

  private static Attached only(Attachments inside, Role role) {
    return inside.files().stream().filter(f -> f.role() == role).findFirst().orElseThrow();
  }

  private static Stream<NamedBytes> all(Attachments inside, Role role) {
    return inside.files().stream().filter(file -> file.role() == role).map(Recheck::bytes);
  }

  private static NamedBytes bytes(Attached file) {
    return NamedBytes.of(file.name(), file.bytes());
  }
}
