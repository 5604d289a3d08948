package caryatid.sheet;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.remark.Question;
import caryatid.wording.Wording;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The limits are common practice and have no source. */
class SheetQuestionsTest {
  private static String sheet() throws IOException {
    return Files.readString(Path.of("sample-recordings/k7/shoe.yaml"));
  }

  private static TrialSheet read(String text) throws BadInput {
    return TrialSheetReader.read(
        NamedBytes.of("sheet.yaml", text.getBytes(UTF_8)), name -> Optional.empty());
  }

  private static List<String> asked(String text) throws BadInput {
    return SheetQuestions.of(read(text)).stream().map(Question::answer).toList();
  }

  private static String heel(String mm) throws IOException {
    return sheet().replace("heel-height-mm: 15", "heel-height-mm: " + mm);
  }

  @Test
  void aHeelIsAskedAboutUnder3MmExceptNoneAndOver50Mm() throws Exception {
    assertThat(asked(heel("2.9"))).containsExactly("heel-height-mm 2.9");
    assertThat(asked(heel("3"))).isEmpty();
    assertThat(asked(heel("0"))).isEmpty();
    assertThat(asked(heel("50"))).isEmpty();
    assertThat(asked(heel("50.1"))).containsExactly("heel-height-mm 50.1");
  }

  @Test
  void aHeelOver120MmIsRefused() throws Exception {
    assertThat(asked(heel("120"))).hasSize(1);
    BadInput refused = catchThrowableOfType(BadInput.class, () -> read(heel("120.1")));
    assertThat(Wording.in(Locale.ENGLISH).say(refused.problems().get(0)).replace('\u00a0', ' '))
        .isEqualTo(
            "sheet.yaml line 11, column 11: `heel-height-mm`: no shoe has a heel of 120.1 mm above"
                + " its forefoot sole (possible: \u221250.0 mm to 120.0 mm). Correct it; it is in"
                + " mm.");
  }

  @Test
  void theSheetsOwnLimitsTakeThePlaceOfTheUsualOnes() throws Exception {
    String own = heel("60") + "limits: {heel-height-mm: {ask-above: 70}}\n";
    assertThat(asked(own)).isEmpty();
    assertThat(asked(own.replace("heel-height-mm: 60}", "heel-height-mm: 70.1}")))
        .containsExactly("heel-height-mm 70.1");
  }

  @Test
  void limitsOutOfOrderAreRefused() throws IOException {
    String own = sheet() + "limits: {heel-height-mm: {ask-above: 130}}\n";
    BadInput refused = catchThrowableOfType(BadInput.class, () -> read(own));
    assertThat(refused.problems())
        .extracting(p -> p.topic())
        .containsExactly(SheetProblem.LIMITS_OUT_OF_ORDER);
  }

  @Test
  void answersAreAddedToWhateverTheSheetHas() throws Exception {
    for (String before : List.of("", "as-meant: ['a']\n", "as-meant:\n  - a\n", "as-meant: []\n")) {
      byte[] answered = SheetAnswers.with((sheet() + before).getBytes(UTF_8), List.of("b, 'c'"));
      List<String> now = read(new String(answered, UTF_8)).asMeant();
      assertThat(now)
          .contains("b, 'c'")
          .hasSize(before.contains("a'") || before.contains("- a") ? 2 : 1);
    }
  }
}
