package caryatid.sheet;

import caryatid.recording.model.NamedBytes;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.sheet.yaml.Section;
import caryatid.sheet.yaml.ValueParsers;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Reads trial sheets. */
public final class TrialSheetReader {
  private static final String KIND = "trial-sheet";

  private final Function<String, Optional<NamedBytes>> beside;
  private final Set<String> chain;

  private TrialSheetReader(Function<String, Optional<NamedBytes>> beside, Set<String> chain) {
    this.beside = beside;
    this.chain = chain;
  }

  /**
   * Reads a trial sheet (YAML). The sheet it is based on, if any, may itself be based on another.
   *
   * @param yaml the sheet
   * @param beside finds the file that {@code based-on} names; empty when there is none of that name
   * @throws BadInput with every problem found, each with its line and column; problems of the sheet
   *     it is based on follow its own
   */
  public static TrialSheet read(NamedBytes yaml, Function<String, Optional<NamedBytes>> beside)
      throws BadInput {
    return new TrialSheetReader(beside, Set.of()).read(yaml);
  }

  private TrialSheet read(NamedBytes yaml) throws BadInput {
    return Section.read(yaml, KIND, root -> SheetSection.sheet(root, earlier(root)));
  }

  private Optional<TrialSheet> earlier(Section root) {
    return root.optional("based-on", ValueParsers.TEXT).flatMap(name -> earlier(root, name));
  }

  private Optional<TrialSheet> earlier(Section root, String name) {
    Optional<NamedBytes> file = beside.apply(name);
    if (file.isEmpty() || chain.contains(name)) {
      SheetProblem topic =
          file.isEmpty() ? SheetProblem.EARLIER_NOT_FOUND : SheetProblem.EARLIER_IN_A_CIRCLE;
      root.refuse(root.place("based-on"), topic, Argument.text(name));
      return Optional.empty();
    }
    Set<String> longer = new HashSet<>(chain);
    longer.add(name);
    try {
      return Optional.of(new TrialSheetReader(beside, longer).read(file.get()));
    } catch (BadInput e) {
      root.refuse(e);
      return Optional.empty();
    }
  }
}
