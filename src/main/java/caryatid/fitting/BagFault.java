package caryatid.fitting;

import caryatid.remark.Topic;

/** Why a packed record is not taken in. */
enum BagFault implements Topic {
  NOT_A_ZIP,
  UNSAFE_NAME,
  NAME_TWICE,
  LINK,
  ENCRYPTED,
  TOO_LARGE,
  NOT_A_BAG,
  NO_MANIFEST,
  FETCHES,
  NOT_LISTED,
  LISTED_TWICE,
  LISTED_BUT_MISSING,
  WRONG_SUM,
  NOT_ONE_RECORD,
  NOT_SOUND
}
