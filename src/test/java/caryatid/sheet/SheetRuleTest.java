package caryatid.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import caryatid.loadline.DecisionRule;
import caryatid.remark.BadInput;
import org.junit.jupiter.api.Test;

class SheetRuleTest {
  private static DecisionRule rule(String yaml) throws BadInput {
    return Sheets.sheet(Sheets.SHEET + yaml).rule();
  }

  @Test
  void withoutAWordResultsFollowTheProbability() throws BadInput {
    assertThat(rule("")).isEqualTo(DecisionRule.USUAL);
    assertThat(rule("decision-rule: {kind: by probability}\n")).isEqualTo(DecisionRule.USUAL);
  }

  @Test
  void anotherProbabilityAndTheSimpleRuleAreAskedFor() throws BadInput {
    assertThat(rule("decision-rule: {kind: by probability, confidence-percent: 90}\n"))
        .isEqualTo(new DecisionRule(0.9, true));
    assertThat(rule("decision-rule: {kind: simple}\n")).isEqualTo(DecisionRule.SIMPLE);
  }

  @Test
  void anUnknownRuleIsRefused() {
    assertThatThrownBy(() -> rule("decision-rule: {kind: strict}\n")).isInstanceOf(BadInput.class);
    assertThatThrownBy(
            () -> rule("decision-rule: {kind: by probability, confidence-percent: 50}\n"))
        .isInstanceOf(BadInput.class);
  }
}
