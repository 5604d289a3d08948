package caryatid.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.Arrays;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A change of alignment as one step, and one step back. */
class ChangePageTest extends FittingWindow {
  @BeforeEach
  void prepare() throws Exception {
    rememberPlate();
    bench("5", "10");
  }

  private void bench(String flexion, String torque) throws Exception {
    HttpResponse<String> kept =
        send(
            "/bench-alignment",
            "items[1].item",
            "socket flexion",
            "items[1].unit",
            "deg",
            "items[1].recommended",
            "5",
            "items[1].set",
            flexion,
            "items[2].item",
            "fasteners secured to torque",
            "items[2].fastener",
            "tube clamp",
            "items[2].unit",
            "N m",
            "items[2].recommended",
            "10",
            "items[2].set",
            torque);
    assertThat(kept.body()).contains("Kept as entry");
  }

  private void keepAStand() throws Exception {
    keepAStand(3, "barefoot-1.csv");
  }

  private void keepAStand(int entry, String recording) throws Exception {
    TypedStand stand = new TypedStand(window, base);
    stand.typeAs(Map.of(), "part", "live");
    stand.drop(recording);
    stand.typeAs(Map.of(), "action", "count-1");
    String head = OpenWindow.head(window.page(base + TypedStand.STEP));
    assertThat(stand.typeAs(Map.of(), "action", "keep", "record-head", head).body())
        .contains("Kept as entry " + entry);
  }

  @Test
  void aChangeSaysWhatFromAndTo() throws Exception {
    assertThat(window.page(base + "/change"))
        .contains(
            "socket flexion (now 5 deg)",
            "All secured to torque: tube clamp 10 N m",
            "Change nothing under load.");
  }

  @Test
  void oneTapSecuresAllFastenersAndAnExceptionIsTyped() throws Exception {
    String kept =
        send("/change", "change-what", "0", "items[1].set", "6,5", "all-secured", "yes").body();
    assertThat(kept).contains("Kept as entry 3", "set 6.5 deg", "tube clamp", "set 10 N m");
    assertThat(window.page(base + TypedStand.STEP))
        .contains("value=\"socket flexion: 5 \u2192 6,5 deg\"");
    String other =
        send(
                "/change",
                "change-what",
                "0",
                "items[1].set",
                "6",
                "all-secured",
                "yes",
                "items[2].set",
                "8")
            .body();
    assertThat(other).contains("Kept as entry 4", "set 8 N m");
    assertThat(window.page(base + "/record")).contains("tube clamp: secured to 8.0");
  }

  /** What was forgotten is made up for without a change of anything; the last change stays. */
  @Test
  void fastenersAreSecuredAfterwards() throws Exception {
    send("/change", "change-what", "0", "items[1].set", "6");
    String kept = send("/change", "all-secured", "yes").body();
    assertThat(kept).contains("Kept as entry 4", "set 10 N m").doesNotContain("set 6 deg");
    assertThat(window.page(base + TypedStand.STEP))
        .contains("value=\"socket flexion: 5 \u2192 6 deg\"");
  }

  @Test
  void aTorqueThatIsMissingIsNotedWhereItIsAskedFor() throws Exception {
    String note = "href=\"" + base + "/change\">Note the torque</a>";
    send("/change", "change-what", "0", "items[1].set", "6");
    assertThat(window.page(base + "/assessment")).contains(note);
    send("/change", "all-secured", "yes");
    assertThat(window.page(base + "/assessment")).doesNotContain(note);
  }

  @Test
  void withoutTheTapNoTorqueIsKept() throws Exception {
    assertThat(send("/change", "change-what", "0", "items[1].set", "6").body())
        .contains("Kept as entry 3", "set 6 deg")
        .doesNotContain("set 10 N m");
  }

  @Test
  void whatIsMissingOrOddIsToldAtItsField() throws Exception {
    HttpResponse<String> nothing = send("/change", "items[1].set", "6");
    assertThat(nothing.statusCode()).isEqualTo(422);
    assertThat(nothing.body()).contains("id=\"change-what-fault\"", "value=\"6\"");
    HttpResponse<String> word = send("/change", "change-what", "0", "items[1].set", "more");
    assertThat(word.statusCode()).isEqualTo(422);
    assertThat(word.body()).contains("id=\"items-1-set-fault\"");
    assertThat(send("/change", "change-what", "0").body()).contains("id=\"items-1-set-fault\"");
    HttpResponse<String> far = send("/change", "change-what", "0", "items[1].set", "40");
    assertThat(far.body()).contains("set is 40.0°, but 5.0° is recommended");
    assertThat(
            send("/change", "change-what", "0", "items[1].set", "40", "items[1].why", "tried")
                .body())
        .contains("Kept as entry 3");
  }

