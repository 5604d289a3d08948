package caryatid.usecase.batch;

import caryatid.alignment.Result;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import caryatid.report.BatchPage;
import caryatid.report.FindingRow;
import caryatid.report.FindingsCsv;
import caryatid.report.RefusedCsv;
import caryatid.report.pages.Paper;
import caryatid.usecase.file.FileAccess;
import caryatid.usecase.file.Output;
import caryatid.wording.Wording;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.Semaphore;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * Checks many states, each by itself and as {@code check} would, several at a time. The table is
 * the same whatever the number at a time. A state that cannot be checked stops no other one. An
 * interrupted batch that is run again takes over what it has.
 */
public final class Batch {
  static final String RESULTS = "results";
  static final String REPORTS = "reports";
  private static final String PAGE = "findings.html";

  private Batch() {}

  /**
   * What is to be made, and where.
   *
   * @param folder for the table, the page, the results and the reports
   * @param reports whether each state gets its report (PDF)
   * @param paper of the reports
   * @param words whether the table holds what people wrote in their own words
   * @param atATime how many states are checked at a time, from 1
   */
  public record BatchOrder(Path folder, boolean reports, Paper paper, boolean words, int atATime) {
    /**
     * @throws IllegalArgumentException if nothing is checked at a time
     */
    public BatchOrder {
      if (atATime < 1) {
        throw new IllegalArgumentException("at a time: " + atATime);
      }
    }
  }

  /**
   * The states in folders and lists, in their order.
   *
   * @param out the folder for what is made; what lies there is no input
   * @param plate the plate description of those that name none
   * @throws BadInput if one cannot be read, or nothing is found in it
   */
  public static List<BatchState> states(
      List<Path> folders, List<Path> lists, Path out, Optional<Path> plate, FileAccess files)
      throws BadInput {
    List<BatchState> states = new ArrayList<>();
    for (Path folder : folders) {
      Path name = folder.toAbsolutePath().normalize().getFileName();
      String prefix = folders.size() > 1 && name != null ? name + "/" : "";
      states.addAll(found(folder, BatchFolder.states(folder, Optional.of(out), prefix, plate)));
    }
    for (Path list : lists) {
      states.addAll(found(list, BatchList.states(list, files.read(list), plate)));
    }
    requireDifferentNames(states);
    return states;
  }

  private static List<BatchState> found(Path in, List<BatchState> states) throws BadInput {
    if (states.isEmpty()) {
      throw new BadInput(Problem.at(Place.of(in.toString()), BatchProblem.NOTHING_FOUND));
    }
    return states;
  }

  /** By what a disk takes for one name, whatever the case of its letters. */
  private static void requireDifferentNames(List<BatchState> states) throws BadInput {
    Set<String> names = new HashSet<>();
    List<Problem> twice = new ArrayList<>();
    for (BatchState state : states) {
      if (!names.add(state.name().toLowerCase(Locale.ROOT))) {
        twice.add(Problem.at(Place.of(state.name()), BatchProblem.SAME_NAME));
      }
    }
    if (!twice.isEmpty()) {
      throw new BadInput(twice);
    }
  }

  /**
   * Refuses a folder that holds anything but an earlier run.
   *
   * @throws BadInput if it does
   */
  public static void requireOwn(Path folder) throws BadInput {
    if (Files.notExists(folder) || Files.exists(folder.resolve(FindingsCsv.METADATA_FILE))) {
      return;
    }
    try (Stream<Path> inside = Files.list(folder)) {
      if (inside.findAny().isEmpty()) {
        return;
      }
    } catch (IOException | UncheckedIOException e) {
      throw new BadInput(
          Problem.at(Place.of(folder.toString()), BatchProblem.NO_FOLDER, Argument.why(e)));
    }
    throw new BadInput(Problem.at(Place.of(folder.toString()), BatchProblem.NOT_OURS));
  }

