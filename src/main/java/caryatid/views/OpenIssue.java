package caryatid.views;

import caryatid.remark.Topic;
import caryatid.remark.Weight;
import java.util.EnumSet;
import java.util.Set;

/** The kinds of open issues of a record. */
public enum OpenIssue implements Topic {
  /** Arguments: entry that changed the alignment, entry of the last stand. */
  CHANGED_SINCE("Open.CHANGED_SINCE"),
  /** Arguments: entry of the bench alignment. */
  NO_FASTENERS("Open.NO_FASTENERS"),
  /** Arguments: entry that changed the alignment, the fasteners whose torque is not noted since. */
  FASTENERS_NOT_STATED("Open.FASTENERS_NOT_STATED"),
  /** Arguments: pain, entry. */
  PAIN_SEVERE("Open.PAIN_SEVERE"),
  /** Arguments: entry of the wearer's own setting, heel height set, heel height wanted. */
  OWN_SETTING_DIFFERS("Open.OWN_SETTING_DIFFERS"),
  /** Arguments: stand, heel of its footwear, heel height that the ankle was set for, entry. */
  ANKLE_AND_HEEL("Open.ANKLE_AND_HEEL"),
  /** Arguments: entry, the item's term and words, its leg. */
  TORQUE_NONE("Open.TORQUE_NONE"),
  /** Arguments: the same, the torque it is secured to and the one recommended. */
  TORQUE_BELOW("Open.TORQUE_BELOW"),
  /** Arguments: the same. */
  TORQUE_TEN_TIMES("Open.TORQUE_TEN_TIMES"),
  /** No torque is recommended. Arguments: entry, the item's term and words, its leg. */
  TORQUE_UNKNOWN("Open.TORQUE_UNKNOWN"),
  /** Arguments: entry, the item's term and words, its leg. */
  NO_REASON("Open.NO_REASON"),
  /** Arguments: entry, the deviation's term and words. */
  DEVIATION("Open.DEVIATION"),
  /** Arguments: the pain before, its entry, the pain now, its entry. */
  PAIN_ROSE("Open.PAIN_ROSE"),
  /** Arguments: entry, the wearer's words. */
  WEARER_SAYS("Open.WEARER_SAYS"),
  /** Arguments: entry, how the skin is. */
  SKIN("Open.SKIN"),
  /** Arguments: the comfort before, its entry, the comfort now, its entry. */
  COMFORT_FELL("Open.COMFORT_FELL"),
  /** Arguments: the same of the socket comfort score. */
  SOCKET_COMFORT_FELL("Open.SOCKET_COMFORT_FELL"),
  /** Arguments: the day, entry. */
  NEXT_VISIT("Open.NEXT_VISIT"),
  /** Arguments: plane, side, landmark, entry and footwear, result, whether it was typed. */
  NOT_WITHIN("Open.NOT_WITHIN"),
  /** Arguments: the same, and the entry that changed the alignment since, the seventh. */
  NOT_WITHIN_THEN("Open.NOT_WITHIN_THEN"),
  /**
   * Arguments: plane, side, landmark, the lock and the words that the target is valid for, entry,
   * how the wearer stood: footwear, lock, mode.
   */
  VALID_FOR("Open.VALID_FOR"),
  /** Arguments: entry, what is next. */
  NEXT_STEP("Open.NEXT_STEP"),
  /** Arguments: entry, successes, attempts, what. */
  OWN_SETTING("Open.OWN_SETTING"),
  /** Arguments: entry, landmark, by how much the legs differ, by how much they are meant to. */
  LEGS_DIFFER("Open.LEGS_DIFFER"),
  /** Arguments: entry, shoe. */
  SHOE_NOT_STOOD_IN("Open.SHOE_NOT_STOOD_IN"),
  /** Arguments: stand, the earlier stand with the same recordings, the recordings' names. */
  SAME_RECORDING("Open.SAME_RECORDING");

  private static final Set<OpenIssue> SAFETY =
      EnumSet.of(
          CHANGED_SINCE,
          NO_FASTENERS,
          FASTENERS_NOT_STATED,
          PAIN_SEVERE,
          OWN_SETTING_DIFFERS,
          ANKLE_AND_HEEL,
          TORQUE_NONE,
          TORQUE_BELOW,
          TORQUE_TEN_TIMES);

  private final String code;

  OpenIssue(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }

  @Override
  public Weight weight() {
    return SAFETY.contains(this) ? Weight.SAFETY : Weight.IMPORTANT;
  }
}
