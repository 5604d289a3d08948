package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.report.Standards;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What people type in whatever script: printed, or visibly replaced, and kept. */
class LettersTest {
  private static final String REMARK = "Some letters cannot be printed here";

  @TempDir private Path path;

  /** Typed, and what stands on the page. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Łódź ąőßñ ẞ Größe ÿ æ Đ Ș ẫ | Łódź ąőßñ ẞ Größe ÿ æ Đ Ș ẫ | no",
        "e\u0301te\u0301 ΑΒΓ αβγ ώ ὦ Їжак | \u00e9t\u00e9 ΑΒΓ αβγ ώ ὦ Їжак | no",
        "Привет CO₂ H₂O m² xₙ₊₁ | Привет CO₂ H₂O m² xₙ₊₁ | no",
        "10⁶ N⋅m⁻² 10⁻³ aⁿ ⌀ 30 mm ∥ ∠ ∼ | 10⁶ N⋅m⁻² 10⁻³ aⁿ ⌀ 30 mm ∥ ∠ ∼ | no",
        "≤ ± ° µ Ω → ½ √ ≥ ≠ ∞ ″ | ≤ ± ° µ Ω → ½ √ ≥ ≠ ∞ ″ | no",
        "signs ☐ ☑ ✓ ✗ ⚠ ⇒ ↻ | ☐ ☑ ✓ ✗ ⚠ ⇒ ↻ | no",
        "leg 🦿 | leg □ | yes",
        "膝关节 | □□□ | yes",
        "ركبة | □□□□ | yes",
        "ברך | □□□ | yes",
        "घुटना | □□□□□ | yes",
        "무릎 | □□ | yes",
      })
  void inEveryFieldAndFileNameAndForm(String typed, String printed, String replaced)
      throws Exception {
    new Folder(path);
    Path sheet = path.resolve("sheet.yaml");
    String text = Files.readString(sheet);
    for (String key : List.of("last-change", "comfort", "is", "source")) {
      text = text.replaceAll("(?m)^([- ]*" + key + ":) .*$", "$1 \"" + typed + "\"");
    }
    text = text.replace("D-0001", "\"" + typed + "\"");
    text = text.replace("name: knee centre", "kind: other\n    name: \"" + typed + "\"");
    text = text.replace("landmark: knee centre", "landmark: \"" + typed + "\"");
    text = text.replaceFirst("(?m)^wearer: .*$", "wearer: \"" + typed + "\"");
    text =
        text.replaceFirst(
            "(?m)^side: right$", "side: right\nas-meant: ['side right', 'words of wearer']");
    Files.writeString(sheet, text);
    String stem = stem(typed);
    Path named = path.resolve(stem + ".csv");
    Files.move(path.resolve("stand.csv"), named);
    Run run =
        Run.caryatid(
            "check",
            named.toString(),
            "--trial",
            sheet.toString(),
            "--plate",
            path.resolve("plate.yaml").toString(),
            "--out",
            path.resolve("out").toString(),
            "--forms",
            "pdf,html,csv,json,svg,png");
    assertThat(run.code()).as(run.err()).isZero();
    byte[] pdf = Files.readAllBytes(path.resolve("out/" + stem + "-report.pdf"));
    Standards.assertKept(pdf);
    String page = words(pdf);
    assertThat(page.replace(" ", "")).contains(printed.replace(" ", ""));
    assertThat(page.contains(REMARK)).isEqualTo(replaced.equals("yes"));
    assertThat(Files.readString(path.resolve("out/" + stem + "-report.html"))).contains(typed);
    JsonNode json =
        new ObjectMapper().readTree(path.resolve("out/" + stem + "-report.json").toFile());
    assertThat(json.findValuesAsText("wearer")).contains(typed);
    assertThat(json.findValuesAsText("serial")).contains(typed);
    Run again = Run.caryatid("check", path.resolve("out/" + stem + "-report.pdf").toString());
    assertThat(again.code()).as(again.err()).isZero();
    inARecord(typed, printed, replaced);
  }

  /** A file's name, where this machine takes one of these letters. */
  private static String stem(String typed) {
    String letters = typed.replaceAll("[^\\p{L}]", "");
    Charset names = Charset.forName(System.getProperty("sun.jnu.encoding"));
    return names.newEncoder().canEncode(letters) ? letters : "named";
  }

  private void inARecord(String typed, String printed, String replaced) throws IOException {
    Clinic clinic = new Clinic(path.resolve("records"));
    clinic.start();
    Run added =
        clinic.record("add", "K7-right", "note", "--sure", "--by", "AB", "text=noted: " + typed);
    assertThat(added.code()).as(added.err()).isZero();
    Path pdf = path.resolve("record.pdf");
    Run made = clinic.record("report", "K7-right", "--out", pdf.toString());
    assertThat(made.code()).as(made.err()).isZero();
    String page = words(Files.readAllBytes(pdf));
    assertThat(page.replace(" ", "")).contains(printed.replace(" ", ""));
    assertThat(page.contains(REMARK)).isEqualTo(replaced.equals("yes"));
    assertThat(clinic.record("show", "K7-right").out()).contains(typed);
  }

  @ParameterizedTest
  @CsvSource({"\\t", "\\e", "\\0", "\\x85", "\\u200b", "\\u202e", "\\ufeff", "\\uffff"})
  void whatIsNoLetterBreaksNoForm(String escaped) throws IOException {
    Folder folder = new Folder(path);
    folder.sheet("comfort: knee", "comfort: \"a" + escaped + "b\" # knee");
    Run run = folder.check("--forms", "pdf,html,csv,json,svg,png");
    assertThat(run.code()).as(run.err()).isZero();
    byte[] html = Files.readAllBytes(path.resolve("out/stand-report.html"));
    assertThat(new String(html, StandardCharsets.UTF_8))
        .doesNotContainPattern("[\\x00\\x1b\\uFFFF]");
    assertThat(words(Files.readAllBytes(path.resolve("out/stand-report.pdf")))).isNotBlank();
  }

  private static String words(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }
  }
}
