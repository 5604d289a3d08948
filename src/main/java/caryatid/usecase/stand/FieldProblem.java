package caryatid.usecase.stand;

import caryatid.fitting.RecordProblem;
import caryatid.remark.Problem;
import caryatid.remark.Topic;
import caryatid.sheet.yaml.YamlProblem;
import java.util.Arrays;
import java.util.Set;

/** What a problem of a drafted sheet is, where its fields have words of their own for it. */
public enum FieldProblem {
  NOT_A_NUMBER(YamlProblem.NOT_A_NUMBER),
  MISSING_KEY(YamlProblem.MISSING_KEY),
  OUT_OF_RANGE(YamlProblem.OUT_OF_RANGE),
  /** It looks as if it said who the wearer is. */
  LIKE_A_NAME(
      RecordProblem.CODE_LIKE_NAME,
      RecordProblem.CODE_LIKE_DATE,
      RecordProblem.TEXT_LIKE_NAME,
      RecordProblem.TEXT_LIKE_BIRTH,
      RecordProblem.TEXT_LIKE_CONTACT),
  OTHER();

  private final Set<Topic> topics;

  FieldProblem(Topic... topics) {
    this.topics = Set.of(topics);
  }

  /** Which one a problem is. */
  public static FieldProblem of(Problem problem) {
    return Arrays.stream(values())
        .filter(one -> one.topics.contains(problem.topic()))
        .findFirst()
        .orElse(OTHER);
  }
}
