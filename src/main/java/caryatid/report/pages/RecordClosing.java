package caryatid.report.pages;

import caryatid.entry.Entry;
import caryatid.report.pages.Block.Heading;
import caryatid.report.pages.Block.Prose;
import caryatid.report.pages.Block.Table;
import caryatid.report.pages.Block.TableColumn;
import caryatid.views.RecordView;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The end of a record's report: who did what, the cautions, and which files it is made from. */
public final class RecordClosing {
  private final RecordView view;
  private final String program;
  private final Wording wording;

  public RecordClosing(RecordView view, String program, Wording wording) {
    this.view = view;
    this.program = program;
    this.wording = wording;
  }

  public List<Block> blocks() {
    return List.of(
        new Heading(wording.word("FittingReport.WHO")),
        who(),
        new Heading(wording.word("SecondPage.CAUTIONS")),
        new Prose(SecondPage.cautions(wording), false),
        new Heading(wording.word("SecondPage.ORIGIN")),
        new Prose(program, false));
  }

  private Table who() {
    Map<String, List<Entry>> by = new LinkedHashMap<>();
    view.timeline()
        .forEach(
            line ->
                by.computeIfAbsent(line.entry().by(), b -> new ArrayList<>()).add(line.entry()));
    List<TableColumn> columns =
        List.of(column("INITIALS", 16), column("FROM", 36), column("TO", 36), column("DID", 102));
    return new Table(
        columns, by.entrySet().stream().map(e -> row(e.getKey(), e.getValue())).toList());
  }

  private TableColumn column(String name, double parts) {
    return new TableColumn(wording.word("FittingReport." + name), parts, false);
  }

  private List<String> row(String initials, List<Entry> entries) {
    Map<String, List<String>> kinds = new LinkedHashMap<>();
    entries.forEach(
        e ->
            kinds
                .computeIfAbsent(wording.word(e.kind()), k -> new ArrayList<>())
                .add(Integer.toString(e.number())));
    String did =
        kinds.entrySet().stream()
            .map(k -> k.getKey() + " (" + String.join(", ", k.getValue()) + ")")
            .collect(Collectors.joining(", "));
    return List.of(
        initials,
        EntryTimes.moment(entries.get(0)),
        EntryTimes.moment(entries.get(entries.size() - 1)),
        did);
  }
}
