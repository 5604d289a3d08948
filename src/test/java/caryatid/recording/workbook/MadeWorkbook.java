package caryatid.recording.workbook;

import static java.nio.charset.StandardCharsets.UTF_8;

import caryatid.recording.model.NamedBytes;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * Writes workbooks as ISO/IEC 29500-1 describes them (from memory), cell by cell, so that every
 * fault can be made. The specimens hold what independent programs wrote.
 */
public final class MadeWorkbook {
  private static final String TYPES =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

  private final Map<String, byte[]> parts = new LinkedHashMap<>();
  private final StringBuilder sheets = new StringBuilder();
  private final StringBuilder relations = new StringBuilder();
  private String settings = "";
  private int count;

  /** A sheet of what stands between its rows' tags. */
  public MadeWorkbook sheet(String name, String rows) {
    return sheet(name, "", "", rows, "");
  }

  /**
   * A sheet.
   *
   * @param state attributes of its tab
   * @param before what stands before its rows
   * @param after what stands behind them
   */
  public MadeWorkbook sheet(String name, String state, String before, String rows, String after) {
    count++;
    sheets.append(
        "<sheet name=\"%s\" sheetId=\"%d\" r:id=\"s%d\" %s/>".formatted(name, count, count, state));
    relation("s" + count, "worksheet", "worksheets/sheet" + count + ".xml");
    return part(
        "xl/worksheets/sheet" + count + ".xml",
        "<worksheet>" + before + "<sheetData>" + rows + "</sheetData>" + after + "</worksheet>");
  }

  private void relation(String id, String type, String target) {
    relations.append(
        "<Relationship Id=\"%s\" Type=\"%s/%s\" Target=\"%s\"/>"
            .formatted(id, TYPES, type, target));
  }

  /** Days count from 1904. */
  public MadeWorkbook from1904() {
    settings = "<workbookPr date1904=\"1\"/>";
    return this;
  }

  /** Cell styles: each shows numbers by a format of its own. */
  public MadeWorkbook formats(String... formats) {
    StringBuilder own = new StringBuilder();
    StringBuilder cells = new StringBuilder("<xf numFmtId=\"0\"/>");
    for (int i = 0; i < formats.length; i++) {
      own.append("<numFmt numFmtId=\"%d\" formatCode=\"%s\"/>".formatted(164 + i, formats[i]));
      cells.append("<xf numFmtId=\"%d\"/>".formatted(164 + i));
    }
    relation("styles", "styles", "styles.xml");
    return part(
        "xl/styles.xml",
        "<styleSheet><numFmts>%s</numFmts><cellStyleXfs><xf numFmtId=\"14\"/></cellStyleXfs>"
                .formatted(own)
            + "<cellXfs>%s</cellXfs></styleSheet>".formatted(cells));
  }

  /** Texts that cells of type s name by number. */
  public MadeWorkbook texts(String... texts) {
    relation("texts", "sharedStrings", "sharedStrings.xml");
    StringBuilder all = new StringBuilder("<sst>");
    for (String text : texts) {
      all.append("<si>").append(text).append("</si>");
    }
    return part("xl/sharedStrings.xml", all.append("</sst>").toString());
  }

  /** A part of any name. */
  public MadeWorkbook part(String name, String xml) {
    parts.put(name, ("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + xml).getBytes(UTF_8));
    return this;
  }

  /** The file. */
  public byte[] bytes() {
    Map<String, byte[]> all = new LinkedHashMap<>();
    all.put(
        "_rels/.rels",
        ("<Relationships><Relationship Id=\"w\" Type=\""
                + TYPES
                + "/officeDocument\""
                + " Target=\"xl/workbook.xml\"/></Relationships>")
            .getBytes(UTF_8));
    all.put(
        "xl/_rels/workbook.xml.rels",
        ("<Relationships>" + relations + "</Relationships>").getBytes(UTF_8));
    all.put(
        "xl/workbook.xml",
        ("<workbook xmlns:r=\""
                + TYPES
                + "\">"
                + settings
                + "<sheets>"
                + sheets
                + "</sheets></workbook>")
            .getBytes(UTF_8));
    all.putAll(parts);
    return zip(all);
  }

  private static byte[] zip(Map<String, byte[]> all) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (Map.Entry<String, byte[]> part : all.entrySet()) {
        zip.putNextEntry(new ZipEntry(part.getKey()));
        zip.write(part.getValue());
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  /** The file, named {@code stand.xlsx}. */
  public NamedBytes file() {
    return NamedBytes.of("stand.xlsx", bytes());
  }

  /** A row: text that is no number as text, the rest as numbers, nothing for an empty cell. */
  public static String row(int number, String... cells) {
    StringBuilder row = new StringBuilder("<row r=\"%d\">".formatted(number));
    for (int i = 0; i < cells.length; i++) {
      String name = "r=\"" + (char) ('A' + i) + number + "\"";
      if (cells[i].startsWith("<c")) {
        row.append(cells[i].replaceFirst("<c", "<c " + name));
      } else if (cells[i].matches("[-+]?[0-9.]+(E[-+]?[0-9]+)?")) {
        row.append("<c %s><v>%s</v></c>".formatted(name, cells[i]));
      } else if (!cells[i].isEmpty()) {
        row.append("<c %s t=\"inlineStr\"><is><t>%s</t></is></c>".formatted(name, cells[i]));
      }
    }
    return row.append("</row>").toString();
  }

  /** The rows of a text whose cells are separated by commas. */
  public static String rows(String csv) {
    StringBuilder rows = new StringBuilder();
    int number = 0;
    for (String line : csv.lines().toList()) {
      number++;
      rows.append(row(number, line.split(",", -1)));
    }
    return rows.toString();
  }

  /** Twelve rows below names in line 1: time, vertical force, centre of pressure. */
  public static String stand() {
    return row(1, "Time (s)", "Fz (N)", "CoPx (mm)", "CoPy (mm)") + stand(2, 12);
  }

  /** The rows of a stand. */
  public static String stand(int from, int count) {
    StringBuilder rows = new StringBuilder();
    for (int i = 0; i < count; i++) {
      rows.append(sample(from + i, i));
    }
    return rows.toString();
  }

  /** A row of it. */
  public static String sample(int row, int i) {
    return row(
        row,
        String.format(Locale.ROOT, "%.2f", i / 100.0),
        Integer.toString(800 + i),
        Integer.toString(10 + i),
        Integer.toString(-20 + 2 * i));
  }
}
