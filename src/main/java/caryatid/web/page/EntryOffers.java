package caryatid.web.page;

import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.StandSummary;
import caryatid.wording.Wording;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The entries that a form can name: a field with an entry's number is chosen by its day and words.
 *
 * @param byField words by the entry's number, by the key of the field
 */
public record EntryOffers(Map<String, Map<String, String>> byField) {
  /** A form that names no entry. */
  public static final EntryOffers NONE = new EntryOffers(Map.of());

  public EntryOffers {
    byField = Map.copyOf(byField);
  }

  /**
   * The entries of a record, the newest first.
   *
   * @param valid those that no other takes the place of
   */
  public static EntryOffers of(List<Entry> valid, Wording wording) {
    Map<String, String> stands = new LinkedHashMap<>();
    Map<String, String> all = new LinkedHashMap<>();
    LocalTimes times = LocalTimes.here(wording);
    for (int i = valid.size() - 1; i >= 0; i--) {
      Entry entry = valid.get(i);
      String worn =
          entry
              .content(StandSummary.class)
              .flatMap(StandSummary::footwear)
              .map(shoe -> ", " + shoe)
              .orElse("");
      String words = times.show(entry.at()) + ", " + wording.word(entry.kind()) + worn;
      String number = Integer.toString(entry.number());
      all.put(number, words);
      if (entry.kind() == EntryKind.STAND) {
        stands.put(number, words);
      }
    }
    return new EntryOffers(Map.of("stand", stands, "entry", all));
  }
}
