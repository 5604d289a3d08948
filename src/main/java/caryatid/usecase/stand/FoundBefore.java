package caryatid.usecase.stand;

import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.usecase.stand.DraftedStand.SoFar;
import java.lang.ref.SoftReference;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What was drawn and found in drafts before, so that it is not made again while nothing that goes
 * into it has changed. One for all drafts of a program. What was refused is not kept: the reason
 * may have been a file that was locked for a moment.
 */
public final class FoundBefore {
  /** A drawing takes some 50 kB. */
  private static final int MOST_DRAWN = 120;

  private final Map<DrawnStand, List<DrawnOverTime>> drawn = new LinkedHashMap<>(16, 0.75f, true);
  private Optional<LastFound> last = Optional.empty();

  /**
   * All that goes into the drawing of a recording over time.
   *
   * @param code the record's
   * @param recording its name, size and time
   * @param sheet what is used of the sheet, with the clinic's limits
   * @param description the plate description; empty where none is known
   * @param stretch the stretch set by hand
   * @param language in which it is labelled
   */
  record DrawnStand(
      String code,
      String recording,
      String sheet,
      String description,
      String stretch,
      String language) {}

  /**
   * All that a result depends on.
   *
   * @param code the record's
   * @param head the record's head digest
   * @param fields what was typed, with initials
   * @param recordings names, sizes and times of those that are counted
   * @param clinic what the clinic remembers
   * @param minute when, as a time to come is refused
   */
  record FoundIn(
      String code,
      String head,
      Map<String, String> fields,
      List<String> recordings,
      Object clinic,
      Object minute) {
    FoundIn {
      fields = Map.copyOf(fields);
      recordings = List.copyOf(recordings);
    }
  }

  /** The recordings of a result take much room, and give way when it is needed. */
  private record LastFound(FoundIn setting, SoftReference<SoFar> result) {}

  /** Draws. */
  interface DrawStand {
    List<DrawnOverTime> draw() throws BadInput, StoreFailure;
  }

  /** Finds. */
  interface FindResult {
    SoFar find() throws StoreFailure;
  }

  /** What was drawn of it before; else it is drawn now. */
  List<DrawnOverTime> drawn(DrawnStand drawing, DrawStand drawer) throws BadInput, StoreFailure {
    Optional<List<DrawnOverTime>> before = before(drawing);
    if (before.isPresent()) {
      return before.get();
    }
    List<DrawnOverTime> now = List.copyOf(drawer.draw());
    keep(drawing, now);
    return now;
  }

  private synchronized Optional<List<DrawnOverTime>> before(DrawnStand drawing) {
    return Optional.ofNullable(drawn.get(drawing));
  }

  private synchronized void keep(DrawnStand drawing, List<DrawnOverTime> now) {
    drawn.put(drawing, now);
    if (drawn.size() > MOST_DRAWN) {
      drawn.remove(drawn.keySet().iterator().next());
    }
  }

  /** What was found last, if it was in the same; else it is found now. */
  SoFar found(FoundIn setting, FindResult finder) throws StoreFailure {
    Optional<SoFar> before = before(setting);
    if (before.isPresent()) {
      return before.get();
    }
    SoFar now = finder.find();
    if (now.checked().isPresent() || !now.questions().isEmpty()) {
      keep(new LastFound(setting, new SoftReference<>(now)));
    }
    return now;
  }

  private synchronized Optional<SoFar> before(FoundIn setting) {
    return last.filter(found -> found.setting().equals(setting))
        .flatMap(found -> Optional.ofNullable(found.result().get()));
  }

  private synchronized void keep(LastFound found) {
    last = Optional.of(found);
  }

  /** Nothing of a record's draft is kept any longer. */
  synchronized void forget(String code) {
    drawn.keySet().removeIf(drawing -> drawing.code().equals(code));
    last = last.filter(found -> !found.setting().code().equals(code));
  }
}
