package caryatid.web;

import static java.net.URLEncoder.encode;
import static java.nio.charset.StandardCharsets.UTF_8;

import caryatid.entry.Entry;
import caryatid.entry.KeptFile;
import caryatid.entry.form.Answers;
import caryatid.entry.form.ContentToAnswers;
import caryatid.remark.Argument;
import caryatid.usecase.SuggestedRows;
import caryatid.usecase.stand.AlignmentChange;
import caryatid.web.page.ChangeMarkup;
import caryatid.web.page.Markup;
import caryatid.web.page.PhotographMarkup;
import caryatid.wording.EntryWords;
import caryatid.wording.RecordText;
import caryatid.wording.Wording;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The last visit in a few lines: comfort, skin, what is open, what is set, photographs. */
final class LastVisit {
  /** Open items that are shown; all of them stand below. */
  private static final int SHOWN = 3;

  private static final List<String> SAID =
      List.of("socket-comfort", "comfort", "pain", "skin", "wearer-says", "next-visit");

  private final OpenRecord record;
  private final Wording wording;
  private final List<Entry> entries;
  private final Markup out = new Markup();

  private LastVisit(OpenRecord record, List<Entry> entries) {
    this.record = record;
    this.wording = record.wording();
    this.entries = entries;
  }

  /**
   * The visit before today's.
   *
   * @return empty where there was none
   */
  static Optional<Markup> before(OpenRecord record, LocalDate today) {
    List<Entry> valid = record.view().valid();
    return valid.stream()
        .map(entry -> entry.at().toLocalDate())
        .filter(day -> day.isBefore(today))
        .max(LocalDate::compareTo)
        .map(
            day ->
                new LastVisit(
                        record,
                        valid.stream().filter(e -> e.at().toLocalDate().equals(day)).toList())
                    .of(day));
  }

  private Markup of(LocalDate day) {
    out.open("section", "class", "last-visit");
    out.element("h2", wording.fill("Web.lastVisit", Argument.text(day.toString())));
    out.open("ul", "class", "facts");
    SAID.forEach(this::said);
    open();
    set();
    out.close("ul");
    photographs();
    return out.close("section");
  }

  /** What was said of something last on that day. */
  private void said(String key) {
    EntryWords words = new EntryWords(wording);
    entries.stream()
        .map(
            entry ->
                Optional.ofNullable(ContentToAnswers.answers(entry.content()).values().get(key)))
        .flatMap(Optional::stream)
        .filter(value -> !(value instanceof Answers.Value.Rows))
        .reduce((earlier, later) -> later)
        .ifPresent(value -> out.element("li", words.label(key) + ": " + words.value(key, value)));
  }

  private void open() {
    List<String> open =
        RecordText.open(record.view(), wording).stream().map(String::strip).toList();
    open.stream()
        .limit(SHOWN)
        .forEach(line -> out.element("li", wording.word("Web.openItem") + ": " + line));
    if (open.size() > SHOWN) {
      out.element("li", wording.fill("Web.more", Argument.count(open.size() - SHOWN)));
    }
  }

  private void set() {
    AlignmentChange settings =
        AlignmentChange.of(record.view().valid(), SuggestedRows.none(wording), wording);
    List<String> set =
        Stream.concat(settings.offered().stream(), settings.fasteners().stream())
            .map(one -> ChangeMarkup.nameAndNow(one, wording))
            .toList();
    if (!set.isEmpty()) {
      out.element("li", wording.word("Web.setNow") + ": " + String.join("; ", set));
    }
  }

  private void photographs() {
    out.open("ul", "class", "pictures");
    for (Entry entry : entries) {
      for (KeptFile file : entry.files()) {
        if (file.is() == KeptFile.Role.PHOTOGRAPH) {
          String address =
              record.base() + "/picture/" + entry.number() + "?name=" + encode(file.name(), UTF_8);
          PhotographMarkup.picture(out.open("li"), address, file.name(), wording);
          out.close("li");
        }
      }
    }
    out.close("ul");
  }
}
