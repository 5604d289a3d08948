package caryatid.report;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.alignment.Result;
import caryatid.format.ResultJson;
import caryatid.report.pdf.Attachments.AttachmentRole;
import caryatid.report.pdf.ReportReader;
import caryatid.wording.Wording;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PageNumbersTest {

  /** So that the numbers of today's pages can be looked for once their layout is an older one. */
  @ParameterizedTest
  @ValueSource(strings = {"k7-barefoot", "k7-shoe", "m4-barefoot", "m4-shoe"})
  void todaysPagesShowTheNumbersThatAreLookedForOnOlderOnes(String name) throws Exception {
    byte[] pdf = Files.readAllBytes(Path.of("reports", name + ".pdf"));
    Result result =
        ResultJson.read(
            ReportReader.read(name, pdf).files().stream()
                .filter(file -> file.role() == AttachmentRole.RESULT)
                .findFirst()
                .orElseThrow()
                .bytes());
    assertThat(PageNumbers.missing(name, pdf, result, Wording.in(Locale.ENGLISH))).isEmpty();
  }
}
