package caryatid.faults;

import caryatid.alignment.AlignmentState;
import caryatid.loadline.Finding;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.remark.Remark;
import caryatid.remark.Topic;
import caryatid.remark.Weight;
import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** One fault of one column of a sample, and what becomes of it. */
record FaultyColumn(SampleStand stand, String column, ChannelFault fault) {
  /** An offset that moves by less is not noticed by anybody, mm. */
  private static final double MOVED_MM = 0.5;

  /** What becomes of a fault. */
  enum Outcome {
    REFUSED,
    REMARKED,
    HARMLESS,
    IN_SILENCE
  }

  Outcome outcome() throws IOException, BadInput {
    SampleExport export = stand.export();
    AlignmentState sound = stand.checked(export.asItIs());
    AlignmentState faulty;
    try {
      faulty = stand.checked(damaged(export));
    } catch (BadInput refused) {
      return Outcome.REFUSED;
    }
    if (harmless(sound, faulty)) {
      return Outcome.HARMLESS;
    }
    Set<Topic> remarks = new HashSet<>(important(faulty));
    remarks.removeAll(important(sound));
    return remarks.isEmpty() ? Outcome.IN_SILENCE : Outcome.REMARKED;
  }

  private NamedBytes damaged(SampleExport export) {
    return export.with(column, values -> fault.in(values, export.rateHz()));
  }

  static boolean harmless(AlignmentState sound, AlignmentState faulty) {
    List<Finding> before = sound.findings();
    List<Finding> after = faulty.findings();
    if (before.size() != after.size()) {
      return false;
    }
    for (int i = 0; i < before.size(); i++) {
      double moved = after.get(i).offset().mm().value() - before.get(i).offset().mm().value();
      if (!(Math.abs(moved) < MOVED_MM)
          || !before.get(i).verdict().equals(after.get(i).verdict())) {
        return false;
      }
    }
    return true;
  }

  static Set<Topic> important(AlignmentState state) {
    Stream<Remark> ofStands =
        state.stands().stream()
            .flatMap(s -> Stream.concat(s.remarks().stream(), s.standing().remarks().stream()));
    return Stream.concat(ofStands, state.remarks().stream())
        .map(Remark::topic)
        .filter(topic -> topic.weight() != Weight.NOTE)
        .collect(Collectors.toSet());
  }

  @Override
  public String toString() {
    return stand.recording() + " " + column + " " + fault;
  }
}
