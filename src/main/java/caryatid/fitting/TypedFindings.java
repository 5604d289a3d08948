package caryatid.fitting;

import caryatid.entry.EntryKind;
import caryatid.entry.StandSummary;
import caryatid.entry.form.Answers;
import caryatid.entry.form.Choices;
import caryatid.loadline.DecisionRule;
import caryatid.loadline.Verdict;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.uncertainty.Cause;
import caryatid.uncertainty.Conformity;
import caryatid.uncertainty.Contribution;
import caryatid.uncertainty.Estimate;
import caryatid.uncertainty.Source;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The results of typed offsets, which are computed and never typed. */
public final class TypedFindings {
  private static final String FINDINGS = "findings";

  private TypedFindings() {}

  /**
   * A stand's answers with the result of each finding, by the usual rule. The half-width of the
   * interval is taken as that of a normal distribution, as nothing more is known of it.
   *
   * @throws BadInput if a result cannot be computed, because there is no uncertainty
   */
  public static Answers judged(Answers stand) throws BadInput {
    List<Answers> rows = stand.rows(FINDINGS);
    List<Problem> problems = new ArrayList<>();
    List<Answers> judged = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      if (number(rows.get(i), "expanded-mm") > 0) {
        judged.add(judgedRow(rows.get(i)));
      } else {
        Argument field = Argument.text(FINDINGS + "[" + (i + 1) + "].expanded-mm");
        Place place = Place.of(EntryKind.STAND.key());
        problems.add(Problem.at(place, RecordProblem.NO_UNCERTAINTY, field));
      }
    }
    if (!problems.isEmpty()) {
      throw new BadInput(problems);
    }
    Map<String, Answers.Value> values = new LinkedHashMap<>(stand.values());
    values.computeIfPresent(FINDINGS, (key, before) -> new Answers.Value.Rows(judged));
    return new Answers(values);
  }

  private static Answers judgedRow(Answers row) {
    Map<String, Answers.Value> values = new LinkedHashMap<>(row.values());
    values.put("result", new Answers.Value.Words(Choices.RESULT.code(verdict(row))));
    return new Answers(values);
  }

  private static Verdict verdict(Answers row) {
    double mm = number(row, "offset-mm");
    double recommendedMm = number(row, "recommended-mm");
    double lowestMm = recommendedMm - number(row, "below-mm");
    double highestMm = recommendedMm + number(row, "above-mm");
    Estimate offset = estimate(mm, number(row, "expanded-mm"));
    return DecisionRule.USUAL.verdict(
        mm >= lowestMm && mm <= highestMm, Conformity.of(offset, lowestMm, highestMm));
  }

  /** A typed offset with its uncertainty, which is taken as that of a normal distribution. */
  public static Estimate offset(StandSummary.Found found) {
    return estimate(found.offsetMm().doubleValue(), found.expandedMm().doubleValue());
  }

  private static Estimate estimate(double mm, double expandedMm) {
    double factor = of(mm, 1).expanded(Estimate.COVERAGE);
    return of(mm, expandedMm / factor);
  }

  private static Estimate of(double mm, double standardUncertaintyMm) {
    Source typed = new Source(Cause.REPEATABILITY, "typed");
    return new Estimate(
        mm, List.of(new Contribution(typed, standardUncertaintyMm, 1, Double.POSITIVE_INFINITY)));
  }

  private static double number(Answers row, String key) {
    return row.number(key).map(BigDecimal::doubleValue).orElseThrow();
  }
}
