package caryatid.store;

import static caryatid.demo.Invented.CODE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import caryatid.demo.Invented;
import caryatid.entry.Entry;
import caryatid.entry.Note;
import caryatid.fitting.FittingRecord;
import caryatid.fitting.UnreadableEntry;
import caryatid.format.EntryJson;
import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import caryatid.views.LostEntryRemark;
import caryatid.wording.Wording;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An older program that meets an entry it does not know shows that, and adds nothing. */
class NewerEntryTest {
  private static final String NEWER =
      "K7-right/v2/content/0002-note/entry.json: written by a newer version of this program (form"
          + " 3). Use that version.";

  @TempDir private Path folder;
  private Store store;

  @BeforeEach
  void start() throws BadInput, StoreFailure {
    store = Invented.store(folder);
    store.start(CODE, Invented.opening());
  }

  @Test
  void anEntryOfANewerVersionIsNoDamageAndNothingIsAddedToIt() throws Exception {
    add("\"fitting-entry\" : 3, \"new\" : [");
    FittingRecord record = store.read(CODE);
    assertThat(record.damage()).isEmpty();
    assertThat(record.entries()).hasSize(1);
    assertThat(record.unread())
        .extracting(UnreadableEntry::number, UnreadableEntry::newer)
        .hasSize(1);
    assertThat(record.unread().get(0).newer()).isTrue();
    assertThat(words(record.notShown())).containsExactly(NEWER);
    assertThat(store.verify(CODE)).isEmpty();
    assertThat(remarks(record))
        .containsExactly(
            "Entry 2 was written by a newer version of this program and is not shown. What is shown"
                + " as current may be older than it, or what it corrects.");
    assertThatThrownBy(() -> store.add(CODE, Invented.note("later")))
        .isInstanceOfSatisfying(
            BadInput.class, e -> assertThat(words(e.problems())).containsExactly(NEWER));
    assertThat(store.read(CODE).size()).isEqualTo(2);
  }

  @Test
  void whatIsNoEntryIsNoDamageEither() throws Exception {
    add("\"fitting-entry\" : 1, \"new\" : [");
    FittingRecord record = store.read(CODE);
    assertThat(record.damage()).isEmpty();
    assertThat(record.unread().get(0).newer()).isFalse();
    assertThat(words(record.notShown()))
        .containsExactly(
            "K7-right/v2/content/0002-note/entry.json line 2, column 32: unknown key new. Known"
                + " here: fitting-entry, number, kind, at, by, corrects, because, as-of, files.");
    assertThat(remarks(record))
        .containsExactly(
            "Entry 2 is unchanged since it was added, but cannot be read. What is shown as current"
                + " may be older than it, or what it corrects.");
    assertThatThrownBy(() -> store.add(CODE, Invented.note("later"))).isInstanceOf(BadInput.class);
    assertThat(store.verify(CODE)).isEmpty();
  }

  /** Adds a note whose JSON begins otherwise; its sums are right. */
  private void add(String begins) throws BadInput, StoreFailure, IOException {
    Entry note =
        new Entry(2, Invented.AT, "AB", Optional.empty(), new Note("from the future"), List.of());
    String json = new String(EntryJson.write(note), StandardCharsets.UTF_8);
    String changed = json.replaceFirst("\"fitting-entry\" : \\d,", begins + "{\"deep\" : 1}],");
    try (StagingArea staging = new StagingArea(new StoreFolder(folder), CODE)) {
      staging.writer().add(note, changed.getBytes(StandardCharsets.UTF_8), List.of());
    }
  }

  private static List<String> words(List<Problem> problems) {
    return problems.stream().map(Wording.in(Locale.ENGLISH)::say).toList();
  }

  private static List<String> remarks(FittingRecord record) {
    return LostEntryRemark.of(record).stream().map(Wording.in(Locale.ENGLISH)::say).toList();
  }
}
