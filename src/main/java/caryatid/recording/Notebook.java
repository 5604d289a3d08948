package caryatid.recording;

import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.Remark;
import caryatid.remark.Topic;
import java.util.ArrayList;
import java.util.List;

/** What is noted while a file is read: problems up to the cap, and remarks. */
final class Notebook {
  private final String file;
  private final List<Problem> problems = new ArrayList<>();
  private final List<Remark> remarks = new ArrayList<>();
  private final List<Understood> understood = new ArrayList<>();

  Notebook(String file) {
    this.file = file;
  }

  /** The file's name as the user gave it. */
  String file() {
    return file;
  }

  /** Notes a problem; one beyond the cap is left out. */
  void problem(Place place, Topic topic, Argument... arguments) {
    if (!full()) {
      problems.add(Problem.at(place, topic, arguments));
    }
  }

  /** Notes a problem of the file as a whole. */
  void problem(Topic topic, Argument... arguments) {
    problem(Place.of(file), topic, arguments);
  }

  void remark(Topic topic, Argument... arguments) {
    remarks.add(Remark.of(topic, arguments));
  }

  void understood(Aspect aspect, Understood.Basis basis, Argument... arguments) {
    understood.add(new Understood(aspect, List.of(arguments), basis));
  }

  List<Understood> understood() {
    return understood;
  }

  boolean full() {
    return problems.size() >= BadInput.CAP;
  }

  boolean clean() {
    return problems.isEmpty();
  }

  boolean has(Topic topic) {
    return problems.stream().anyMatch(p -> p.topic() == topic);
  }

  List<Problem> problems() {
    return problems;
  }

  List<Remark> remarks() {
    return remarks;
  }
}
