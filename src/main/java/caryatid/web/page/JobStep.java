package caryatid.web.page;

import caryatid.entry.EntryKind;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The steps of the job, in the order in which they usually come; any can be done at any time. */
public enum JobStep {
  ARRIVING("arriving", EntryKind.NOTE),
  PARTS("parts", EntryKind.COMPONENTS),
  ASSESSMENT("assessment", EntryKind.ASSESSMENT),
  BENCH("bench-alignment", EntryKind.BENCH_ALIGNMENT),
  LENGTH("length-and-pelvis", EntryKind.LEG_LENGTH),
  STATIC("static-alignment", EntryKind.STAND),
  DYNAMIC("dynamic-alignment", EntryKind.WALKING),
  FOOTWEAR("footwear", EntryKind.FOOTWEAR, EntryKind.OWN_SETTING),
  CLOSING("closing", EntryKind.CLOSING, EntryKind.ACCEPTED);

  private final String path;
  private final List<EntryKind> kinds;

  JobStep(String path, EntryKind... kinds) {
    this.path = path;
    this.kinds = List.of(kinds);
  }

  /** The part of its address. */
  public String path() {
    return path;
  }

  /** What it adds to the record, the usual first. */
  public List<EntryKind> kinds() {
    return kinds;
  }

  /** The key of its name. */
  public String key() {
    return "Web.step." + name();
  }

  /** The step of a part of an address. */
  public static Optional<JobStep> of(String path) {
    return Arrays.stream(values()).filter(step -> step.path.equals(path)).findFirst();
  }

  /** The step in which entries of a kind are added. */
  public static Optional<JobStep> adding(EntryKind kind) {
    return Arrays.stream(values()).filter(step -> step.kinds.contains(kind)).findFirst();
  }
}
