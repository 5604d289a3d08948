package caryatid.recording.track;

import caryatid.geometry.Axis;
import caryatid.recording.model.Channel;
import caryatid.recording.table.ColumnMeaning;
import caryatid.recording.table.ColumnName;
import caryatid.recording.table.ColumnWords;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Names of columns that hold the total of all plates or load cells. */
final class TotalColumnNames {
  /** Words for all plates or all cells together. */
  private static final Set<String> ALL =
      Set.of("total", "sum", "net", "combined", "whole", "gesamt", "summe", "totale", "suma");

  /** Words for what a platform of load cells carries in all. */
  private static final Set<String> WEIGHT =
      Set.of("weight", "bodyweight", "load", "gewicht", "last", "poids", "charge", "peso", "carga");

  private TotalColumnNames() {}

  /** Whether a plate's name says that it holds all plates together. */
  static boolean plates(String plate) {
    return ColumnName.of("", plate).words().stream().anyMatch(ALL::contains);
  }

  /**
   * Whether a column's name says that it holds the total weight on the load cells: {@code Weight},
   * {@code total force}, or a lone vertical force.
   *
   * @param vertical the export's vertical axis
   */
  static boolean cells(ColumnName column, Axis vertical) {
    List<String> words = column.words();
    Optional<Channel> channel =
        ColumnMeaning.of(column).channel().filter(c -> ColumnMeaning.of(column).plate().isEmpty());
    return channel.equals(Optional.of(Channel.of(Channel.Quantity.FORCE, vertical)))
        || (words.stream().anyMatch(TotalColumnNames::whole)
            && words.stream().allMatch(w -> whole(w) || ColumnWords.FILLERS.contains(w)));
  }

  private static boolean whole(String word) {
    return ALL.contains(word)
        || WEIGHT.contains(word)
        || ALL.stream()
            .anyMatch(all -> word.startsWith(all) && WEIGHT.contains(word.substring(all.length())));
  }
}
