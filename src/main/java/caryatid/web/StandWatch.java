package caryatid.web;

import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.usecase.stand.StandDraft;
import caryatid.usecase.stand.StandFields;
import caryatid.usecase.stand.WatchedFolder;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/** Takes the exports that arrive in the watched folder, not yet counted. */
final class StandWatch {
  private final WindowState state;

  StandWatch(WindowState state) {
    this.state = state;
  }

  /** Watches the folder that is typed from now on; nothing where it cannot be read. */
  void begin(String code, Map<String, String> fields) {
    state.stopWatching(code);
    Optional<String> typed = Optional.ofNullable(fields.get(StandFields.WATCHED));
    if (typed.isPresent()) {
      try {
        state.watch(code, Path.of(typed.get()));
      } catch (IOException | InvalidPathException e) {
        state.stopWatching(code);
      }
    }
  }

  /** Looks once; what is done goes into the draft. */
  void look(String code, StandDraft draft) throws BadInput, StoreFailure {
    Optional<WatchedFolder> watched = state.watched(code);
    if (watched.isPresent()) {
      for (Path file : watched.get().done()) {
        take(draft, watched.get(), file);
      }
    }
  }

  private static void take(StandDraft draft, WatchedFolder watched, Path file)
      throws BadInput, StoreFailure {
    try (InputStream bytes = Files.newInputStream(file)) {
      draft.take(file.getFileName().toString(), bytes);
    } catch (IOException lockedForTheMoment) {
      watched.again(file);
    }
  }

  /** Takes a file on this computer whose path was typed. */
  static void take(StandDraft draft, NamedBytes file) throws BadInput, StoreFailure {
    try (InputStream bytes = file.open()) {
      draft.take(file.name(), bytes);
    } catch (IOException e) {
      throw file.unreadable(e);
    }
  }
}
