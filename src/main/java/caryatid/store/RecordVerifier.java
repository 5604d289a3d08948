package caryatid.store;

import static java.nio.charset.StandardCharsets.US_ASCII;

import caryatid.fitting.FittingRecord;
import caryatid.remark.Argument;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import io.ocfl.api.model.ValidationIssue;
import io.ocfl.api.model.ValidationResults;
import io.ocfl.core.validation.Validator;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Checks a record: every inventory against its sum file, every kept byte against its sum, every
 * entry against its form, and the structure by the library's validator. The library checks sums as
 * well; ours are there to name the file.
 */
final class RecordVerifier {
  private static final String DECLARATION = "ocfl_object_1.1";

  private final ObjectFiles files;
  private final Set<Problem> found = new LinkedHashSet<>();

  private RecordVerifier(ObjectFiles files) {
    this.files = files;
  }

  static List<Problem> verify(Path object, ObjectFiles files) {
    RecordVerifier verifier = new RecordVerifier(files);
    verifier.links(object);
    verifier.bytes();
    verifier.structure(object);
    return List.copyOf(verifier.found);
  }

  /** Every byte and every entry, without the library's validator. */
  static List<Problem> bytes(ObjectFiles files) {
    RecordVerifier verifier = new RecordVerifier(files);
    verifier.bytes();
    return List.copyOf(verifier.found);
  }

  private void bytes() {
    declaration();
    inventories();
    Optional<FittingRecord> record = RecordReader.read(files).map(StoredRecord::record);
    record.ifPresent(r -> found.addAll(r.damage()));
    record.ifPresent(this::newest);
    if (found.isEmpty()) {
      record.ifPresent(this::entries);
    }
    contents();
  }

  private void links(Path object) {
    try {
      Leftovers.firstLink(object)
          .ifPresent(link -> damaged(object.relativize(link).toString(), Damage.LINK));
    } catch (IOException e) {
      damaged("", Damage.UNREADABLE, Argument.text(FailureReason.of(e)));
    }
  }

  private void declaration() {
    try {
      if (!new String(files.bytes("0=" + DECLARATION), US_ASCII).equals(DECLARATION + "\n")) {
        damaged("0=" + DECLARATION, Damage.CHANGED);
      }
    } catch (IOException e) {
      damaged("0=" + DECLARATION, Damage.MISSING);
    }
  }

  private void inventories() {
    inventory("");
    try {
      files.versions().stream().sorted().forEach(v -> inventory("v" + v + "/"));
    } catch (IOException e) {
      damaged("", Damage.UNREADABLE, Argument.text(FailureReason.of(e)));
    }
  }

  private void inventory(String folder) {
    try {
      ObjectFiles.sum(files.bytes(folder + ObjectFiles.SUM));
    } catch (IOException e) {
      damaged(folder + ObjectFiles.SUM, Damage.SUM_FILE);
      return;
    }
    try {
      files.inventory(folder);
    } catch (IOException e) {
      damaged(folder + ObjectFiles.INVENTORY, Damage.INVENTORY, Argument.text(ObjectFiles.SUM));
    }
  }

  /** With the record locked and what was interrupted finished, no version is on its way. */
  private void newest(FittingRecord record) {
    try {
      int newest = files.versions().stream().mapToInt(v -> v).max().orElse(0);
      if (found.isEmpty() && newest != record.size()) {
        damaged(
            ObjectFiles.INVENTORY,
            Damage.OLDER,
            Argument.count(record.size()),
            Argument.count(newest));
      }
    } catch (IOException e) {
      damaged("", Damage.UNREADABLE, Argument.text(FailureReason.of(e)));
    }
  }

  /** Each version has added its entry. */
  private void entries(FittingRecord record) {
    for (int number = 1; number <= record.size(); number++) {
      int wanted = number;
      if (record.entries().stream().noneMatch(e -> e.number() == wanted)
          && record.unread().stream().noneMatch(u -> u.number() == wanted)) {
        damaged("v" + number, Damage.NO_ENTRY);
      }
    }
  }

  private void contents() {
    try {
      for (Map.Entry<String, String> content :
          files.inventory("").inventory().contents().entrySet()) {
        content(content.getValue(), content.getKey());
      }
    } catch (IOException e) {
      // Its inventory is named above; the sums in it cannot be trusted.
      damaged(ObjectFiles.INVENTORY, Damage.INVENTORY, Argument.text(ObjectFiles.SUM));
    }
  }

  private void content(String path, String digest) {
    try (InputStream stream = files.open(path)) {
      if (!Digests.of(Digests.SHA_512, stream).equals(digest)) {
        damaged(path, Damage.CHANGED);
      }
    } catch (IOException e) {
      damaged(path, Damage.MISSING);
    }
  }

  private void structure(Path object) {
    try {
      ValidationResults results = Validator.validateObject(object, found.isEmpty());
      results.getErrors().forEach(this::structure);
    } catch (RuntimeException e) {
      // The validator gives up on some damage instead of listing it.
      damaged("", Damage.STRUCTURE, Argument.text(FailureReason.of(e)));
    }
  }

  /** Of a file that is named already, the validator's word is not needed. */
  private void structure(ValidationIssue issue) {
    if (found.stream().noneMatch(p -> issue.getMessage().contains(p.place().file()))) {
      damaged("", Damage.STRUCTURE, Argument.text(issue.getCode() + " " + issue.getMessage()));
    }
  }

  private void damaged(String path, Damage what, Argument... arguments) {
    String code = files.code().text();
    found.add(Problem.at(Place.of(path.isEmpty() ? code : code + "/" + path), what, arguments));
  }
}
