package caryatid.web;

import static java.nio.charset.StandardCharsets.UTF_8;

import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.KeptFile;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.usecase.ShowRecord;
import caryatid.usecase.stand.KeptReport;
import caryatid.views.SinceVisit;
import caryatid.web.page.JobStep;
import caryatid.web.page.Markup;
import caryatid.web.page.Reply;
import caryatid.wording.RecordText;
import caryatid.wording.VisitText;
import caryatid.wording.Wording;
import java.net.URLEncoder;
import java.util.List;
import java.util.Optional;

/** Pages on which a record is read. */
final class ShowPage {
  private static final int SHOWN_OF_DIGEST = 16;

  private final WindowState state;
  private final StepForm form;

  ShowPage(WindowState state, StepForm form) {
    this.state = state;
    this.form = form;
  }

  /** The record as the command line shows it. */
  Reply timeline(OpenRecord record) {
    Markup content = RecordFiles.actions(record);
    damage(content, record);
    Wording wording = record.wording();
    List<String> all = RecordText.lines(record.view(), wording);
    lines(content, all.subList(1, all.size()));
    CorrectPage.offer(content, record);
    files(content, record);
    digest(content, record.head().digest(), wording);
    return record.page(content);
  }

  /** The sum by which a printed record is known again: its beginning, the rest on request. */
  private static void digest(Markup content, String digest, Wording wording) {
    String begins = digest.substring(0, Math.min(SHOWN_OF_DIGEST, digest.length()));
    content.open("details", "class", "latest");
    content.element("summary", wording.fill("Web.digest", Argument.text(begins)));
    content.element("p", digest, "class", "digest").close("details");
  }

  /** What was kept with the entries, the newest first. */
  private static void files(Markup content, OpenRecord record) {
    List<Entry> all = record.view().timeline().stream().map(row -> row.entry()).toList();
    if (all.stream().allMatch(entry -> entry.files().isEmpty())) {
      return;
    }
    Wording wording = record.wording();
    content.element("h2", wording.word("Web.keptFiles")).open("ul", "class", "facts kept-files");
    for (int i = all.size() - 1; i >= 0; i--) {
      Entry entry = all.get(i);
      if (!entry.files().isEmpty()) {
        content.open("li").element("p", RecordFiles.about(entry, wording));
        entry.files().forEach(file -> file(content, record, entry, file));
        content.close("li");
      }
    }
    content.close("ul");
  }

  private static void file(Markup content, OpenRecord record, Entry entry, KeptFile file) {
    String address =
        file.is() == KeptFile.Role.REPORT
            ? record.base() + "/report/" + entry.number()
            : record.base()
                + "/file/"
                + entry.number()
                + "?name="
                + URLEncoder.encode(file.name(), UTF_8);
    content.element("a", file.name(), "href", address);
  }

  /** A file that was kept with an entry. */
  Reply file(OpenRecord record, String entry, String name) throws BadInput {
    if (!entry.matches("\\d{1,6}")) {
      return Pages.missing(record.wording());
    }
    return KeptReport.file(state.records(), record.code(), Integer.parseInt(entry), name)
        .map(bytes -> Reply.download(name, "application/octet-stream", bytes))
        .orElseGet(() -> Pages.missing(record.wording()));
  }

  /** A photograph that was kept with an entry, to be shown. */
  Reply picture(OpenRecord record, String entry, String name) throws BadInput {
    boolean photograph =
        entry.matches("\\d{1,6}")
            && record.view().timeline().stream()
                .map(row -> row.entry())
                .filter(kept -> kept.number() == Integer.parseInt(entry))
                .flatMap(kept -> kept.files().stream())
                .anyMatch(
                    file -> file.is() == KeptFile.Role.PHOTOGRAPH && file.name().equals(name));
    return photograph
        ? KeptReport.file(state.records(), record.code(), Integer.parseInt(entry), name)
            .map(EntryPhotographs::picture)
            .orElseGet(() -> Pages.missing(record.wording()))
        : Pages.missing(record.wording());
  }

  /** The report that was kept with a stand. */
  Reply report(OpenRecord record, String entry) throws BadInput {
    if (!entry.matches("\\d{1,6}")) {
      return Pages.missing(record.wording());
    }
    int number = Integer.parseInt(entry);
    return KeptReport.of(state.records(), record.code(), number)
        .map(pdf -> Reply.download("stand-" + number + ".pdf", "application/pdf", pdf))
        .orElseGet(() -> Pages.missing(record.wording()));
  }

  /** What is new since the last visit, and what has changed since then is asked. */
  Reply arriving(OpenRecord record) throws BadInput, StoreFailure {
    Markup content = new Markup();
    damage(content, record);
    Optional<Markup> last = LastVisit.before(record, state.records().now().toLocalDate());
    last.ifPresent(content::add);
    if (record.view().notShown().isEmpty()) {
      Optional<SinceVisit> since =
          ShowRecord.since(state.records(), record.code(), Optional.empty());
      if (since.isPresent()) {
        content.open("details", "class", "latest");
        content.element("summary", record.wording().word("Web.sinceVisit"));
        lines(content, VisitText.lines(since.get(), record.view(), record.wording()));
        content.close("details");
      } else {
        content.element("p", record.wording().word("Web.firstVisit"));
      }
    }
    EntryKind kind = JobStep.ARRIVING.kinds().get(0);
    content.element("h2", record.wording().word("Web.changedSince"));
    content.add(form.form(record, JobStep.ARRIVING, kind, form.drafted(record, kind)));
    return record.keeping(200, JobStep.ARRIVING, content);
  }

  private static void damage(Markup content, OpenRecord record) {
    if (!record.view().notShown().isEmpty()) {
      content.open("div", "class", "fault", "role", "alert");
      record.view().notShown().forEach(p -> content.element("p", record.wording().say(p)));
      content.close("div");
    }
  }

  static void lines(Markup content, List<String> lines) {
    content.open("div", "class", "lines");
    lines.forEach(line -> content.element("p", line, "class", look(line)));
    content.close("div");
  }

  /** An entry begins with its number and time; what it says stands within it. */
  private static String look(String line) {
    if (line.matches(" {2,}\\d+ {2}\\d{4}-.*")) {
      return "within begins";
    }
    return isWithin(line) ? "within" : "line";
  }

  private static boolean isWithin(String line) {
    return line.startsWith("  ");
  }
}
