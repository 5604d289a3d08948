package caryatid.store;

import static caryatid.demo.Invented.CODE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import caryatid.demo.Invented;
import caryatid.fitting.Addition;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.wording.Wording;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A real small file system that fills up, and one that cannot be written to. Needs root on Linux.
 */
@Tag("proof")
class FullDiskTest {
  @TempDir private Path folder;

  @Test
  void onAFullDiskTheErrorIsClearAndTheRecordIsAsItWas() throws Exception {
    onSmallDisk(
        () -> {
          Store store = Invented.store(folder);
          store.start(CODE, Invented.opening());
          String said = "";
          int size = 1;
          while (said.isEmpty()) {
            said = says(store, Invented.stand(size, 1000));
            size += said.isEmpty() ? 1 : 0;
          }
          assertThat(said)
              .startsWith(
                  "K7-right: could not be written and is unchanged: No space left on device");
          assertThat(store.read(CODE).entries()).hasSize(size);
          assertThat(store.verify(CODE)).isEmpty();
          return size;
        });
  }

  @Test
  void aStoreThatCannotBeWrittenToIsReadVerifiedAndSaysSoWhenAddedTo() throws Exception {
    onSmallDisk(
        () -> {
          Store store = Invented.store(folder);
          store.start(CODE, Invented.opening());
          run("mount", "-o", "remount,ro", folder.toString());
          assertThat(says(store, Invented.note("x")))
              .startsWith(
                  folder + ": could not be written and is unchanged: Read-only file system");
          assertThat(store.read(CODE).entries()).hasSize(1);
          assertThat(store.verify(CODE)).isEmpty();
          return 0;
        });
  }

  private void onSmallDisk(Callable<Integer> test) throws Exception {
    assumeThat(run("mount", "-t", "tmpfs", "-o", "size=2m", "tmpfs", folder.toString()))
        .as("needs the right to mount a small file system")
        .isZero();
    try {
      test.call();
    } finally {
      run("umount", folder.toString());
    }
  }

  private static String says(Store store, Addition addition) {
    try {
      store.add(CODE, addition);
      return "";
    } catch (BadInput e) {
      throw new AssertionError(e);
    } catch (StoreFailure e) {
      return Wording.in(Locale.ENGLISH).say(e.problems().get(0));
    }
  }

  private int run(String... command) throws Exception {
    try {
      return new ProcessBuilder(command)
          .redirectErrorStream(true)
          .redirectOutput(Files.createTempFile("said", ".txt").toFile())
          .start()
          .waitFor();
    } catch (IOException e) {
      return -1;
    }
  }
}
