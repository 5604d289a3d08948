package caryatid.web;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.usecase.RememberedPlates;
import caryatid.usecase.file.LocalFiles;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Validation by an independent program, axe-core, of each page in the states it can be in, in both
 * schemes of colours; and no id stands twice.
 */
@Tag("proof")
class AccessProofTest {
  private static final List<String> STEPS =
      List.of(
          "/arriving",
          "/parts",
          "/assessment",
          "/bench-alignment",
          "/length-and-pelvis",
          "/static-alignment",
          "/dynamic-alignment",
          "/footwear",
          "/closing");
  private static final List<String> OF_A_RECORD =
      List.of("/record", "/answer", "/compare", "/verify", "/erase", "/change", "/back");
  private static final List<String> OF_THE_WINDOW =
      List.of(
          "/",
          "/new",
          "/end",
          "/card",
          "/plates",
          "/plates/prove/0",
          "/plates/hand",
          "/plates/turn",
          "/verify",
          "/no-such-page");
  private static final Path K7 = Path.of("sample-recordings/k7");
  private static final String[] FASTENER = {
    "items[1].item", "fasteners secured to torque",
    "items[1].fastener", "tube clamp",
    "items[1].unit", "N m",
    "items[1].recommended", "10",
    "items[1].set", "5"
  };

  @TempDir static Path folder;
  private static OpenWindow window;
  private static Chromium browser;

  @BeforeAll
  static void aPlateIsKnown() throws Exception {
    LocalFiles files = new LocalFiles();
    RememberedPlates.remember(
        OpenWindow.setting(folder).records(),
        files.read(K7.resolve("barefoot-1.csv")),
        files.read(K7.resolve("plate.yaml")),
        false);
    window = new OpenWindow(folder);
    browser = new Chromium("en-GB", 1366, 768);
    browser.open(window.window());
  }

  @AfterAll
  static void end() throws Exception {
    browser.close();
    window.close();
  }

  /** What stands on the page now. */
  private static void check(String state, String... words) throws Exception {
    String all = new Keyboard(browser).words("body");
    for (String word : words) {
      assertThat(all).as(state).contains(word);
    }
    assertThat(browser.idsTwice()).as(state + ": ids").isEmpty();
    for (String scheme : List.of("light", "dark")) {
      browser.colours(scheme);
      assertThat(browser.barriers()).as(state + ", " + scheme).isEmpty();
    }
  }

  private static void page(String path, String... words) throws Exception {
    browser.driver().get(window.origin() + path);
    check(path, words);
  }

  /** Sends a form as the page would, and checks the answer. */
  private static void sent(String path, Map<String, String> fields, String... words)
      throws Exception {
    browser.driver().get(window.origin() + path);
    Map<String, String> all = new TreeMap<>(Map.of("by-initials", "AB"));
    all.putAll(fields);
    new Keyboard(browser)
        .leave(
            () ->
                browser.run(
                    "const form = document.body.appendChild(document.createElement('form'));"
                        + "form.method = 'post'; form.action = arguments[0];"
                        + "const head = document.querySelector('[name=record-head]');"
                        + "const all = {...arguments[1], 'record-head': head ? head.value : ''};"
                        + "for (const [name, value] of Object.entries(all)) {"
                        + " const field = form.appendChild(document.createElement('input'));"
                        + " field.name = name; field.value = value; }"
                        + "HTMLFormElement.prototype.submit.call(form);",
                    path,
                    all));
    check(path + " with " + fields, words);
  }

  private static Map<String, String> map(String... fields) {
    Map<String, String> all = new TreeMap<>();
    for (int i = 0; i < fields.length; i += 2) {
      all.put(fields[i], fields[i + 1]);
    }
    return all;
  }

  @Test
  void emptyPagesHaveNoBarrier() throws Exception {
    String base = window.start("K1-right", "right");
    for (String page : OF_THE_WINDOW) {
      page(page);
    }
    for (String step : STEPS) {
      page(base + step);
    }
    for (String page : OF_A_RECORD) {
      page(base + page);
    }
    sent("/new", map("record-code", "K1-right", "side", "left"));
    sent("/new", map("record-code", "Maria Example", "side", "left"));
  }

