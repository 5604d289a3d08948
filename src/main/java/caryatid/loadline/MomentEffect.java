package caryatid.loadline;

import caryatid.remark.Coded;

/** What an external moment does to the joint it is taken about. */
public enum MomentEffect implements Coded {
  BENDS_THE_KNEE("MomentEffect.BENDS_THE_KNEE"),
  STRAIGHTENS_THE_KNEE("MomentEffect.STRAIGHTENS_THE_KNEE"),
  /** Of a prosthetic knee. */
  HOLDS_KNEE_AGAINST_EXTENSION_STOP("MomentEffect.HOLDS_KNEE_AGAINST_EXTENSION_STOP"),
  /** Tips the shank forward over the foot. */
  DORSIFLEXES_THE_ANKLE("MomentEffect.DORSIFLEXES_THE_ANKLE"),
  /** Tips the shank backward. */
  PLANTARFLEXES_THE_ANKLE("MomentEffect.PLANTARFLEXES_THE_ANKLE"),
  /** Lateral: pushes the knee towards the other leg. */
  VALGUS("MomentEffect.VALGUS"),
  /** Medial: pushes the knee away from the other leg. */
  VARUS("MomentEffect.VARUS"),
  EVERTS_THE_FOOT("MomentEffect.EVERTS_THE_FOOT"),
  INVERTS_THE_FOOT("MomentEffect.INVERTS_THE_FOOT"),
  /** Its interval reaches to both sides of zero. */
  TOO_SMALL_TO_TELL("MomentEffect.TOO_SMALL_TO_TELL");

  private final String code;

  MomentEffect(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
