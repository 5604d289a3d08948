package caryatid.recording.workbook;

import caryatid.recording.model.ImportProblem;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a workbook's own part states: its sheets in order, and from when its days count. */
final class SheetList {
  private static final String ROOT = "_rels/.rels";

  /** A part that another refers to. */
  private record Relation(String type, String part) {}

  private final WorkbookZip zip;
  private final Map<String, Relation> targets;
  private final List<Sheet> sheets = new ArrayList<>();
  private boolean from1904;

  /**
   * @throws WorkbookFault if the zip holds something else
   */
  SheetList(WorkbookZip zip) throws IOException {
    this.zip = zip;
    String part = workbook();
    this.targets = targets(relations(part), folder(part));
    try (XmlPart workbook = new XmlPart(part, zip.open(part))) {
      read(workbook);
    }
  }

  private String workbook() throws IOException {
    if (!zip.has(ROOT)) {
      throw new WorkbookFault(ImportProblem.SPREADSHEET);
    }
    return targets(ROOT, "").values().stream()
        .filter(target -> target.type().endsWith("/officeDocument"))
        .map(Relation::part)
        .filter(part -> part.endsWith(".xml") && zip.has(part))
        .findFirst()
        .orElseThrow(() -> new WorkbookFault(ImportProblem.SPREADSHEET));
  }

  private static String folder(String part) {
    return part.substring(0, part.lastIndexOf('/') + 1);
  }

  private static String relations(String part) {
    return folder(part) + "_rels/" + part.substring(part.lastIndexOf('/') + 1) + ".rels";
  }

  /** The parts that a part of relations names, by its keys; what lies elsewhere is left out. */
  private Map<String, Relation> targets(String part, String folder) throws IOException {
    Map<String, Relation> found = new HashMap<>();
    try (XmlPart relations = new XmlPart(part, zip.open(part))) {
      while (relations.next()) {
        boolean elsewhere =
            relations.attribute("TargetMode").filter("External"::equals).isPresent();
        if (relations.starts("Relationship") && !elsewhere) {
          String target = relations.attribute("Target").orElse("");
          found.put(
              relations.attribute("Id").orElse(""),
              new Relation(
                  relations.attribute("Type").orElse(""),
                  target.startsWith("/") ? target.substring(1) : folder + target));
        }
      }
    }
    return found;
  }

  private void read(XmlPart workbook) throws IOException {
    boolean known = false;
    while (workbook.next()) {
      if (workbook.starts("workbook")) {
        known = true;
      } else if (workbook.starts("workbookPr")) {
        from1904 = workbook.flag("date1904");
      } else if (workbook.starts("sheet")) {
        sheet(workbook);
      }
    }
    if (!known) {
      throw new WorkbookFault(ImportProblem.SPREADSHEET);
    }
  }

  /** Sheets of charts and the like hold no cells. */
  private void sheet(XmlPart workbook) throws WorkbookFault {
    String name = workbook.attribute("name").orElse("");
    Relation target = targets.get(workbook.attribute("id").orElse(""));
    if (target == null || !zip.has(target.part())) {
      throw WorkbookFault.damaged(name);
    }
    if (target.type().endsWith("/worksheet")) {
      boolean hidden = workbook.attribute("state").filter(s -> !s.equals("visible")).isPresent();
      sheets.add(new Sheet(name, target.part(), hidden));
    }
  }

  List<Sheet> sheets() {
    return List.copyOf(sheets);
  }

  boolean from1904() {
    return from1904;
  }

  /** The part of a kind that the workbook refers to. */
  Optional<String> part(String kind) {
    return targets.values().stream()
        .filter(target -> target.type().endsWith("/" + kind) && zip.has(target.part()))
        .map(Relation::part)
        .findFirst();
  }
}
