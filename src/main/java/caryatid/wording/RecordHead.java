package caryatid.wording;

import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.RecordOpening;
import caryatid.entry.StandSummary;
import caryatid.geometry.Side;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.views.OpenIssue;
import caryatid.views.RecordView;
import caryatid.views.StandWarnings.Warning;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What of a record must be in sight at every step: whose leg, on which side, and what is unsafe.
 *
 * @param code the record's code
 * @param wearer the wearer's code
 * @param left whether the left leg has a prosthesis
 * @param right whether the right leg has one
 * @param side the side in words
 * @param level the level of amputation in words
 * @param footwear what the wearer stood in last, with its heel, in words
 * @param unsafe what is unsafe, the worst first
 * @param kinds of which kinds there are entries
 * @param newest number of the newest entry
 * @param digest changes whenever the record does
 */
public record RecordHead(
    String code,
    String wearer,
    boolean left,
    boolean right,
    String side,
    String level,
    Optional<String> footwear,
    List<Unsafe> unsafe,
    Set<EntryKind> kinds,
    int newest,
    String digest) {

  /**
   * Something unsafe.
   *
   * @param words what it is
   * @param stand the stand it was seen in, by which it can be answered
   * @param answered whether somebody took it as it is, which the words tell
   * @param torque whether it asks for the torque of fasteners
   */
  public record Unsafe(String words, OptionalInt stand, boolean answered, boolean torque) {}

  public RecordHead {
    unsafe = List.copyOf(unsafe);
    kinds = Set.copyOf(kinds);
  }

  /** The head of a record; of one whose opening cannot be read, no more than its code is known. */
  public static RecordHead of(RecordView view, Wording wording) {
    Optional<RecordOpening> opening = Entry.contents(view.valid(), RecordOpening.class).findFirst();
    Set<Side> sides = EnumSet.noneOf(Side.class);
    opening.ifPresent(o -> sides.addAll(o.side().sides()));
    Set<EntryKind> kinds = EnumSet.noneOf(EntryKind.class);
    view.valid().forEach(entry -> kinds.add(entry.kind()));
    return new RecordHead(
        view.code().text(),
        opening.map(RecordOpening::wearer).orElse(view.code().text()),
        sides.contains(Side.LEFT),
        sides.contains(Side.RIGHT),
        opening.map(o -> wording.word(o.side())).orElse(""),
        opening.map(o -> wording.word(o.level())).orElse(""),
        footwear(view, wording),
        unsafe(view, wording),
        kinds,
        view.newest(),
        view.headDigest());
  }

  private static Optional<String> footwear(RecordView view, Wording wording) {
    return Entry.latest(view.valid(), StandSummary.class)
        .flatMap(
            stand ->
                stand
                    .footwear()
                    .map(
                        worn ->
                            worn + stand.heelHeightMm().map(mm -> heel(mm, wording)).orElse("")));
  }

  private static String heel(BigDecimal mm, Wording wording) {
    return ", " + wording.fill("Web.heel", Argument.text(wording.exact(mm)));
  }

  private static List<Unsafe> unsafe(RecordView view, Wording wording) {
    LandmarkWords landmarks = LandmarkWords.of(view, wording);
    WarningWords words = new WarningWords(wording, landmarks);
    List<Unsafe> unsafe = new ArrayList<>();
    for (Warning warning : view.warnings().all()) {
      if (warning.said().remark().topic().isSafety()) {
        OptionalInt stand = OptionalInt.of(warning.stand().number());
        unsafe.add(new Unsafe(words.say(warning), stand, !warning.accepted().isEmpty(), false));
      }
    }
    Stream.concat(view.open().stream(), view.remarks().stream())
        .filter(remark -> remark.topic().isSafety())
        .map(
            (Remark remark) ->
                new Unsafe(
                    landmarks.say(remark),
                    OptionalInt.empty(),
                    false,
                    remark.topic() == OpenIssue.FASTENERS_NOT_STATED))
        .forEach(unsafe::add);
    return unsafe;
  }
}
