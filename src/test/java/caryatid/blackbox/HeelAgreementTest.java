package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The ankle, the shoe and the stand must be of one heel; 3 mm are the same. */
class HeelAgreementTest {
  @TempDir private Path folder;
  private Clinic.Minutes clinic;

  @BeforeEach
  void startRecord() {
    clinic = new Clinic.Minutes(folder);
  }

  private Run add(String kind, String... said) {
    return clinic.add(kind, said);
  }

  private Run own(String succeeded, String wanted, String set, String... more) {
    List<String> all =
        new ArrayList<>(
            List.of(
                "what=ankle",
                "attempts=2",
                "succeeded=" + succeeded,
                "heel-height-wanted-mm=" + wanted,
                "heel-height-set-mm=" + set));
    all.addAll(Arrays.asList(more));
    return add("own-setting", all.toArray(String[]::new));
  }

  private String shown() {
    return clinic.record("show", "K7-right").out().replace('\u00a0', ' ');
  }

  private static String plain(Run run) {
    return run.err().replace('\u00a0', ' ');
  }

  @Test
  void anOwnSettingToAnotherHeelIsNoSuccessAndLeadsUntilItIsSetRight() {
    assertThat(plain(own("2", "0", "3"))).isEmpty();
    assertThat(plain(own("2", "0", "6")))
        .isEqualTo(
            "own-setting: the wearer set a heel of 6.0 mm where 0.0 mm was wanted, yet every"
                + " attempt is noted as a success: are the numbers right? Correct them, or the"
                + " successes; if they are right, say why and add: note=why it is so\n");
    assertThat(shown()).doesNotContain("Take care");
    assertThat(plain(own("1", "0", "6"))).isEmpty();
    assertThat(shown())
        .contains(
            "Take care: The wearer set the ankle to a heel of 6.0 mm, but 0.0 mm was wanted (entry"
                + " 3). Have it set before the wearer stands or walks.\n");
    own("2", "0", "0");
    assertThat(shown()).doesNotContain("Take care");
  }

  @Test
  void aStandOnAnAnkleSetForAnotherHeelLeads() {
    own("2", "12", "12");
    add("stand", "footwear=low shoe", "heel-height-mm=15");
    assertThat(shown()).doesNotContain("Take care");
    add("stand", "footwear=high shoe", "heel-height-mm=30");
    assertThat(shown())
        .contains(
            "Take care: The stand of entry 4 was with a heel of 30.0 mm, but the ankle was last set"
                + " for 12.0 mm (entry 2). Have it set for the shoe before the wearer stands or"
                + " walks.\n");
    own("2", "30", "30");
    assertThat(shown())
        .doesNotContain("Have it set for the shoe")
        .contains("Take care: The alignment was changed (entry 5) after the last stand (entry 4).");
  }

  @Test
  void aShoeWhoseHeelIsNotThatOfItsStandIsAskedAbout() {
    add("stand", "footwear=low shoe", "heel-height-mm=12");
    String said =
        "footwear: shoes[1].heel-height-mm is 21.0 mm, but the stand of entry 2 was with a heel of"
            + " 12.0 mm: which is right? Correct it, or the stand; if both are right, say why and"
            + " add: shoes[1].note=why it is so\n";
    assertThat(plain(add("footwear", "shoes[1].shoe=low shoe", "shoes[1].heel-height-mm=21")))
        .isEqualTo(said);
    assertThat(
            plain(
                add(
                    "footwear",
                    "shoes[1].shoe=loafer",
                    "shoes[1].heel-height-mm=21",
                    "shoes[1].stand=2")))
        .isEqualTo(said);
    assertThat(plain(add("footwear", "shoes[1].shoe=loafer", "shoes[1].heel-height-mm=21")))
        .isEmpty();
    assertThat(plain(add("footwear", "shoes[1].shoe=low shoe", "shoes[1].heel-height-mm=15")))
        .isEmpty();
  }
}