  @Test
  void draftedAndRefusedFormsHaveNoBarrier() throws Exception {
    String base = window.start("K2-both", "both");
    for (String step : STEPS) {
      window.send(base + step, "part", "draft", "note", "Ms Example", "skin", "red");
      page(base + step);
    }
    sent(base + "/assessment", map("sock-ply", "many", "skin", "red"), "many");
    sent(base + "/bench-alignment", map("items[1].item", "socket flexoin", "items[1].set", "5"));
    sent(base + "/dynamic-alignment", map("comfort", "20"), "20");
    sent(
        base + "/footwear",
        map("shoes[1].shoe", "walking shoe", "shoes[1].heel-height-mm", "many"));
    sent(base + "/closing", map("entry-kind", "accepted", "what", "a"));
    sent(base + "/closing", map("record-head", "0", "note", "a"));
    sent(base + "/assessment", map("skin", "no marks"), "Kept as entry");
    page(base + "/assessment");
    page(base + "/correct/2");
    sent(base + "/correct/2", map("skin", "red"));
    sent(base + "/correct/2", map("skin", "red", "correct-why", "seen again"), "is corrected by");
    page(base + "/record");
  }

  @Test
  void whatIsUnsafeAndItsAnswerHaveNoBarrier() throws Exception {
    String base = window.start("K3-right", "right");
    sent(base + "/bench-alignment", map(FASTENER), "Kept as entry 2");
    for (String step : STEPS) {
      page(base + step, "tube clamp");
    }
    page(base + "/answer?line=1", "tube clamp");
    page(base + "/change", "tube clamp");
    sent(base + "/change", map("change-what", "0"));
  }

  @Test
  void aStandHasNoBarrierFromItsArrivalToItsReport() throws Exception {
    String base = window.start("K4-right", "right");
    String step = base + TypedStand.STEP;
    TypedStand stand = new TypedStand(window, base);
    stand.typeAs(Map.of("heel", "high"), "part", "live");
    page(step);
    stand.typeAs(Map.of("watched-folder", folder.toString()), "action", "watch");
    stand.drop("barefoot-1.csv");
    stand.upload("notes.csv", new byte[] {'a', ',', 'b', '\n', '1', ',', '2', '\n'});
    page(step, "not yet counted");
    stand.typeAs(Map.of(), "action", "count-1");
    stand.typeAs(Map.of("landmark[2].up", "40"), "part", "live");
    page(step, "No result yet");
    stand.typeAs(Map.of(), "part", "live");
    page(step, "undecided");
    stand.typeAs(map("target[1].below", "50", "target[1].above", "50"), "part", "live");
    page(step, "tolerance met");
    stand.typeAs(Map.of("target[1].recommended", "90"), "part", "live");
    page(step, "Please check: is this right?");
    stand.typeAs(
        map("target[1].recommended", "50", "target[1].below", "10", "target[1].above", "10"),
        "part",
        "live");
    page(step, "tolerance not met");
    stand.typeAs(Map.of("worn", "walking shoe", "heel", "60"), "part", "live");
    page(step);
    sent(step, map(kept(new TreeMap<>(TypedStand.sheet()))), "Kept as entry 2");
    page(step);
    page(base + "/report/2");
    page(base + "/compare");
    page(base + "/arriving");
    page(base + "/closing");
    sent(base + "/erase", map("code", "K5"));
  }

  private static String[] kept(Map<String, String> sheet) {
    sheet.put("action", "keep");
    List<String> fields = new ArrayList<>();
    sheet.forEach((name, value) -> fields.addAll(List.of(name, value)));
    return fields.toArray(String[]::new);
  }

  @Test
  void aPlateHasNoBarrierFromItsExportToItsProof() throws Exception {
    Path export = Path.of("sample-recordings/m4/shoe.txt");
    browser.driver().get(window.origin() + "/plates");
    new Keyboard(browser).leave(() -> browser.give("file", List.of(export)));
    check("an export of two plates", "What was understood");
    choose("/plates", Path.of("README.md"));
    new Keyboard(browser).await(".fault");
    check("no export");
    choose("/", Path.of("README.md"));
    new Keyboard(browser).await(".upload .fault");
    check("no packed record");
    sent("/plates/hand", map("by", "AB"));
    sent("/plates/turn", map("by", "AB"));
  }

  private static void choose(String page, Path file) {
    browser.driver().get(window.origin() + page);
    browser.run(
        "const by = document.querySelector('[name=by-initials]'); if (by) by.value = 'AB';");
    browser.give("file", List.of(file));
  }
}
