package caryatid.advice;

import caryatid.loadline.LandmarkInPlane;
import caryatid.loadline.Offset;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * An alignment state that was measured, and how the prosthesis was set in it.
 *
 * @param name as reports name it: the number of its entry
 * @param plate what tells plates and measuring lines apart: states of one share their errors
 * @param sameShoe whether the wearer stood in the footwear of the newest state
 * @param settings what was set, by its kind, in the kind's unit; of a kind that is missing, it is
 *     taken as never changed
 * @param offsets of the foot's vertical line, with their uncertainty
 */
public record MeasuredState(
    int name,
    String plate,
    boolean sameShoe,
    Map<ChangeKind, Double> settings,
    List<Offset> offsets) {
  public MeasuredState {
    settings = Map.copyOf(settings);
    offsets = List.copyOf(offsets);
  }

  /** What was set, or the setting of another state where this one does not say. */
  double setting(ChangeKind kind, MeasuredState otherwise) {
    return settings.getOrDefault(kind, otherwise.settings.getOrDefault(kind, 0.0));
  }

  /** The offset at a landmark. */
  Optional<Offset> offset(LandmarkInPlane at) {
    return offsets.stream().filter(each -> each.at().equals(at)).findFirst();
  }
}
