package caryatid.web;

import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import caryatid.report.pages.Paper;
import caryatid.usecase.CompareStates;
import caryatid.usecase.PackRecord;
import caryatid.usecase.RecordReport;
import caryatid.usecase.VerifyRecord;
import caryatid.usecase.file.LocalFiles;
import caryatid.usecase.file.Output;
import caryatid.web.page.JobStep;
import caryatid.web.page.Markup;
import caryatid.web.page.Reply;
import caryatid.web.page.Request;
import caryatid.web.page.VerifiedMarkup;
import caryatid.wording.ChangeText;
import caryatid.wording.ComparisonText;
import caryatid.wording.RecordText;
import caryatid.wording.Wording;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** A record's report and its packed file to be saved, its check, and two of its states compared. */
final class RecordFiles {
  private static final LocalFiles FILES = new LocalFiles();

  private static final int NOT_COMPARED = 0;

  /** A change that was intended. */
  private static final Pattern MM = Pattern.compile("\\d{1,3}(?:[.,]\\d{1,2})?");

  private final WindowState state;
  private final Uploads uploads;

  RecordFiles(WindowState state, Uploads uploads) {
    this.state = state;
    this.uploads = uploads;
  }

  /** The record as files to be saved. */
  static Markup toSave(OpenRecord record) {
    return saved(record, new Markup().open("ul", "class", "actions")).close("ul");
  }

  private static Markup saved(OpenRecord record, Markup out) {
    Wording wording = record.wording();
    action(out, record.base() + "/pdf?paper=a4", wording.word("Web.reportA4"));
    action(out, record.base() + "/pdf?paper=letter", wording.word("Web.reportLetter"));
    action(out, record.base() + "/pack", wording.word("Web.pack"));
    action(out, record.base() + "/bundle", wording.word("Web.bundle.title"));
    return out;
  }

  /** What can be done with a record as it is. */
  static Markup actions(OpenRecord record) {
    Wording wording = record.wording();
    Markup out = saved(record, new Markup().open("ul", "class", "actions"));
    String arriving = record.address(JobStep.ARRIVING);
    action(out, arriving, wording.word("Web.sinceVisit"));
    action(out, record.base() + "/verify", wording.word("Web.verify"));
    action(out, record.base() + "/compare", wording.word("Web.compare"));
    action(out, record.base() + "/erase", wording.word("Web.erase"));
    return out.close("ul");
  }

  private static void action(Markup out, String address, String words) {
    out.open("li").element("a", words, "class", "button", "href", address).close("li");
  }

  /** The report of the record, as a file to be saved. */
  Reply report(Request request, OpenRecord record) throws BadInput, StoreFailure, IOException {
    boolean letter = request.field("paper").equals(Optional.of("letter"));
    Path made = uploads.free();
    try {
      RecordReport.write(
          state.records(),
          record.code(),
          record.wording(),
          letter ? Paper.LETTER : Paper.A4,
          new Output(made, false),
          FILES);
      return Reply.download(record.code() + ".pdf", "application/pdf", made);
    } catch (BadInput | StoreFailure | RuntimeException e) {
      Files.deleteIfExists(made);
      throw e;
    }
  }

  /** The packed record, as a file to be saved. */
  Reply pack(OpenRecord record) throws BadInput, StoreFailure, IOException {
    Path made = uploads.free();
    try {
      PackRecord.run(state.records(), record.code(), made, record.wording(), FILES);
      return Reply.download(record.code() + ".zip", "application/zip", made);
    } catch (BadInput | StoreFailure | RuntimeException e) {
      Files.deleteIfExists(made);
      throw e;
    }
  }

  /** Every byte against its sum. */
  Reply verify(OpenRecord record) throws BadInput, StoreFailure {
    Markup content =
        VerifiedMarkup.of(
            record.code(), VerifyRecord.run(state.records(), record.code()), record.wording());
    return record.page(200, Optional.empty(), record.wording().word("Web.verify"), content);
  }

