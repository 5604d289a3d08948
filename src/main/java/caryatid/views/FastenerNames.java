package caryatid.views;

import caryatid.entry.BenchAlignment;
import caryatid.entry.Entry;
import caryatid.entry.EntryContent;
import caryatid.entry.EntryQuestion;
import caryatid.entry.TermOrText;
import caryatid.remark.Argument;
import caryatid.remark.Question;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.stream.Collectors;

/** Asks about fasteners whose name is nearly that of one in the record. */
public final class FastenerNames {
  private FastenerNames() {}

  /**
   * The questions; a note in the row answers.
   *
   * @param valid the entries of the record that are valid, in order of time
   * @param added what is to be added
   * @param slip whether a name differs from another by no more than a slip of the pen
   */
  public static List<Question> questions(
      List<Entry> valid, EntryContent added, BiPredicate<String, String> slip) {
    List<Question> questions = new ArrayList<>();
    if (added instanceof BenchAlignment bench) {
      Set<BenchAlignment.ItemKey> here =
          bench.items().stream().map(BenchAlignment.Item::key).collect(Collectors.toSet());
      List<BenchAlignment.Item> known = known(valid);
      for (int i = 0; i < bench.items().size(); i++) {
        String row = "items[" + (i + 1) + "]";
        BenchAlignment.Item item = bench.items().get(i);
        if (item.note().isEmpty() && known.stream().noneMatch(k -> k.key().equals(item.key()))) {
          nearest(known, item, slip)
              .filter(near -> !here.contains(near.key()))
              .ifPresent(near -> questions.add(question(row, item, near)));
        }
      }
    }
    return List.copyOf(questions);
  }

  private static List<BenchAlignment.Item> known(List<Entry> valid) {
    return CurrentSetting.of(valid).stream()
        .map(CurrentSetting::row)
        .filter(row -> row.fastener().isPresent())
        .toList();
  }

  private static Optional<BenchAlignment.Item> nearest(
      List<BenchAlignment.Item> known, BenchAlignment.Item item, BiPredicate<String, String> slip) {
    return item.fastener()
        .flatMap(
            name ->
                known.stream()
                    .filter(k -> k.side().equals(item.side()))
                    .filter(k -> isNear(name, k.fastener().orElseThrow(), slip))
                    .findFirst());
  }

  /** Either has all the words of the other, or they differ by a slip of the pen. */
  private static boolean isNear(String one, String other, BiPredicate<String, String> slip) {
    Set<String> words = words(one);
    Set<String> others = words(other);
    return words.containsAll(others) || others.containsAll(words) || slip.test(one, other);
  }

  private static Set<String> words(String name) {
    return Arrays.stream(TermOrText.fold(name).split("\\P{L}+"))
        .filter(word -> !word.isEmpty())
        .collect(Collectors.toSet());
  }

  private static Question question(
      String row, BenchAlignment.Item item, BenchAlignment.Item known) {
    return Question.ofField(
        EntryQuestion.NEARLY_FASTENER,
        row + ".note",
        "another fastener",
        Argument.text(row + ".fastener"),
        Argument.text(item.fastener().orElseThrow()),
        Argument.text(known.fastener().orElseThrow()));
  }
}
