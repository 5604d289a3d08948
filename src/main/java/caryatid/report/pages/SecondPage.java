package caryatid.report.pages;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.MovedLines;
import caryatid.alignment.Result;
import caryatid.alignment.Stand;
import caryatid.recording.model.Provenance;
import caryatid.recording.model.Recording;
import caryatid.remark.Argument;
import caryatid.remark.Weight;
import caryatid.report.pages.Block.Bullet;
import caryatid.report.pages.Block.Fact;
import caryatid.report.pages.Block.Facts;
import caryatid.report.pages.Block.Heading;
import caryatid.report.pages.Block.Points;
import caryatid.report.pages.Block.Prose;
import caryatid.wording.LandmarkWords;
import caryatid.wording.OffsetWords;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Page two of a check's report: the numbers behind page one, and how they were found. */
public final class SecondPage {
  /** The cautions of every report, in their order. */
  private static final int CAUTIONS = 9;

  /** So many digits of a checksum are enough to tell files apart by eye. */
  private static final int DIGITS = 16;

  private final Result result;
  private final AlignmentState state;
  private final int layout;
  private final List<Recording> recordings;
  private final Wording wording;

  /**
   * @param layout the number of the page's layout
   */
  public SecondPage(Result result, List<Recording> recordings, int layout, Wording wording) {
    this.result = result;
    this.state = result.state();
    this.layout = layout;
    this.recordings = recordings;
    this.wording = wording;
  }

  /**
   * @param notes whether the notes stand here
   */
  public List<Block> blocks(boolean notes) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Heading(wording.word("FirstPage.FINDINGS")));
    FindingsTable findings = new FindingsTable(state, wording);
    blocks.add(findings.results());
    findings.explanation().ifPresent(words -> blocks.add(new Prose(words, false)));
    LandmarkWords.open(state.trial(), wording)
        .ifPresent(words -> blocks.add(new Prose(words, false)));
    findings.sources().ifPresent(words -> blocks.add(new Prose(words, false)));
    moved().ifPresent(words -> blocks.add(new Prose(words, false)));
    blocks.add(heading("METHOD"));
    blocks.add(new Prose(wording.word("SecondPage.HOW"), false));
    blocks.add(heading("CERTAINTY"));
    UncertaintyTable certainty = new UncertaintyTable(state, wording);
    blocks.add(certainty.budget());
    blocks.add(heading("STANDS"));
    StandTable stands = new StandTable(state.stands(), wording);
    blocks.add(stands.stretches());
    blocks.add(stands.loads());
    blocks.add(new Prose(stands.explanation(), false));
    if (!recordings.isEmpty()) {
      blocks.addAll(new StandDrawings(state.stands(), recordings, wording).first());
    }
    if (state.stands().size() == 1) {
      moments(blocks);
    }
    if (notes) {
      notes(blocks);
    }
    if (state.stands().size() == 1) {
      last(blocks);
    }
    return blocks;
  }

  /** How the foot's and the whole body's line moved since the state before. */
  private Optional<String> moved() {
    List<MovedLines> all =
        result.before().map(before -> MovedLines.since(before, state)).orElse(List.of());
    String each = all.stream().map(this::moved).collect(Collectors.joining("; "));
    return all.isEmpty()
        ? Optional.empty()
        : Optional.of(wording.fill("SecondPage.MOVED", Argument.text(each)));
  }

  private String moved(MovedLines moved) {
    OffsetWords offsets = new OffsetWords(wording);
    LandmarkWords names = new LandmarkWords(wording, state.trial());
    return wording.fill(
        "SecondPage.MOVED_AT",
        Argument.text(names.name(moved.at().landmark(), moved.at().side())),
        Argument.term(moved.at().side()),
        Argument.text(offsets.distance(moved.at().plane(), moved.footMm())),
        Argument.text(offsets.distance(moved.at().plane(), moved.bodyMm())));
  }

  private void last(List<Block> blocks) {
    blocks.add(heading("CAUTIONS"));
    blocks.add(new Prose(cautions(wording), false));
    blocks.add(heading("ORIGIN"));
    blocks.add(new Facts(origin()));
  }

  private Heading heading(String of) {
    return new Heading(wording.word("SecondPage." + of));
  }

  /** What of several stands has no room on page two; empty for one stand. */
  public List<Block> further() {
    if (state.stands().size() == 1) {
      return List.of();
    }
    List<Block> blocks = new ArrayList<>();
    if (!recordings.isEmpty()) {
      blocks.add(heading("OTHER_STANDS"));
      blocks.addAll(new StandDrawings(state.stands(), recordings, wording).others());
    }
    moments(blocks);
    last(blocks);
    return blocks;
  }

  private void moments(List<Block> blocks) {
    new MomentTable(state.stands(), wording)
        .table()
        .ifPresent(
            table -> {
              blocks.add(heading("MOMENTS"));
              blocks.add(table);
            });
  }

  private void notes(List<Block> blocks) {
    List<Bullet> notes = new RemarkList(state, wording).of(Weight.NOTE);
    if (!notes.isEmpty()) {
      blocks.add(heading("NOTES"));
      blocks.add(new Points(2, notes));
    }
  }

  static String cautions(Wording wording) {
    return IntStream.rangeClosed(1, CAUTIONS)
        .mapToObj(i -> wording.word("SecondPage.CAUTION." + i))
        .collect(Collectors.joining(" "));
  }

  private List<Fact> origin() {
    List<Fact> facts = new ArrayList<>();
    facts.add(
        new Fact(
            wording.word("SecondPage.PROGRAM"),
            wording.fill(
                "SecondPage.NUMBERS",
                Argument.text(result.program()),
                Argument.count(result.method()),
                Argument.count(layout))));
    Stand first = state.stands().get(0);
    state.stands().forEach(stand -> facts.add(file("RECORDING", stand.recording())));
    facts.add(file("SHEET", first.sheet()));
    first.description().ifPresent(description -> facts.add(file("DESCRIPTION", description)));
    result.earlier().ifPresent(earlier -> facts.add(file("EARLIER", earlier.file())));
    facts.add(
        new Fact(
            wording.word("SecondPage.CHECKSUMS"), wording.word("SecondPage.CHECKSUMS_IN_FULL")));
    return facts;
  }

  private Fact file(String label, Provenance file) {
    return new Fact(
        wording.word("SecondPage." + label),
        wording.fill(
            "SecondPage.FILE",
            Argument.text(file.name()),
            Argument.text(file.sha512().substring(0, DIGITS))));
  }
}
