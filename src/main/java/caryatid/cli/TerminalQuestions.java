package caryatid.cli;

import caryatid.format.NearlyKnown;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.Question;
import caryatid.remark.StoreFailure;
import caryatid.usecase.AddedEntry;
import caryatid.usecase.EntryDraft;
import caryatid.usecase.Inputs;
import caryatid.usecase.SessionCheck;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Asks at a terminal what is open about a check or an entry; without one it is refused. */
final class TerminalQuestions {
  private final Optional<TerminalPrompt> terminal;
  private final Wording wording;

  TerminalQuestions(Optional<TerminalPrompt> terminal, Wording wording) {
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
      if (!terminal.orElseThrow().isSo(TerminalText.line(wording.say(problem)), "cli.isItSo")) {
        throw new BadInput(problem);
      }
      answers.add(question.answer());
      terminal.get().say(wording.fill("cli.noted", Argument.text(question.line())));
    }
    return answers;
  }

  /** The adding of an entry, or of one that says more. */
  interface Adding {
    AddedEntry of(EntryDraft draft) throws BadInput, StoreFailure;
  }

  /**
   * An entry that was added.
   *
   * @param draft what it says, with what was answered
   */
  record Added(EntryDraft draft, AddedEntry entry) {}

  /**
   * Adds an entry, and asks until nothing is open.
   *
   * @throws BadInput if the entry does not fit, or no reason is given for what is asked
   */
  Added added(EntryDraft given, Adding adding) throws BadInput, StoreFailure {
    EntryDraft draft = given;
    while (true) {
      try {
        return new Added(draft, adding.of(draft));
      } catch (BadInput e) {
        if (e.questions().isEmpty() || terminal.isEmpty()) {
          throw e;
        }
        for (Question question : e.questions()) {
          draft = answered(draft, question);
        }
      }
    }
  }

  private EntryDraft answered(EntryDraft draft, Question question) throws BadInput {
    Problem problem = question.at(Place.of(draft.kind().key()));
    String sentence = TerminalText.line(wording.say(problem));
    Optional<NearlyKnown.Word> word = NearlyKnown.Word.of(question);
    if (word.isPresent()) {
      return terminal.orElseThrow().isSo(sentence, "cli.takeKnown")
          ? draft.correcting(word.get())
          : draft.answering(question, word.get().typed());
    }
    Optional<String> why = terminal.orElseThrow().why(sentence);
    return draft.answering(question, why.orElseThrow(() -> new BadInput(problem)));
  }
}
