package caryatid.recording.workbook;

import caryatid.recording.model.ImportProblem;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** The texts that a workbook's cells refer to by number. */
final class SharedTexts {
  /** Characters of all of them, and how many there are, at the most. */
  private static final int MOST = 1 << 24;

  private final List<String> texts = new ArrayList<>();
  private int characters;

  /** A workbook without any. */
  SharedTexts() {}

  /** The texts of a part; runs of one text are joined, readings in another script left out. */
  static SharedTexts of(XmlPart part) throws IOException {
    SharedTexts all = new SharedTexts();
    while (part.next()) {
      if (part.starts("si")) {
        all.add(runs(part, "si"));
      }
    }
    return all;
  }

  /** The runs of the text that starts here, to its end. */
  static String runs(XmlPart part, String element) throws IOException {
    StringBuilder text = new StringBuilder();
    boolean phonetic = false;
    while (!part.ends(element) && part.next()) {
      if (part.starts("rPh") || part.ends("rPh")) {
        phonetic = part.starts("rPh");
      } else if (part.starts("t")) {
        String run = part.text();
        text.append(phonetic ? "" : run);
        if (text.length() > MOST) {
          throw new WorkbookFault(ImportProblem.WORKBOOK_LARGE);
        }
      }
    }
    return text.toString();
  }

  private void add(String text) throws WorkbookFault {
    characters += text.length() + 1;
    if (characters > MOST) {
      throw new WorkbookFault(ImportProblem.WORKBOOK_LARGE);
    }
    texts.add(text);
  }

  /** The text of a number. */
  String at(String number) throws WorkbookFault {
    try {
      return texts.get(Integer.parseInt(number.strip()));
    } catch (NumberFormatException | IndexOutOfBoundsException e) {
      throw WorkbookFault.damaged("si " + number);
    }
  }
}
