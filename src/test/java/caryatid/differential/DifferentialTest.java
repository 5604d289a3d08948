package caryatid.differential;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * An old version and the one that is built here do the same. Regression by its nature: it says what
 * changed, not what is right.
 */
@Tag("differential")
class DifferentialTest {
  private static final Path EXPECTED =
      Path.of("src/test/resources/caryatid/differential/expected.txt");

  /** Mutated exports compared by numbers and text. */
  private static final int MUTANTS = Integer.getInteger("mutants", 10_000);

  /** Mutated exports, of those that can be used, compared by their pages. */
  private static final int PAGES = Math.min(200, MUTANTS / 10);

  /** Where the exports of the first differences are kept, to be looked at. */
  private static final Path KEPT = Path.of(System.getProperty("differences", "target/differences"));

  private static Version old;
  private static Version now;

  @TempDir private Path folder;
  private Path out;
  private Tally tally;

  @BeforeAll
  static void load() throws Exception {
    String jar = System.getProperty("old.jar");
    assertThat(jar).as("the old version: -Dold.jar=PATH").isNotNull();
    old = Version.in(Path.of(jar));
    now = Version.here();
  }

  @AfterAll
  static void close() throws IOException {
    old.close();
  }

  @BeforeEach
  void prepare() throws IOException {
    out = folder.resolve("out");
    tally = new Tally(new Pair(old, now, out), Expected.read(EXPECTED));
  }

  @AfterEach
  void report() {
    System.out.println(tally.text());
  }

  @Test
  void samplesAreTheSame() throws IOException {
    for (Case one : Cases.samples(out)) {
      tally.compare(one);
    }
    assertThat(tally.differing()).isZero();
  }

  @Test
  void specimensAreTheSame() throws IOException {
    for (Case one : Cases.specimens(out)) {
      tally.compare(one);
    }
    assertThat(tally.differing()).isZero();
  }

  @Test
  void recordsAreTheSame() throws IOException {
    for (Case one : Cases.records(out)) {
      tally.compare(one);
    }
    assertThat(tally.differing()).isZero();
  }

  @Test
  void mutatedExportsAreTheSame() throws IOException {
    long start = System.nanoTime();
    for (int number = 0; number < MUTANTS; number++) {
      compare(Mutant.of(number), "mutated export", "csv,json");
      if (number % 1000 == 999) {
        System.out.printf("%d mutated exports, %d differ%n", number + 1, tally.differing());
      }
    }
    System.out.printf("%d mutated exports in %.0f s%n", MUTANTS, (System.nanoTime() - start) / 1e9);
    assertThat(tally.differing()).isZero();
  }

  @Test
  void pagesOfMutatedExportsAreTheSame() throws IOException {
    Pair pair = new Pair(old, now, out);
    int made = 0;
    for (int number = 0; made < PAGES && number < 100 * PAGES; number++) {
      Mutant mutant = Mutant.of(number);
      if (pair.isDone(mutant.check(file(mutant), "", "csv", out))) {
        compare(mutant, "mutated export, pages", "pdf,html");
        made++;
      }
    }
    assertThat(made).isEqualTo(PAGES);
    assertThat(tally.differing()).isZero();
  }

  private void compare(Mutant mutant, String kind, String forms) throws IOException {
    if (!tally.compare(mutant.check(file(mutant), kind, forms, out)) && tally.differing() <= 20) {
      Files.createDirectories(KEPT);
      Files.write(KEPT.resolve(mutant.number() + ".csv"), mutant.bytes());
    }
  }

  /** The one place where exports are written: messages name it. */
  private Path file(Mutant mutant) {
    return folder.resolve(mutant.number() % 2 == 0 ? "stand.csv" : "stand.txt");
  }
}
