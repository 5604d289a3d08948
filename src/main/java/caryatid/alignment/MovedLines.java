package caryatid.alignment;

import caryatid.loadline.Finding;
import caryatid.loadline.LandmarkInPlane;
import caryatid.loadline.LoadLineMethod;
import caryatid.loadline.Offset;
import caryatid.standing.LoadLineOwner;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How far the foot's line and the whole body's moved past the same landmark since a state before: a
 * description of posture. No result follows from it, because a change of alignment moves the whole
 * body's line too, and what is left without that would lack real effect.
 *
 * @param at the landmark, in the sagittal plane
 * @param footMm by how much the foot's line moved, mm, anterior positive
 * @param bodyMm by how much the whole body's line moved, mm, anterior positive
 */
public record MovedLines(LandmarkInPlane at, double footMm, double bodyMm) {

  /**
   * Of every finding about a foot's line, where both states know both lines.
   *
   * @param before the state before
   */
  public static List<MovedLines> since(EarlierState before, AlignmentState state) {
    return state.findings().stream()
        .map(Finding::offset)
        .filter(offset -> offset.of() != LoadLineOwner.WHOLE_BODY)
        .filter(offset -> offset.kind() == LoadLineMethod.VERTICAL)
        .flatMap(offset -> of(offset, before, state).stream())
        .toList();
  }

  private static Optional<MovedLines> of(Offset foot, EarlierState before, AlignmentState state) {
    OptionalDouble footThen = before.meanMm(foot.at(), foot.of());
    OptionalDouble bodyThen = before.meanMm(foot.at(), LoadLineOwner.WHOLE_BODY);
    Optional<Offset> body =
        state.offsets().stream()
            .map(StateOffset::offset)
            .filter(o -> o.kind() == foot.kind() && o.of() == LoadLineOwner.WHOLE_BODY)
            .filter(o -> o.at().equals(foot.at()))
            .findFirst();
    return body.isEmpty() || footThen.isEmpty() || bodyThen.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new MovedLines(
                foot.at(),
                foot.mm().value() - footThen.getAsDouble(),
                body.get().mm().value() - bodyThen.getAsDouble()));
  }
}