  /**
   * Checks all states and writes what was found.
   *
   * @param now the time now
   * @param done is given each outcome in the order of the states, as soon as those before it are
   *     there
   * @return all outcomes in the order of the states
   * @throws BadInput if the folder holds something else
   * @throws StoreFailure if something cannot be written; what was written stays, whole
   */
  public static List<BatchOutcome> run(
      List<BatchState> states,
      BatchOrder order,
      FileAccess files,
      Wording wording,
      OffsetDateTime now,
      Consumer<BatchOutcome> done)
      throws BadInput, StoreFailure {
    requireOwn(order.folder());
    // First of all, because it says whose folder this is.
    write(order, FindingsCsv.METADATA_FILE, FindingsCsv.metadata(order.words()), files);
    FreeWhileWriting turns = new FreeWhileWriting(files, new Semaphore(order.atATime()));
    StateCheck check = new StateCheck(order, turns, wording, now);
    ExecutorService threads = Executors.newFixedThreadPool(order.atATime() + 1);
    List<BatchOutcome> outcomes = new ArrayList<>();
    try {
      List<Future<BatchOutcome>> futures =
          states.stream()
              .map(state -> threads.submit(() -> turns.take(() -> check.of(state))))
              .toList();
      for (Future<BatchOutcome> future : futures) {
        BatchOutcome outcome = outcome(future);
        outcomes.add(outcome);
        done.accept(outcome);
      }
    } finally {
      threads.shutdownNow();
    }
    write(outcomes, order, files, wording);
    return outcomes;
  }

  private static BatchOutcome outcome(Future<BatchOutcome> future) throws StoreFailure {
    try {
      return future.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    } catch (ExecutionException e) {
      if (e.getCause() instanceof StoreFailure failure) {
        throw failure;
      }
      throw new IllegalStateException(e.getCause());
    }
  }

  private static void write(
      List<BatchOutcome> outcomes, BatchOrder order, FileAccess files, Wording wording)
      throws BadInput, StoreFailure {
    List<FindingRow> findings = outcomes.stream().flatMap(o -> o.findings().stream()).toList();
    List<BatchPage.State> states =
        outcomes.stream()
            .map(o -> new BatchPage.State(o.state(), o.unsafe(), o.problems()))
            .toList();
    BatchPage.Links links =
        new BatchPage.Links(RESULTS, order.reports() ? Optional.of(REPORTS) : Optional.empty());
    write(order, FindingsCsv.FILE, FindingsCsv.table(findings, order.words()), files);
    write(order, RefusedCsv.FILE, RefusedCsv.table(states, wording), files);
    byte[] page = BatchPage.of(findings, states, links, wording);
    write(order, PAGE, page, files);
  }

  private static void write(BatchOrder order, String name, byte[] bytes, FileAccess files)
      throws BadInput, StoreFailure {
    files.write(new Output(order.folder().resolve(name), true), bytes);
  }

  /**
   * How many results a folder holds of states that are not among these: its table leaves them out.
   *
   * @throws BadInput if the folder cannot be read
   */
  public static int others(Path folder, List<BatchState> states) throws BadInput {
    Path results = folder.resolve(RESULTS);
    Set<Path> own = new HashSet<>();
    states.forEach(state -> own.add(results.resolve(state.name() + ".json")));
    if (Files.notExists(results)) {
      return 0;
    }
    try (Stream<Path> inside = Files.walk(results)) {
      return (int) inside.filter(Files::isRegularFile).filter(file -> !own.contains(file)).count();
    } catch (IOException | UncheckedIOException e) {
      throw new BadInput(
          Problem.at(Place.of(folder.toString()), BatchProblem.NO_FOLDER, Argument.why(e)));
    }
  }

  /** Why a state is refused that could not be checked; what nobody foresaw stops no other state. */
  public static List<Problem> refusal(BatchState state, Exception failure) {
    if (failure instanceof BadInput bad) {
      return bad.problems();
    }
    Argument what = Argument.text(failure.getClass().getSimpleName());
    return List.of(Problem.at(Place.of(state.sheet().toString()), BatchProblem.UNFORESEEN, what));
  }

  /** Whether a result was found by this program's method and version. */
  static boolean isOfThisProgram(Result result, String program) {
    return result.method() == Result.METHOD && result.program().equals(program);
  }
}
