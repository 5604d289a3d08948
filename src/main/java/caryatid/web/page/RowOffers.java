package caryatid.web.page;

import caryatid.entry.form.Answers;
import caryatid.usecase.SuggestedRows;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The usual rows of a form, shown first: one row an item, of which only what is not known is typed.
 *
 * @param rows in the reader's language, choices by their codes
 * @param answers the same as the program knows them
 */
public record RowOffers(List<Map<String, String>> rows, List<Answers> answers) {
  static final RowOffers NONE = new RowOffers(List.of(), List.of());

  public RowOffers {
    rows = List.copyOf(rows);
    answers = List.copyOf(answers);
  }

  public static RowOffers of(SuggestedRows suggested) {
    return suggested.rows().isEmpty() ? NONE : new RowOffers(suggested.words(), suggested.rows());
  }

  /** What is known of a field in a row, counted from 1. */
  Optional<String> offered(int row, String key) {
    return row > rows.size() ? Optional.empty() : Optional.ofNullable(rows.get(row - 1).get(key));
  }

  boolean isOffered(int row, String key) {
    return offered(row, key).isPresent();
  }
}
