package caryatid.format;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import caryatid.alignment.Result;
import caryatid.demo.Demo;
import caryatid.geometry.Side;
import caryatid.loadline.Bounds;
import caryatid.loadline.GeometryLimits;
import caryatid.loadline.LimitedQuantity;
import caryatid.recording.model.RecordingRemark;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Remark;
import caryatid.remark.Unit;
import caryatid.sheet.TrialSheet;
import caryatid.standing.UnusedPart;
import caryatid.wording.Wording;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ResultJsonTest {
  private static final Result RESULT =
      Demo.transfemoral(Side.LEFT)
          .notes()
          .remarks(
              Remark.of(
                  RecordingRemark.COP_AGREES,
                  Argument.text("a \"quoted\" word"),
                  Argument.of(1 / 3.0, Unit.MM),
                  Argument.term(UnusedPart.Reason.GAP)))
          .result();

  private static String text() {
    return new String(ResultJson.write(RESULT), StandardCharsets.UTF_8);
  }

  @Test
  void whatIsReadEqualsWhatWasWritten() throws BadInput {
    assertThat(ResultJson.read(ResultJson.write(RESULT))).isEqualTo(RESULT);
  }

  @Test
  void limitsAndAnswersAreKept() throws BadInput {
    String json =
        text()
            .replace(
                "\"notes\" : {",
                "\"limits\" : [ { \"quantity\" : \"stance-width-mm\", \"ask-below\" : 60,"
                    + " \"ask-above\" : 320.5, \"refuse-below\" : 30, \"refuse-above\" : 500 } ],"
                    + " \"as-meant\" : [ \"load share\", \"heel-height-mm 1\" ], \"notes\" : {");
    Result read = ResultJson.read(json.getBytes(StandardCharsets.UTF_8));
    TrialSheet trial = read.state().stands().get(0).trial();
    assertThat(trial.limits().own())
        .containsExactly(Map.entry(LimitedQuantity.STANCE_WIDTH, new Bounds(60, 320.5, 30, 500)));
    assertThat(trial.asMeant()).containsExactly("load share", "heel-height-mm 1");
    assertThat(ResultJson.read(ResultJson.write(read))).isEqualTo(read);
  }

  @Test
  void aResultWithoutLimitsAndAnswersSaysNone() throws BadInput {
    assertThat(text()).doesNotContain("\"limits\"", "\"as-meant\"");
    TrialSheet trial = ResultJson.read(ResultJson.write(RESULT)).state().stands().get(0).trial();
    assertThat(trial.limits()).isEqualTo(GeometryLimits.USUAL);
    assertThat(trial.asMeant()).isEmpty();
  }

  @Test
  void theSameResultGivesTheSameBytes() throws BadInput {
    byte[] bytes = ResultJson.write(RESULT);
    assertThat(ResultJson.write(ResultJson.read(bytes))).isEqualTo(bytes);
  }

  @Test
  void keysAreWordsJoinedByHyphensAndTopicsTheirKeys() {
    assertThat(text())
        .contains(
            "\"cop-anterior-mm\" : {",
            "\"topic\" : \"RecordingRemark.COP_AGREES\"",
            "\"side\" : \"left\"")
        .contains("\"kind\" : \"prosthetic-foot-on-plate\"");
  }

  @Test
  void infiniteDegreesOfFreedomAreLeftOutAndFiniteOnesAreNot() {
    assertThat(text()).contains("\"degrees-of-freedom\" : 7").doesNotContain("Infinity");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "`\"version\" : 2,` | `\"version\" : 3,` | was written by a newer version of the program."
            + " Use that version, or check the recording again.",
        "`\"version\" : 2,` | `\"version\" : 12345678901,` | was written by a newer version of the"
            + " program. Use that version, or check the recording again.",
        "`\"version\" : 2,` | `\"version\" : 0,` | expected a result of version 1 to 2, found"
            + " version 0. Use the file as the program wrote it.",
        "`\"method\" : 2,` | `\"method\" : 0,` | expected a value within its range at result, found"
            + " method: 0. Use the file as the program wrote it.",
        "`\"version\" : 2,` | `\"version\" : 2, \"version\" : 2,` | expected each key once, found"
            + " 'version' twice in one group. Use the file as the program wrote it.",
        "`\"version\" : 2,` | `\"version\" : 2, \"colour\" : 1,` | expected only known keys in"
            + " result, found 'colour'. Use the file as the program wrote it.",
        "`\"version\" : 2,` | `` | expected the key 'version' in result, found none. Use the file"
            + " as the program wrote it.",
        "`\"program\" : \"caryatid demo\"` | `\"program\" : 3` | expected a text at result.program,"
            + " found 3. Use the file as the program wrote it.",
        "`\"rate-hz\" : 100` | `\"rate-hz\" : 1e999` | expected a number at"
            + " result.state.stands[0].standing.rate-hz, found 1e999. Use the file as the program"
            + " wrote it.",
        "`\"rate-hz\" : 100` | `\"rate-hz\" : \"100\"` | expected a number at"
            + " result.state.stands[0].standing.rate-hz, found \"100\". Use the file as the program"
            + " wrote it.",
        "`\"hands\" : \"free\"` | `\"hands\" : \"up\"` | expected a known word at"
            + " result.state.stands[0].trial.hands, found \"up\". Use the file as the program wrote"
            + " it.",
        "`\"bytes\" : 123456` | `\"bytes\" : -1` | expected a value within its range at"
            + " result.state.stands[0].recording, found length -1, digest "
            + "aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa."
            + " Use the file as the program wrote it.",
      })
  void whatIsNotAsWrittenIsRefusedInWords(String written, String changed, String message) {
    String broken = text().replaceFirst(java.util.regex.Pattern.quote(written), changed);
    BadInput refused =
        catchThrowableOfType(
            BadInput.class, () -> ResultJson.read(broken.getBytes(StandardCharsets.UTF_8)));
    assertThat(Wording.in(Locale.ENGLISH).say(refused.problems().get(0)))
        .isEqualTo("result.json: " + message);
  }
}
