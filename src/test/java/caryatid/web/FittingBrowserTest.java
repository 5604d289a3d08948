package caryatid.web;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import caryatid.cli.Main;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.interactions.PointerInput;

/**
 * The invented story, transtibial, from an empty folder to the packed record: by keyboard alone, in
 * English and in German with decimal commas, in a second browser, by mouse, and by finger at 390
 * px; its input actions counted.
 */
@Tag("proof")
class FittingBrowserTest {
  private static final Path STORY = Path.of("sample-recordings/story");
  private static final List<Path> FIRST =
      Stream.of("stand-2a.csv", "stand-2b.csv", "stand-2c.csv").map(STORY::resolve).toList();
  private static final List<Path> BAREFOOT =
      Stream.of("barefoot-1.csv", "barefoot-2.csv", "barefoot-3.csv")
          .map(Path.of("sample-recordings/k7")::resolve)
          .toList();

  /** Kept once, with the first stand. */
  private static final String PLATE = "description-Fitting_room.yaml";

  private static final int MOST_ACTIONS = 700;
  private static final int MOST_OF_A_STATE = 40;

  @TempDir Path folder;

  @Test
  void theStoryTakesFewActionsAndIsTheSameInBothLanguages() throws Exception {
    Map<String, String> english = story(chromium("en-GB"), "en", ".", Keyboard::new);
    Map<String, String> german = story(chromium("de-DE"), "de", ",", Keyboard::new);
    assertThat(english.keySet()).hasSizeGreaterThan(8);
    assertThat(german).isEqualTo(english);
    assertThat(commandLine(folder.resolve("en/records"))).isEqualTo(english);
    assertThat(unpacked("en")).isEqualTo(english);
  }

  private static Chromium chromium(String language) {
    return new Chromium(language, 1366, 768);
  }

  /** A second engine, by keyboard. */
  @Test
  void theStoryInFirefoxIsTheSame() throws Exception {
    Firefox firefox = new Firefox(folder.resolve("profile"), "en-GB");
    Map<String, String> entries = story(firefox, "firefox", ".", Keyboard::new);
    assertThat(commandLine(folder.resolve("firefox/records"))).isEqualTo(entries);
    assertThat(unpacked("firefox")).isEqualTo(entries);
  }

  /** Every button is in sight, free and hit in its middle, or the test fails. */
  @Test
  void theStoryByMouseIsTheSame() throws Exception {
    Map<String, String> mouse =
        story(
            chromium("en-GB"), "en", ".", browser -> new Pointer(browser, PointerInput.Kind.MOUSE));
    assertThat(commandLine(folder.resolve("en/records"))).isEqualTo(mouse);
    assertThat(unpacked("en")).isEqualTo(mouse);
  }

  @Test
  void theStoryByFingerOnASmallScreenIsTheSame() throws Exception {
    Map<String, String> finger = story(chromium("en-GB"), "touch", ".", FittingBrowserTest::finger);
    assertThat(commandLine(folder.resolve("touch/records"))).isEqualTo(finger);
    assertThat(unpacked("touch")).isEqualTo(finger);
  }

  private static Hand finger(Chromium browser) {
    browser.likeATelephone(390, 844);
    return new Pointer(browser, PointerInput.Kind.TOUCH);
  }

  /** The entries of the packed record that the browser saved, as the command line unpacks it. */
  private Map<String, String> unpacked(String name) throws IOException {
    Path to = folder.resolve("unpacked-" + name);
    String packed = folder.resolve(name).resolve("saved").resolve("K7-right.zip").toString();
    List<String> words = new ArrayList<>(List.of("record", "unpack", packed));
    words.addAll(List.of("--records", to.toString(), "--by", "AB"));
    StringWriter said = new StringWriter();
    PrintWriter out = new PrintWriter(said);
    assertThat(Main.run(out, out, words.toArray(String[]::new))).as(said.toString()).isZero();
    return entries(to);
  }

  /** The entries of the same story at the command line, with the sheets that the window wrote. */
  private Map<String, String> commandLine(Path window) throws IOException {
    cli("start", "wearer=K7", "side=right", "level=transtibial", "body-mass-kg=82");
    String foot = "components[1].";
    cli("components", foot + "what=foot", foot + "name=demo foot", foot + "serial=D-0001");
    cli("before-any-screw", "sock-ply=2", "skin=no marks", "minutes-since-donning=20.5");
    String item = "items[1].";
    cli(
        "bench-alignment",
        item + "item=socket flexion",
        item + "recommended=5",
        item + "set=5",
        item + "unit=deg");
    String crest = "landmarks[1].";
    cli(
        "length",
        crest + "landmark=iliac crest",
        crest + "left-mm=1009",
        crest + "right-mm=1003.5");
    Files.copy(entry(window, PLATE), folder.resolve("Fitting room.yaml"));
    check(entry(window, "0006-stand"), FIRST);
    check(entry(window, "0007-stand"), BAREFOOT);
    check(entry(window, "0008-stand"), List.of(STORY.resolve("stand-3.csv")));
    cli("walking", "comfort=9", "skin=no marks");
    cli("footwear", "shoes[1].shoe=walking shoe", "shoes[1].heel-height-mm=15");
    cli("closing", "socket-comfort=9", "skin=no marks");
    return entries(folder.resolve("cli"));
  }

