package caryatid.fuzz;

import caryatid.blackbox.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** Gives spoilt files to the command line, and prints what should not have happened. */
final class Fuzz {
  private static final long MOST_MS = 2000;

  private final Path folder;
  private final List<Specimen> specimens;
  private int strange;
  private int refused;
  private int done;
  private int moved;
  private long longestMs;

  private Fuzz(Path folder) throws IOException {
    this.folder = folder;
    this.specimens = List.of(Specimen.pressure(), Specimen.forces());
  }

  /** Arguments: a folder to work in, how many recordings to check, to inspect, how many sheets. */
  public static void main(String[] arguments) throws IOException {
    Fuzz fuzz = new Fuzz(Path.of(arguments[0]));
    fuzz.recordings(Integer.parseInt(arguments[1]));
    fuzz.inspections(Integer.parseInt(arguments[2]));
    fuzz.sheets(Integer.parseInt(arguments[3]));
    System.out.println(fuzz);
    System.out.flush();
  }

  private void recordings(int count) throws IOException {
    for (int seed = 0; seed < count; seed++) {
      Specimen specimen = specimens.get(seed % specimens.size());
      Path spoilt = spoilt(specimen.recording(), "spoilt.csv", seed);
      Run run = judge("check " + seed, specimen.check(spoilt));
      compare("check " + seed, specimen, run, found -> specimen.justifies(spoilt, found));
    }
  }

  private void inspections(int count) throws IOException {
    for (int seed = 0; seed < count; seed++) {
      Specimen specimen = specimens.get(seed % specimens.size());
      Path spoilt = spoilt(specimen.recording(), "spoilt.csv", seed);
      judge("inspect " + seed, "inspect", spoilt.toString());
    }
  }

  private void sheets(int count) throws IOException {
    for (int seed = 0; seed < count; seed++) {
      Specimen specimen = specimens.get(seed / 2 % specimens.size());
      Path sound = seed % 2 == 0 ? specimen.sheet() : specimen.plate();
      Path spoilt = spoilt(sound, "spoilt.yaml", seed);
      String what = (seed % 2 == 0 ? "sheet " : "description ") + seed;
      Run run = judge(what, specimen.checkWith(spoilt, seed % 2 == 0));
      compare(what, specimen, run, found -> Yaml.says(sound, spoilt));
    }
  }

  private Path spoilt(Path sound, String name, int seed) throws IOException {
    return Files.write(folder.resolve(name), new Spoiler(seed).spoil(Files.readAllBytes(sound)));
  }

  private Run judge(String what, String... command) {
    long start = System.nanoTime();
    Run run = Run.caryatid(command);
    long ms = (System.nanoTime() - start) / 1_000_000;
    longestMs = Math.max(longestMs, ms);
    boolean trace = run.err().contains("\tat ") || run.err().contains("nobody foresaw");
    boolean said = run.code() == 0 || !(run.out() + run.err()).isBlank();
    refused += run.code() == 0 ? 0 : 1;
    done += run.code() == 0 ? 1 : 0;
    if (trace || !said || run.code() < 0 || run.code() > 2 || ms > MOST_MS) {
      tell(what + ": exit " + run.code() + ", " + ms + " ms: " + run.err());
    }
    return run;
  }

  /** A finding that is another in silence needs a reason in what was spoilt. */
  private void compare(String what, Specimen specimen, Run run, Reason reason) throws IOException {
    if (run.code() != 0) {
      return;
    }
    FuzzFailures found = FuzzFailures.in(run.out());
    if (specimen.sound().differsInSilence(found)) {
      moved++;
      if (!reason.explains(found)) {
        tell(what + ": another finding without a remark: " + found);
      }
    }
  }

  /** Whether what was spoilt explains a finding. */
  private interface Reason {
    boolean explains(FuzzFailures found) throws IOException;
  }

  private void tell(String what) {
    strange++;
    System.out.println(what);
  }

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT,
        "strange %d, refused %d, done %d, of these another finding without a remark %d, longest %d ms",
        strange,
        refused,
        done,
        moved,
        longestMs);
  }
}
