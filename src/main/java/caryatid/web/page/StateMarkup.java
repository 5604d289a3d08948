package caryatid.web.page;

import caryatid.usecase.stand.StandFields;
import caryatid.web.page.SheetMarkup.StandFormValues;
import caryatid.wording.Wording;
import java.util.List;

/** The fields of a state besides its landmarks: what is recommended and what is said. */
public final class StateMarkup {
  private static final int FREE_TARGETS = 2;

  private final Wording wording;
  private final StandFormValues values;
  private final Markup out = new Markup();
  private final Control control;

  private StateMarkup(Wording wording, StandFormValues values) {
    this.wording = wording;
    this.values = values;
    this.control = new Control(out, values.typed(), values.before(), values.faults());
  }

  /** What the instructions recommend. */
  public static Markup targets(Wording wording, StandFormValues values) {
    StateMarkup markup = new StateMarkup(wording, values);
    for (int i = 1; i <= SheetMarkup.rows(values, StandFields.TARGET, 0) + FREE_TARGETS; i++) {
      markup.target(StandFields.TARGET + "[" + i + "].");
    }
    return markup.out;
  }

  /** What is said of the state besides its numbers. */
  public static Markup notes(Wording wording, StandFormValues values) {
    StateMarkup markup = new StateMarkup(wording, values);
    markup.control.words(StandFields.CONCLUSION, markup.word("conclusion"));
    markup.control.words(StandFields.REASON, markup.word("reason"));
    markup.control.words(StandFields.NEXT, markup.word("nextStep"));
    markup.control.words(StandFields.ROLE, markup.word("role"));
    return markup.out;
  }

  private String word(String key) {
    return wording.word("Web." + key);
  }

  private void target(String row) {
    out.open("fieldset", "class", "row target").element("legend", word("target"));
    line(row);
    SheetMarkup.side(control, wording, values, row);
    control.number(row + "below", word("below"), "mm");
    control.number(row + "above", word("above"), "mm");
    control.words(row + "source", word("source"));
    List<String> lines = List.of("foot", "whole body");
    control.choice(
        row + "meant-for", word("meantFor"), lines, SheetMarkup.words(wording, "meant", lines));
    control.words(row + "valid-for", word("validFor"));
    out.close("fieldset");
  }

  /** As it is said: so many mm in a direction, of a landmark. The direction tells the plane. */
  private void line(String row) {
    control.number(row + "recommended", word("recommended"), "mm");
    List<String> senses = List.of("anterior", "posterior", "lateral", "medial");
    control.choice(
        row + "sense", word("direction"), senses, SheetMarkup.words(wording, "sense", senses));
    List<String> names =
        StandFields.KNOWN_LANDMARKS.stream().filter(n -> !n.startsWith("outer")).toList();
    control.choice(
        row + "landmark", word("ofLandmark"), names, SheetMarkup.landmarks(wording, values, names));
  }
}
