package caryatid.recording.importer;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** What can happen to a file on its way. */
enum Damage {
  LINE_LOST(true) {
    @Override
    List<String> apply(List<String> lines, RandomExport export, Random random) {
      lines.remove(dataLine(lines, export, random));
      return lines;
    }
  },
  LINE_TWICE(true) {
    @Override
    List<String> apply(List<String> lines, RandomExport export, Random random) {
      int line = dataLine(lines, export, random);
      lines.add(line, lines.get(line));
      return lines;
    }
  },
  LINES_SWAPPED(true) {
    @Override
    List<String> apply(List<String> lines, RandomExport export, Random random) {
      int line = dataLine(lines, export, random);
      String other = lines.get(line + 1);
      lines.set(line + 1, lines.get(line));
      lines.set(line, other);
      return lines;
    }
  },
  HEAD_LOST(false) {
    @Override
    List<String> apply(List<String> lines, RandomExport export, Random random) {
      lines.remove(export.headLines(lines) - 1);
      return lines;
    }
  },
  CUT(false) {
    @Override
    List<String> apply(List<String> lines, RandomExport export, Random random) {
      int line = dataLine(lines, export, random);
      List<String> kept = new ArrayList<>(lines.subList(0, line));
      String last = lines.get(line);
      kept.add(last.substring(0, random.nextInt(last.length())));
      return kept;
    }
  },
  CELL_EMPTIED(false) {
    @Override
    List<String> apply(List<String> lines, RandomExport export, Random random) {
      return withCell(lines, export, random, "");
    }
  },
  CELL_OF_TEXT(false) {
    @Override
    List<String> apply(List<String> lines, RandomExport export, Random random) {
      return withCell(lines, export, random, "abc");
    }
  },
  CELL_HUGE(false) {
    @Override
    List<String> apply(List<String> lines, RandomExport export, Random random) {
      return withCell(lines, export, random, "9000000000");
    }
  },
  CELL_INSERTED(false) {
    @Override
    List<String> apply(List<String> lines, RandomExport export, Random random) {
      int line = dataLine(lines, export, random);
      lines.set(line, "5" + export.delimiter() + lines.get(line));
      return lines;
    }
  },
  BYTE_REPLACED(false) {
    @Override
    List<String> apply(List<String> lines, RandomExport export, Random random) {
      int line = dataLine(lines, export, random);
      StringBuilder text = new StringBuilder(lines.get(line));
      int at = 1 + random.nextInt(text.length() - 1);
      if (text.charAt(at) != '-') {
        text.setCharAt(at, STRANGE.charAt(random.nextInt(STRANGE.length())));
      }
      lines.set(line, text.toString());
      return lines;
    }
  },
  /** Any byte: a digit may become another digit, which no reader can know. */
  BYTE_OTHER(false) {
    @Override
    List<String> apply(List<String> lines, RandomExport export, Random random) {
      int line = dataLine(lines, export, random);
      StringBuilder text = new StringBuilder(lines.get(line));
      text.setCharAt(random.nextInt(text.length()), (char) (' ' + random.nextInt(95)));
      lines.set(line, text.toString());
      return lines;
    }
  },
  DELIMITER_LOST(false) {
    @Override
    List<String> apply(List<String> lines, RandomExport export, Random random) {
      int line = dataLine(lines, export, random);
      lines.set(line, lines.get(line).replaceFirst("\\Q" + export.delimiter() + "\\E", ""));
      return lines;
    }
  },
  LINE_OF_TEXT(false) {
    @Override
    List<String> apply(List<String> lines, RandomExport export, Random random) {
      lines.add(dataLine(lines, export, random), "*** event ***");
      return lines;
    }
  };

  /** No digits, signs, marks or blanks: these make other numbers, which no reader can know. */
  private static final String STRANGE = "ax;\"'#\u00e9\n|_";

  private final boolean needsTimes;

  Damage(boolean needsTimes) {
    this.needsTimes = needsTimes;
  }

  /** Whether only a column of times or numbers can show it. */
  boolean needsTimes() {
    return needsTimes;
  }

  abstract List<String> apply(List<String> lines, RandomExport export, Random random);

  /** A row with two others on each side. */
  private static int dataLine(List<String> lines, RandomExport export, Random random) {
    return export.headLines(lines) + 2 + random.nextInt(export.rows - 5);
  }

  private static List<String> withCell(
      List<String> lines, RandomExport export, Random random, String cell) {
    int line = dataLine(lines, export, random);
    String[] cells = lines.get(line).split("\\Q" + export.delimiter() + "\\E", -1);
    cells[random.nextInt(cells.length)] = cell;
    lines.set(line, export.joined(List.of(cells)));
    return lines;
  }
}