  /** What differs between two states, each as it was after an entry. */
  Reply compare(Request request, OpenRecord record) throws BadInput {
    Optional<Integer> from = number(request, "from");
    Optional<Integer> to = number(request, "to");
    Optional<Integer> back = number(request, "back");
    Optional<String> intended =
        request.field("intended").filter(text -> MM.matcher(text).matches());
    Markup content = choice(record, from, to, back, intended);
    if (from.isPresent() && to.isPresent()) {
      CompareStates.Compared compared =
          CompareStates.run(state.records(), record.code(), from.get(), to.get());
      Wording wording = record.wording();
      List<String> lines = new ArrayList<>(RecordText.remarks(compared.lost(), wording));
      lines.addAll(ComparisonText.lines(compared.comparison(), wording));
      lines.addAll(
          ChangeText.lines(
              compared.changes(),
              compared.comparison().prostheticKnee(),
              intended.stream()
                  .mapToDouble(mm -> Double.parseDouble(mm.replace(',', '.')))
                  .findFirst(),
              wording));
      if (back.isPresent()) {
        CompareStates.Back again =
            CompareStates.back(state.records(), record.code(), from.get(), to.get(), back.get());
        lines.addAll(
            ChangeText.back(
                back.get(),
                again.sameSetting(),
                again.changes(),
                compared.comparison().prostheticKnee(),
                wording));
      }
      compared.damage().stream().map((Problem p) -> wording.say(p)).forEach(lines::add);
      ShowPage.lines(content, lines);
    }
    return record.page(200, Optional.empty(), record.wording().word("Web.compare"), content);
  }

  private static Optional<Integer> number(Request request, String name) {
    return request.field(name).filter(text -> text.matches("\\d{1,6}")).map(Integer::valueOf);
  }

  private static Markup choice(
      OpenRecord record,
      Optional<Integer> from,
      Optional<Integer> to,
      Optional<Integer> back,
      Optional<String> intended) {
    Wording wording = record.wording();
    Markup out = new Markup().open("form", "action", record.base() + "/compare", "class", "entry");
    entries(
        out,
        record,
        "from",
        wording.word("Web.compareFrom"),
        from.orElse(stood(record, 2).orElse(Math.max(1, record.head().newest() - 1))));
    int last = stood(record, 1).orElse(record.head().newest());
    entries(out, record, "to", wording.word("Web.compareTo"), to.orElse(last));
    if (record.head().newest() > 2) {
      entries(out, record, "back", wording.word("Web.compareBack"), back.orElse(NOT_COMPARED));
    }
    out.open("div", "class", "field")
        .element("label", wording.word("Web.compareIntended"), "for", "intended")
        .open(
            "input",
            "id",
            "intended",
            "name",
            "intended",
            "inputmode",
            "decimal",
            "value",
            intended.orElse(""))
        .close("div");
    return out.element("button", wording.word("Web.compare")).close("form");
  }

  /** The entry of the last stand, or of one before it; empty where there are not two. */
  private static Optional<Integer> stood(OpenRecord record, int fromLast) {
    List<Integer> stands =
        record.view().valid().stream()
            .filter(entry -> entry.kind() == EntryKind.STAND)
            .map(Entry::number)
            .toList();
    return stands.size() < 2 ? Optional.empty() : Optional.of(stands.get(stands.size() - fromLast));
  }

  private static void entries(
      Markup out, OpenRecord record, String name, String label, int chosen) {
    out.open("div", "class", "field").element("label", label, "for", name);
    out.open("select", "id", name, "name", name);
    if (name.equals("back")) {
      String none = record.wording().word("Web.compareBackNone");
      out.element("option", none, "value", "", chosen == NOT_COMPARED ? "selected" : "", "");
    }
    for (int i = 1; i <= record.head().newest(); i++) {
      String number = Integer.toString(i);
      String words = number + about(record, i);
      out.element("option", words, "value", number, i == chosen ? "selected" : "", "");
    }
    out.close("select").close("div");
  }

  /** The kind and the day of an entry; nothing of one that is damaged. */
  private static String about(OpenRecord record, int number) {
    return record.view().valid().stream()
        .filter(entry -> entry.number() == number)
        .map(entry -> about(entry, record.wording()).substring(Integer.toString(number).length()))
        .findFirst()
        .orElse("");
  }

  /** The number, the kind and the day of an entry. */
  static String about(Entry entry, Wording wording) {
    return entry.number() + ": " + wording.word(entry.kind()) + ", " + entry.at().toLocalDate();
  }
}