  @Test
  void aDifferenceWithItsDirectionIsTakenAndItsResultShownAtOnce() throws Exception {
    String[] by = {"change-what", "0", "change-by", "1,5", "change-way", "EXTENSION"};
    String[] shown = Arrays.copyOf(by, by.length + 2);
    shown[by.length] = "part";
    shown[by.length + 1] = "comes-to";
    assertThat(send("/change", shown).body()).isEqualTo("socket flexion: 5 \u2192 3.5 deg");
    assertThat(send("/change", by).body()).contains("Kept as entry 3", "set 3.5 deg");
    assertThat(window.page(base + TypedStand.STEP))
        .contains("value=\"socket flexion: 5 \u2192 3.5 deg\"");
    by[5] = "FLEXION";
    assertThat(send("/change", by).body()).contains("Kept as entry 4", "set 5 deg");
  }

  @Test
  void aDifferenceThatCouldBeReadTwoWaysIsRefusedAtItsField() throws Exception {
    assertThat(send("/change", "change-what", "0", "change-by", "2").body())
        .contains("id=\"change-way-fault\"", "towards flexion, or towards extension");
    assertThat(
            send("/change", "change-what", "0", "change-by", "2", "change-way", "FORWARD").body())
        .contains("id=\"change-way-fault\"");
    assertThat(
            send("/change", "change-what", "0", "change-by", "-2", "change-way", "FLEXION").body())
        .contains("id=\"change-by-fault\"", "without a sign");
    assertThat(send("/change", "change-what", "0", "change-by", "2", "items[1].set", "7").body())
        .contains("id=\"change-by-fault\"", "not both");
    assertThat(
            send("/change", "change-what", "0", "change-way", "FLEXION", "items[1].set", "7")
                .body())
        .contains("id=\"change-by-fault\"");
    String[] unknown = {"change-what", "2", "change-by", "4", "change-way", "FORWARD"};
    assertThat(send("/change", unknown).body())
        .contains("id=\"change-by-fault\"", "is not noted. Type the new value.");
    assertThat(window.page(base + "/change")).contains("kept up to entry 2");
  }

  @Test
  void whatWasTypedIsADraftAndTheRecordMayNotHaveChanged() throws Exception {
    String head = OpenWindow.head(window.page(base + "/change"));
    window.send(base + "/change", "record-head", head, "items[1].set", "7", "part", "draft");
    assertThat(window.page(base + "/change")).contains("value=\"7\"");
    bench("6", "10");
    HttpResponse<String> old =
        window.send(
            base + "/change",
            "record-head",
            head,
            "by-initials",
            "AB",
            "change-what",
            "0",
            "items[1].set",
            "7");
    assertThat(old.statusCode()).isEqualTo(422);
    assertThat(old.body()).contains("The record has changed", "value=\"7\"");
  }

  /** Whatever was kept after them. */
  @Test
  void theLastTwoStandsAreComparedUnlessOthersAreChosen() throws Exception {
    keepAStand();
    send("/change", "change-what", "0", "items[1].set", "6", "all-secured", "yes");
    // Two states of the same second are asked about.
    Thread.sleep(1_000);
    keepAStand(5, "barefoot-2.csv");
    send("/assessment", "skin", "no marks");
    assertThat(window.page(base + "/compare"))
        .containsPattern("id=\"from\"[^/]*(</option>[^/]*)*<option value=\"3\" selected")
        .containsPattern("id=\"to\"[^/]*(</option>[^/]*)*<option value=\"5\" selected");
  }

  @Test
  void theResultBeforeIsMarked() throws Exception {
    keepAStand();
    assertThat(window.page(base + TypedStand.STEP)).doesNotContain("From before the change");
    send("/change", "change-what", "0", "items[1].set", "6", "all-secured", "yes");
    assertThat(window.page(base + TypedStand.STEP))
        .contains("<strong class=\"before-change\">From before the change (entry 4).</strong>");
  }

  @Test
  void aDraftThatWasCountedBeforeTheChangeIsMarked() throws Exception {
    TypedStand stand = new TypedStand(window, base);
    stand.typeAs(Map.of(), "part", "live");
    stand.drop("barefoot-1.csv");
    stand.typeAs(Map.of(), "action", "count-1");
    assertThat(window.page(base + TypedStand.STEP)).doesNotContain("From before the change");
    Thread.sleep(1100);
    send("/change", "change-what", "0", "items[1].set", "6", "all-secured", "yes");
    assertThat(window.page(base + TypedStand.STEP))
        .contains("From before the change (entry 3). Keep these stands")
        .contains("value=\"foot moved 4 mm to the rear\"");
  }

  /** The sample's barefoot stand does not meet every tolerance. */
  @Test
  void whereNoStandWasGoodTheStepBackLeadsToTheSettingBefore() throws Exception {
    assertThat(window.page(base + "/back")).contains("no stand of this record met every tolerance");
    keepAStand();
    send("/change", "change-what", "0", "items[1].set", "6", "all-secured", "yes");
    assertThat(window.page(base + "/back"))
        .contains(
            "no stand in this footwear met every tolerance: barefoot",
            "The setting before the present one is that of entry 3",
            "socket flexion: from 6 deg to 5 deg (−1 deg)");
    assertThat(send("/back", "all-secured", "yes").body())
        .contains("Kept as entry 5", "set 5 deg", "set 10 N m");
    assertThat(window.page(base + TypedStand.STEP))
        .contains("value=\"socket flexion \u2192 5 deg\"");
  }
}
