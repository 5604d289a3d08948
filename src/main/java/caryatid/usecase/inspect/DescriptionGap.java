package caryatid.usecase.inspect;

import java.util.List;

/**
 * A value that a draft of a plate description leaves open.
 *
 * @param place its key with that of its section, as {@code axes.right}; {@code export.columns} for
 *     each of the names of all columns
 * @param plate the plate it is about; empty where it is about all of them
 * @param line the line of the draft, from 1
 * @param choices what it may be, as a description says it; empty where it is typed
 */
public record DescriptionGap(String place, String plate, int line, List<String> choices) {
  public DescriptionGap {
    choices = List.copyOf(choices);
  }
}
