package caryatid.launcher;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

@Tag("proof")
@DisabledOnOs(OS.WINDOWS)
class MissingToolsTest {
  private static final String INSTALL_A_JDK =
      """
      Install a JDK, 17 or newer, and try again.
      Debian, Ubuntu: sudo apt install openjdk-17-jdk-headless
      Fedora: sudo dnf install java-latest-openjdk-devel
      macOS: brew install openjdk
      """;

  @TempDir private Path folder;
  private Checkout checkout;

  @BeforeEach
  void copy() throws IOException {
    checkout = Checkout.in(folder, "a folder with spaces");
  }

  @Test
  void withoutJavaItSaysWhatToInstall() throws Exception {
    assertThat(Start.of(checkout))
        .isEqualTo(
            new Start(
                1,
                "",
                "Caryatid needs Java 17 or newer, and no Java was found.\n" + INSTALL_A_JDK));
  }

  @Test
  void aJavaHomeThatIsNoneIsNamed() throws Exception {
    assertThat(Start.of(checkout, Map.of("JAVA_HOME", "/nowhere")))
        .isEqualTo(
            new Start(
                1,
                "",
                """
                Caryatid needs Java. JAVA_HOME is /nowhere, but there is no bin/java in it.
                Set JAVA_HOME to the folder of a JDK, 17 or newer, or unset it.
                """));
  }

  @Test
  void java16IsTooOld() throws Exception {
    assertThat(startWith(java("JAVA_VERSION=\"16.0.2\"", "exit 9")).err())
        .isEqualTo(tooOld("16.0.2"));
  }

  @Test
  void java8IsTooOldAlsoWithoutItsReleaseFile() throws Exception {
    String says = "echo 'java version \"1.8.0_402\"' >&2";
    assertThat(startWith(java("", says)).err()).isEqualTo(tooOld("1.8.0_402"));
  }

  @Test
  void aRuntimeWithoutACompilerCannotBuild() throws Exception {
    checkout.withMaven();
    Path home = java("JAVA_VERSION=\"17\"", "echo java.base@17");
    assertThat(startWith(home))
        .isEqualTo(
            new Start(
                1,
                "",
                "Caryatid is built on its first use, and "
                    + home
                    + "/bin/java cannot compile: it is a runtime without a compiler.\n"
                    + INSTALL_A_JDK));
  }

  @Test
  void withoutMavenItSaysWhatToInstall() throws Exception {
    assertThat(Start.of(checkout.withJava()))
        .isEqualTo(
            new Start(
                1,
                "",
                """
                Caryatid is built with Maven on its first use, and no Maven was found.
                Install it and try again.
                Debian, Ubuntu: sudo apt install maven
                Fedora: sudo dnf install maven
                macOS: brew install maven
                """));
  }

  @Test
  void aBuildThatFailsShowsWhyAndLeavesNoLock() throws Exception {
    Checkout.script(checkout.tools().resolve("mvn"), "#!/bin/sh\necho no network\nexit 1\n");
    assertThat(Start.of(checkout.withJava()))
        .isEqualTo(
            new Start(
                1,
                "",
                """
                Building Caryatid, first use only, about a minute ...
                no network
                Caryatid could not be built, the lines above say why. Its first build fetches libraries from the internet.
                """));
    assertThat(checkout.target("launcher.lock")).doesNotExist();
  }

  private Start startWith(Path home) throws IOException, InterruptedException {
    return Start.of(checkout, Map.of("JAVA_HOME", home.toString()));
  }

  /** A folder that looks like a Java, with what it says of itself and what its program does. */
  private Path java(String release, String does) throws IOException {
    Path home = folder.resolve("java");
    Files.createDirectories(home.resolve("bin"));
    if (!release.isEmpty()) {
      Files.writeString(home.resolve("release"), release + "\n");
    }
    Checkout.script(home.resolve("bin/java"), "#!/bin/sh\n" + does + "\n");
    return home;
  }

  private String tooOld(String version) {
    return "Caryatid needs Java 17 or newer, and "
        + folder.resolve("java/bin/java")
        + " is "
        + version
        + ".\n"
        + INSTALL_A_JDK;
  }
}
