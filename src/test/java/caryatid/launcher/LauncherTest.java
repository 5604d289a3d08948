package caryatid.launcher;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

@Tag("proof")
@DisabledOnOs(OS.WINDOWS)
class LauncherTest {
  private static final String FIRST = "Building Caryatid, first use only, about a minute ...\n";
  private static final String AGAIN = "Building Caryatid again, its sources have changed ...\n";
  private static final String DAMAGED =
      "Building Caryatid again, its files were changed or damaged ...\n";
  private static final String WAITING = "Another start of Caryatid is building it; waiting ...\n";

  @TempDir private Path folder;
  private Checkout checkout;

  @BeforeEach
  void copy() throws IOException {
    checkout = Checkout.in(folder, "a folder with spaces").withJava().withMaven();
  }

  @Test
  void itBuildsOnItsFirstUseAndOnlyThen() throws Exception {
    assertThat(Start.of(checkout, "a", "b c")).isEqualTo(new Start(0, "echo a|b c\n", FIRST));
    assertThat(Start.of(checkout, "a", "b c")).isEqualTo(new Start(0, "echo a|b c\n", ""));
    assertThat(checkout.builds()).isEqualTo(1);
  }

  @Test
  void itBuildsAgainWhenASourceIsNewer() throws Exception {
    Start.of(checkout);
    Path source = Files.writeString(checkout.home().resolve("src/main/New.java"), "");
    Files.setLastModifiedTime(source, FileTime.from(Instant.now()));
    assertThat(Start.of(checkout)).isEqualTo(new Start(0, "echo \n", AGAIN));
    assertThat(Start.of(checkout)).isEqualTo(new Start(0, "echo \n", ""));
  }

  @Test
  void itPassesTheExitCodeOn() throws Exception {
    assertThat(Start.of(checkout, "2").exit()).isEqualTo(2);
  }

  @Test
  void itIsFoundThroughSymbolicLinks() throws Exception {
    Path link = Files.createSymbolicLink(folder.resolve("link"), checkout.launcher());
    Path second = Files.createSymbolicLink(folder.resolve("second"), Path.of("link"));
    assertThat(Start.begin(checkout, link, Map.of(), "x").end().out()).isEqualTo("echo x\n");
    assertThat(Start.begin(checkout, second, Map.of(), "y").end().out()).isEqualTo("echo y\n");
  }

  @Test
  void twoFirstUsesAtOnceBuildOnce() throws Exception {
    Start.Going one = Start.begin(checkout, checkout.launcher(), Map.of(), "one");
    Start.Going two = Start.begin(checkout, checkout.launcher(), Map.of(), "two");
    Start first = one.end();
    Start second = two.end();
    assertThat(first.out() + second.out()).isEqualTo("echo one\necho two\n");
    assertThat(List.of(first.err(), second.err())).containsExactlyInAnyOrder(FIRST, WAITING);
    assertThat(checkout.builds()).isEqualTo(1);
    assertThat(checkout.target("launcher.lock")).doesNotExist();
  }

  @Test
  void aLockThatAStoppedStartLeftBehindIsTakenAway() throws Exception {
    Files.createDirectories(checkout.target("launcher.lock"));
    Process ended = new ProcessBuilder("true").start();
    ended.waitFor();
    Files.writeString(checkout.target("launcher.lock").resolve("holder"), ended.pid() + "\n");
    assertThat(Start.of(checkout)).isEqualTo(new Start(0, "echo \n", FIRST));
  }

  @Test
  void aLockWhoseProcessNumberIsAnothersByNowIsTakenAway() throws Exception {
    Files.createDirectories(checkout.target("launcher.lock"));
    String other = ProcessHandle.current().pid() + "\nThu Jan  1 00:00:00 1970\n";
    Files.writeString(checkout.target("launcher.lock").resolve("holder"), other);
    assertThat(Start.of(checkout)).isEqualTo(new Start(0, "echo \n", FIRST));
  }

  @Test
  void aDamagedJarIsNoticedAndBuiltAgain() throws Exception {
    Start.of(checkout);
    byte[] jar = Files.readAllBytes(checkout.target("caryatid.jar"));
    Files.write(checkout.target("caryatid.jar"), Arrays.copyOf(jar, jar.length / 2));
    assertThat(Start.of(checkout, "x")).isEqualTo(new Start(0, "echo x\n", DAMAGED));
    assertThat(Start.of(checkout, "x")).isEqualTo(new Start(0, "echo x\n", ""));
  }

  @Test
  void afterACrashWhatWasBuiltIsChecked() throws Exception {
    Start.of(checkout);
    Path crashes = checkout.target(".caryatid/crashes");
    Path crash = Files.writeString(crashes.resolve("crash-7.log"), "");
    flipABitUnnoticed(checkout.target("caryatid.jar"));
    assertThat(Start.of(checkout, "x"))
        .isEqualTo(
            new Start(
                0,
                "echo x\n",
                "The last start of Caryatid crashed; what Java says of it is in "
                    + crash
                    + ". Checking what was built ...\n"
                    + DAMAGED));
    assertThat(Start.of(checkout, "x")).isEqualTo(new Start(0, "echo x\n", ""));
  }

  @Test
  void whatJavaSaysOfACrashIsForItsOwnerAlone() throws Exception {
    Start.of(checkout, "x");
    assertThat(
            PosixFilePermissions.toString(
                Files.getPosixFilePermissions(checkout.target(".caryatid/crashes"))))
        .isEqualTo("rwx------");
  }

  private static void flipABitUnnoticed(Path file) throws IOException {
    FileTime time = Files.getLastModifiedTime(file);
    byte[] bytes = Files.readAllBytes(file);
    bytes[bytes.length / 2] ^= 4;
    Files.write(file, bytes);
    Files.setLastModifiedTime(file, time);
  }

  /** Java 17 finds no class of ours in its archive where the folder's name has a space. */
  @Test
  void javaTakesItsClassesFromTheArchive() throws Exception {
    Checkout plain = Checkout.in(folder.resolve("plain"), "folder").withJava().withMaven();
    Start.of(plain);
    Path log = folder.resolve("classes.log");
    Start.of(plain, Map.of("_JAVA_OPTIONS", "-Xlog:class+load:file=" + log));
    assertThat(Files.readString(log)).contains(Checkout.REHEARSAL + " source: shared objects file");
  }

  @Test
  void anArchiveThatJavaRefusesIsNoMatter() throws Exception {
    Start.of(checkout);
    Files.delete(checkout.target("start.jsa"));
    Files.writeString(checkout.target("start.jsa"), "not an archive");
    assertThat(Start.of(checkout, "x")).isEqualTo(new Start(0, "echo x\n", ""));
  }

  @Test
  void aMovedFolderGetsAnArchiveOfItsOwn() throws Exception {
    Start.of(checkout);
    Path moved = Files.move(checkout.home(), folder.resolve("moved"));
    Checkout there = new Checkout(moved, checkout.tools(), checkout.path());
    assertThat(Start.of(there, "x")).isEqualTo(new Start(0, "echo x\n", ""));
    assertThat(Files.readAllLines(there.target("start.jsa.key")).get(0)).endsWith(" " + moved);
  }
}
