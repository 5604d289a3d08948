package caryatid.fitting;

import caryatid.remark.Argument;
import caryatid.remark.Question;
import caryatid.remark.Topic;
import caryatid.sheet.Component;
import caryatid.sheet.Notes;
import caryatid.sheet.TrialSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Asks about words of a trial sheet, and names of files, that might identify the wearer. */
public final class SheetWords {
  private final int year;
  private final List<Question> questions = new ArrayList<>();

  private SheetWords(int year) {
    this.year = year;
  }

  /**
   * The questions, whether they are answered or not.
   *
   * @param files names of files that are kept with a report, without folders
   */
  public static List<Question> questions(TrialSheet trial, List<String> files) {
    SheetWords words = new SheetWords(trial.at().getYear());
    words.ask("wearer", trial.wearer(), true);
    words.ask("footwear", trial.footwear().description(), false);
    trial.components().forEach(words::component);
    words.notes(trial.notes());
    files.forEach(name -> words.ask(name, name, true));
    return List.copyOf(words.questions);
  }

  private void component(Component component) {
    ask(component.what(), component.name(), false);
  }

  private void notes(Notes notes) {
    ask("last-change", notes.lastChange());
    ask("conclusion", notes.conclusion());
    ask("comfort", notes.comfort());
    ask("skin", notes.skin());
    ask("reason", notes.reason());
    ask("next-step", notes.nextStep());
  }

  private void ask(String field, Optional<String> text) {
    text.ifPresent(words -> ask(field, words, false));
  }

  private void ask(String field, String text, boolean isName) {
    IdentityCheck.found(text, isName, year)
        .ifPresent(
            found ->
                questions.add(
                    Question.of(
                        IdentityQuestion.of(found.like()),
                        "words of " + field,
                        Argument.text(field),
                        Argument.text(found.words()))));
  }

  /** What has to be confirmed of a sheet's words. Arguments: the field, what looks so. */
  private enum IdentityQuestion implements Topic {
    LIKE_NAME("IdentityQuestion.LIKE_NAME"),
    LIKE_BIRTH("IdentityQuestion.LIKE_BIRTH"),
    LIKE_CONTACT("IdentityQuestion.LIKE_CONTACT");

    private final String code;

    IdentityQuestion(String code) {
      this.code = code;
    }

    @Override
    public String code() {
      return code;
    }

    static IdentityQuestion of(RecordProblem like) {
      return switch (like) {
        case TEXT_LIKE_BIRTH -> LIKE_BIRTH;
        case TEXT_LIKE_CONTACT -> LIKE_CONTACT;
        default -> LIKE_NAME;
      };
    }
  }
}
