package caryatid.fitting;

import caryatid.remark.Topic;

/** What has to be confirmed of a sheet's words. Arguments: the field, what looks so. */
enum IdentityQuestion implements Topic {
  LIKE_NAME("IdentityQuestion.LIKE_NAME"),
  LIKE_BIRTH("IdentityQuestion.LIKE_BIRTH"),
  LIKE_CONTACT("IdentityQuestion.LIKE_CONTACT");

  private final String code;

  IdentityQuestion(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }

  static IdentityQuestion of(RecordProblem like) {
    return switch (like) {
      case TEXT_LIKE_BIRTH -> LIKE_BIRTH;
      case TEXT_LIKE_CONTACT -> LIKE_CONTACT;
      default -> LIKE_NAME;
    };
  }
}
