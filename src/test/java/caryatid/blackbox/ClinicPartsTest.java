package caryatid.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The clinic remembers components with their makers' limits. */
class ClinicPartsTest {
  private static final String STORY = "sample-recordings/story/components.yaml";

  @TempDir private Path folder;
  private Clinic clinic;

  @BeforeEach
  void remember() {
    clinic = new Clinic(folder);
    clinic.start();
    Run run = Run.caryatid("clinic", "parts", STORY, "--records", folder.toString());
    assertThat(run).isEqualTo(new Run(0, "Remembered the limits of 2 components.\n", ""));
  }

  private Run component(String... said) {
    List<String> all = new ArrayList<>(List.of("components", "--by", "AB"));
    for (String value : said) {
      all.add("components[1]." + value);
    }
    return clinic.record("add", "K7-right", all.toArray(String[]::new));
  }

  @Test
  void aPartThatIsKnownNeedsNoLimits() {
    Run run = component("what=Foot", "name=demo foot", "serial=D-7");
    assertThat(run.out()).startsWith("The clinic's remembered limits are used.\n");
    assertThat(clinic.record("show", "K7-right").out())
        .contains(
            "      Foot; name demo foot; serial D-7; body mass, highest 100 kg; mobility grade,"
                + " lowest 2; mobility grade, highest 4; heel height, lowest 0 mm; heel height,"
                + " highest 20 mm; source Invented instructions for the demo foot, section 2\n");
  }

  private Run torques() throws IOException {
    Path file = folder.resolve("parts.yaml");
    Files.writeString(
        file,
        Files.readString(Path.of(STORY))
            + "torques:\n"
            + "  - {what: foot, name: demo foot, fastener: foot adapter, torque-nm: 15, source:"
            + " demo}\n"
            + "  - {what: foot, name: other foot, fastener: tube clamp, torque-nm: 10}\n");
    return Run.caryatid("clinic", "parts", file.toString(), "--records", folder.toString());
  }

  private Run fastener(String fastener, String... more) {
    List<String> all =
        new ArrayList<>(
            List.of(
                "bench-alignment",
                "--by",
                "AB",
                "items[1].item=fasteners secured to torque",
                "items[1].fastener=" + fastener,
                "items[1].set=12",
                "items[1].unit=N m"));
    all.addAll(List.of(more));
    return clinic.record("add", "K7-right", all.toArray(String[]::new));
  }

  @Test
  void aFastenerOfAFittedComponentGetsTheTorqueThatIsRemembered() throws IOException {
    assertThat(torques().out())
        .isEqualTo(
            "Remembered the limits of 2 components.\nRemembered the torque of 2 fasteners.\n");
    component("what=foot", "name=demo foot");
    assertThat(fastener("Foot  adapter").out())
        .startsWith("The clinic's remembered limits are used.");
    assertThat(clinic.record("show", "K7-right").out().replace('\u00a0', ' '))
        .contains("fastener Foot  adapter; recommended 15 N m; set 12 N m; source demo")
        .contains("secured to 12.0 N m, below the 15.0 N m recommended");
  }

  @Test
  void aFastenerOfAComponentThatIsNotFittedAndOneWithATorqueAreLeftAsTheyAre() throws IOException {
    torques();
    component("what=foot", "name=demo foot");
    assertThat(fastener("tube clamp").out()).doesNotContain("remembers");
    assertThat(fastener("foot adapter", "items[1].recommended=11").out())
        .doesNotContain("remembers");
    assertThat(clinic.record("show", "K7-right").out()).contains("recommended 11 N m; set 12 N m");
  }

  @Test
  void torquesAreShown() throws IOException {
    torques();
    assertThat(Run.caryatid("clinic", "show", "--records", folder.toString()).out())
        .endsWith("foot demo foot: foot adapter 15 N m\nfoot other foot: tube clamp 10 N m\n");
  }

  @Test
  void limitsThatAreStatedStandAlone() {
    Run run = component("what=foot", "name=demo foot", "body-mass-highest-kg=90");
    assertThat(run.out()).doesNotContain("remembers");
    assertThat(clinic.record("show", "K7-right").out())
        .contains("      foot; name demo foot; body mass, highest 90 kg\n");
  }

  @Test
  void anotherPartIsNotTakenForIt() {
    assertThat(component("what=foot", "name=other foot").out()).doesNotContain("remembers");
    assertThat(component("what=ankle", "name=demo foot").out()).doesNotContain("remembers");
  }

  @Test
  void whatIsRememberedIsShownWithoutSerialNumbers() {
    assertThat(Run.caryatid("clinic", "show", "--records", folder.toString()).out())
        .contains("foot; name demo foot; body mass, highest 100 kg")
        .contains("ankle; name demo ankle, adjustable")
        .doesNotContain("D-0001");
  }
}
