package caryatid.entry.form;

import caryatid.entry.BenchItem;
import caryatid.entry.KneeLock;
import caryatid.entry.WalkingDeviation;
import caryatid.remark.Coded;
import java.util.List;
import java.util.Optional;

/** The terms that a name in a form may be; any other words may be used as well. */
public enum Vocabulary {
  /** What is set on the bench. */
  BENCH_ITEM(BenchItem.values()),
  /** Deviations of walking. */
  DEVIATION(WalkingDeviation.values()),
  /** What a deviation usually points to; the code is the deviation's. */
  POINTS_TO(WalkingDeviation.values()),
  /** Where what a deviation points to is written. */
  SOURCE(WalkingDeviation.Reference.values()),
  /** Whether the prosthetic knee was locked; its mode stands with it in words. */
  KNEE_LOCK(KneeLock.values());

  private final List<Coded> terms;

  Vocabulary(Coded... terms) {
    this.terms = List.of(terms);
  }

  /** All its terms. */
  public List<Coded> terms() {
    return terms;
  }

  /** The term of a code. */
  public Optional<Coded> term(String code) {
    return terms.stream().filter(t -> t.code().equals(code)).findFirst();
  }

  /** The codes, in order. */
  public List<String> codes() {
    return terms.stream().map(Coded::code).toList();
  }
}
