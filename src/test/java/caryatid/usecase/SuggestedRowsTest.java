package caryatid.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.entry.BenchItem;
import caryatid.entry.EntryKind;
import caryatid.entry.form.Answers;
import caryatid.sheet.AmputationLevel;
import caryatid.wording.Wording;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SuggestedRowsTest {
  private static final Wording WORDING = Wording.in(Locale.ENGLISH);

  @Test
  void theItemsOfTheBenchAreOfferedByLevel() {
    SuggestedRows below =
        SuggestedRows.of(EntryKind.BENCH_ALIGNMENT, AmputationLevel.TRANSTIBIAL, WORDING);
    SuggestedRows above =
        SuggestedRows.of(EntryKind.BENCH_ALIGNMENT, AmputationLevel.TRANSFEMORAL, WORDING);
    assertThat(below.named("knee axis height")).isEmpty();
    assertThat(above.named("knee axis height")).contains(item(BenchItem.KNEE_HEIGHT, "mm"));
    assertThat(below.named("1")).contains(item(BenchItem.SOCKET_FLEXION, "deg"));
    assertThat(below.named(" Schaftflexion")).contains(item(BenchItem.SOCKET_FLEXION, "deg"));
    assertThat(below.name(0)).isEqualTo("socket flexion");
    assertThat(SuggestedRows.of(EntryKind.LEG_LENGTH, AmputationLevel.TRANSTIBIAL, WORDING))
        .isEqualTo(SuggestedRows.none(WORDING));
  }

  private static Answers item(BenchItem item, String unit) {
    Map<String, Answers.Value> row = new LinkedHashMap<>();
    row.put("item", new Answers.Value.Name(Optional.of(item), ""));
    row.put("unit", new Answers.Value.Words(unit));
    return new Answers(row);
  }
}