  private void cli(String kind, String... says) {
    boolean start = kind.equals("start");
    List<String> words = new ArrayList<>(List.of("record", start ? kind : "add", "K7-right"));
    if (start) {
      words.add("mobility-grade=3");
    } else {
      words.add(kind);
    }
    words.addAll(List.of(says));
    words.addAll(List.of("--by", "AB"));
    run(words);
  }

  private void run(List<String> words) {
    words.addAll(List.of("--records", folder.resolve("cli").toString()));
    StringWriter said = new StringWriter();
    PrintWriter out = new PrintWriter(said);
    assertThat(Main.run(out, out, words.toArray(String[]::new))).as(said.toString()).isZero();
  }

  private void check(Path kept, List<Path> recordings) {
    List<String> words = new ArrayList<>(List.of("check"));
    recordings.forEach(recording -> words.add(recording.toString()));
    words.addAll(List.of("--trial", kept.resolve("sheet.yaml").toString()));
    words.addAll(List.of("--plate", folder.resolve("Fitting room.yaml").toString()));
    String out = folder.resolve("out-" + kept.getFileName()).toString();
    words.addAll(List.of("--out", out, "--record", "K7-right", "--by", "AB"));
    run(words);
  }

  private static Path entry(Path records, String name) throws IOException {
    try (Stream<Path> all = Files.walk(records)) {
      return all.filter(f -> f.endsWith(name)).findFirst().orElseThrow();
    }
  }

  /** The entries of the record that it makes, without times and digests; closes the browser. */
  private <B extends RealBrowser> Map<String, String> story(
      B real, String name, String mark, Function<B, Hand> person) throws Exception {
    Path own = Files.createDirectories(folder.resolve(name));
    Path watched = Files.createDirectories(own.resolve("exports"));
    try (B browser = real;
        OpenWindow window = new OpenWindow(own)) {
      browser.open(window.window());
      Hand hand = person.apply(browser);
      Path saved = Files.createDirectories(own.resolve("saved"));
      browser.saveTo(saved);
      plate(hand);
      record(hand, mark);
      firstState(hand);
      System.out.println("To the first state, " + name + ": " + hand);
      int before = hand.actions();
      int landmarks = secondState(hand);
      int state = hand.actions() - before - landmarks;
      int watchedStand = watchedStand(hand, watched);
      last(hand, saved);
      System.out.println(
          "The story, %s: %s; a further state of three stands %d beyond its %d for landmarks"
              .formatted(name, hand, state, landmarks));
      assertThat(hand.actions()).isLessThanOrEqualTo(MOST_ACTIONS);
      assertThat(state).isLessThanOrEqualTo(MOST_OF_A_STATE);
      assertThat(watchedStand).isEqualTo(1);
      assertThat(browser.complaints()).isEmpty();
      assertThat(browser.asked())
          .allMatch(url -> url.startsWith(window.origin()) || url.matches("(file|data|chrome):.*"));
    }
    return entries(own.resolve("records"));
  }

  /** Needed once for each plate. */
  private static void plate(Hand hand) {
    hand.follow("nav a[href='/plates']");
    hand.drop("file", List.of(STORY.resolve("stand-1.csv"))).await("[name=answer-6]");
    hand.choose("answer-1", "+x").choose("answer-2", "+y").choose("answer-3", "+z");
    hand.type("answer-4", "0.5").type("answer-5", "-1").type("answer-6", "-40").send();
    hand.type("line[1].mm", "300").type("line[2].mm", "0");
    hand.type("plate-name", "Fitting room").send();
    hand.await(".kept-now");
  }

