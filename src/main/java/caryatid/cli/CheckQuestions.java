package caryatid.cli;

import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.Question;
import caryatid.remark.StoreFailure;
import caryatid.usecase.Inputs;
import caryatid.usecase.SessionCheck;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Asks at a terminal what a check asks; without one its questions refuse it. */
final class CheckQuestions {
  private final Optional<TerminalPrompt> terminal;
  private final Wording wording;

  CheckQuestions(Optional<TerminalPrompt> terminal, Wording wording) {
    this.terminal = terminal;
    this.wording = wording;
  }

  /**
   * Checks, and asks until nothing is open.
   *
   * @throws BadInput if an input cannot be used, or something that is asked is not so
   */
  SessionCheck.Answered answered(Inputs given, SessionCheck check) throws BadInput, StoreFailure {
    Inputs inputs = given;
    while (true) {
      try {
        return check.run(inputs);
      } catch (BadInput e) {
        if (e.questions().isEmpty() || terminal.isEmpty()) {
          throw e;
        }
        inputs = inputs.answered(ask(e, Place.of(inputs.sheet().name())));
      }
    }
  }

  private List<String> ask(BadInput asked, Place sheet) throws BadInput {
    List<String> answers = new ArrayList<>();
    for (Question question : asked.questions()) {
      Problem problem = question.at(sheet);
      if (!terminal.orElseThrow().isSo(TerminalText.line(wording.say(problem)))) {
        throw new BadInput(problem);
      }
      answers.add(question.answer());
      terminal.get().say(wording.fill("cli.noted", Argument.text(question.line())));
    }
    return answers;
  }
}
