package caryatid.loadline;

/** What an external moment does to the joint it is taken about. */
public enum MomentEffect {
  BENDS_THE_KNEE,
  STRAIGHTENS_THE_KNEE,
  /** Of a prosthetic knee. */
  HOLDS_KNEE_AGAINST_EXTENSION_STOP,
  /** Tips the shank forward over the foot. */
  DORSIFLEXES_THE_ANKLE,
  /** Tips the shank backward. */
  PLANTARFLEXES_THE_ANKLE,
  /** Lateral: pushes the knee towards the other leg. */
  VALGUS,
  /** Medial: pushes the knee away from the other leg. */
  VARUS,
  EVERTS_THE_FOOT,
  INVERTS_THE_FOOT,
  /** Its interval reaches to both sides of zero. */
  TOO_SMALL_TO_TELL
}