  private static void record(Hand hand, String mark) {
    hand.follow("main a[href='/']").follow("a[href='/new']");
    hand.type("record-code", "K7-right").type("wearer", "K7");
    hand.choose("side", "right").choose("level", "transtibial");
    hand.type("body-mass-kg", "82").type("mobility-grade", "3").type("by-initials", "AB");
    hand.send();
    hand.type("components[1].what", "foot").type("components[1].name", "demo foot");
    hand.type("components[1].serial", "D-0001").send();
    hand.follow("a.next").type("sock-ply", "2").type("skin", "no marks");
    hand.type("minutes-since-donning", "20" + mark + "5").send();
    hand.follow("a.next").type("items[1].recommended", "5").type("items[1].set", "5");
    hand.send().follow("a.next");
    hand.type("landmarks[1].landmark", "iliac crest").type("landmarks[1].left-mm", "1009");
    hand.type("landmarks[1].right-mm", "1003" + mark + "5").send();
  }

  private static void firstState(Hand hand) {
    hand.follow("a.next").type("last-change", "none, as set on the bench");
    hand.type("worn", "barefoot").type("heel", "0");
    hand.numbers("landmark[1].forward", "231", "20", "82", "291", "23", "492");
    hand.numbers("landmark[3].rightward", "69", "498").enter();
    targets(hand);
    stands(hand, FIRST);
    hand.follow("button[value=keep]").await(".kept-now");
  }

  private static void targets(Hand hand) {
    hand.type("target[1].recommended", "20").choose("target[1].landmark", "knee centre");
    hand.type("target[1].below", "15").type("target[1].above", "15");
    hand.type("target[1].source", "Invented instructions for the demo foot, section 4");
    hand.choose("target[1].meant-for", "foot");
  }

  private static void stands(Hand hand, List<Path> files) {
    hand.drop("recordings", files);
    for (int i = 1; i <= files.size(); i++) {
      hand.await("button[value=count-" + i + "]").press("button[value=count-" + i + "]");
      hand.await("button[value=uncount-" + i + "]");
    }
    hand.await("button[value=keep], .result .open");
    assertThat(hand.isThere("button[value=keep]")).as(hand.words(".result")).isTrue();
  }

  /** The actions that its landmarks take: all but the knee as the last time, with Enter. */
  private static int secondState(Hand hand) {
    hand.follow("main a.button[href$='/static-alignment']");
    hand.type("last-change", "ankle plantarflexed by 4 degrees");
    int before = hand.actions();
    hand.numbers("landmark[1].forward", "", "", "", "268", "", "");
    hand.numbers("landmark[3].rightward", "", "").enter();
    int landmarks = hand.actions() - before;
    stands(hand, BAREFOOT);
    hand.follow("button[value=keep]").await(".kept-now");
    return landmarks;
  }

  /** The actions from an export's arrival in the watched folder until it is counted. */
  private static int watchedStand(Hand hand, Path exports) throws IOException {
    hand.follow("main a.button[href$='/static-alignment']");
    hand.type("last-change", "none").press("details.fold:has([value=watch]) summary");
    hand.type("watched-folder", exports.toString()).follow("button[value=watch]");
    hand.numbers("landmark[1].forward", "", "", "", "264", "", "");
    hand.numbers("landmark[3].rightward", "", "").enter();
    Files.copy(STORY.resolve("stand-3.csv"), exports.resolve("stand-3.csv"));
    hand.awaitReady("button[value=count-1]");
    int before = hand.actions();
    hand.press("button[value=count-1]").await("button[value=uncount-1]");
    int actions = hand.actions() - before;
    hand.await("button[value=keep], .result .open");
    hand.follow("button[value=keep]").await(".kept-now");
    return actions;
  }

  private static void last(Hand hand, Path saved) throws InterruptedException {
    hand.follow("a.next").type("comfort", "9").type("skin", "no marks").send();
    hand.follow("a.next").type("shoes[1].shoe", "walking shoe");
    hand.type("shoes[1].heel-height-mm", "15").send();
    hand.follow("a.next").type("socket-comfort", "9").type("skin", "no marks").send();
    hand.follow("a.next").press("main a[href$='/pack']");
    for (int i = 0; i < 500 && !Files.exists(saved.resolve("K7-right.zip")); i++) {
      Thread.sleep(20);
    }
    assertThat(hand.words("#main")).contains("D-0001", "K7");
  }

  private static Map<String, String> entries(Path records) throws IOException {
    Map<String, String> entries = new TreeMap<>();
    try (Stream<Path> all = Files.walk(records)) {
      for (Path file : all.filter(f -> f.endsWith("entry.json")).toList()) {
        String text = Files.readString(file, UTF_8);
        entries.put(
            file.getParent().getFileName().toString(),
            text.replaceAll("\\d{4}-\\d\\d-\\d\\dT[0-9:.]+(Z|[+-]\\d\\d:\\d\\d)", "time")
                .replaceAll("[0-9a-f]{64,128}", "digest")
                .replaceAll("\"bytes\" ?: ?\\d+", "size"));
      }
    }
    return entries;
  }
}
