package caryatid.usecase;

import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.Provenance;
import caryatid.recording.model.Recording;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Refuses inputs in which a stand occurs twice, or files that a report cannot keep under different
 * names. What a record holds is not looked at here.
 */
final class DuplicateInputCheck {
  private DuplicateInputCheck() {}

  static void check(Inputs inputs, List<Recording> recordings, List<NamedBytes> earlierSheets)
      throws BadInput {
    List<Problem> problems = new ArrayList<>();
    Map<String, String> digests = new HashMap<>();
    for (Recording recording : recordings) {
      Provenance file = recording.provenance();
      String first = digests.putIfAbsent(file.sha512(), file.name());
      if (first != null) {
        problems.add(
            Problem.at(Place.of(file.name()), CheckProblem.SAME_RECORDING, Argument.text(first)));
      }
    }
    Set<String> names = new HashSet<>();
    all(inputs, earlierSheets)
        .map(file -> Provenance.fileName(file.name()))
        .filter(name -> !names.add(name))
        .map(name -> Problem.at(Place.of(name), CheckProblem.SAME_NAME))
        .forEach(problems::add);
    if (!problems.isEmpty()) {
      throw new BadInput(problems);
    }
  }

  private static Stream<NamedBytes> all(Inputs inputs, List<NamedBytes> earlierSheets) {
    return Stream.of(
            inputs.recordings().stream(),
            Stream.of(inputs.sheet()),
            inputs.description().stream(),
            earlierSheets.stream(),
            inputs.earlier().stream())
        .flatMap(files -> files);
  }
}
