package caryatid.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.blackbox.Frozen;
import caryatid.demo.DemoRecord;
import caryatid.demo.PdfText;
import caryatid.entry.form.FormFault;
import caryatid.fitting.RecordCode;
import caryatid.remark.Argument;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.report.FittingReport;
import caryatid.report.pages.Paper;
import caryatid.report.pages.RecordReportData;
import caryatid.store.Store;
import caryatid.views.RecordView;
import caryatid.wording.Wording;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the report says of records that newer and older versions wrote. */
class RecordNotReadTest {
  private static final Wording ENGLISH = Wording.in(Locale.ENGLISH);

  @TempDir private Path folder;

  @Test
  void aRecordThatIsNotReadInFullIsNotSignedAndNotCalledDamaged() throws Exception {
    RecordView view = RecordView.of(new DemoRecord(folder).story().read());
    Problem newer =
        Problem.at(
            Place.of("DEMO-7/v9/content/0009-note/entry.json"),
            FormFault.NEWER_FORM,
            Argument.text("3"));
    RecordView unread =
        new RecordView(
            view.code(),
            view.headDigest(),
            view.newest(),
            view.timeline(),
            view.valid(),
            view.offsets(),
            view.changes(),
            view.open(),
            view.remarks(),
            view.warnings(),
            view.damage(),
            List.of(newer));
    assertThat(PdfText.running(pdf(view)))
        .contains("What a signature vouches for")
        .doesNotContain(UNREAD);
    assertThat(PdfText.running(pdf(unread)))
        .contains(UNREAD)
        .doesNotContain("What a signature vouches for", "is damaged");
  }

  private static final String UNREAD =
      "This record holds entries that this version of the program cannot read. Only the others are"
          + " shown. Do not sign this report.";

  private static byte[] pdf(RecordView view) {
    return FittingReport.pdf(
        new RecordReportData(view, Map.of(), List.of(), List.of()), "test", ENGLISH, Paper.A4);
  }

  /** Version 0.1.0 showed three current values of one item, and two of another. */
  @Test
  void anItemThatOlderEntriesSpellInThreeWaysHasOneRow() throws Exception {
    Path records = Frozen.store("mixed", folder);
    Store store = new Store(records, Duration.ofSeconds(10));
    byte[] pdf = RecordPdf.pdf(store.open(new RecordCode("mixed-1")), List.of(), ENGLISH, Paper.A4);
    String text = PdfText.running(pdf);
    String settings = text.substring(text.indexOf("Settings now"), text.indexOf("What is open"));
    assertThat(settings).containsOnlyOnce("socket flexion 7 deg").containsOnlyOnce("flexion");
    assertThat(settings).containsOnlyOnce("height 901 mm").doesNotContain("900", "Schaftflexion");
    assertThat(text).contains("socket flexion: 5 → 7 deg");
  }
}
