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
 * entry against its form, and the whole by the library's validator. The library checks sums as
 * well; ours are there to name the file.
 */
final class Verifying {
  private static final String DECLARATION = "ocfl_object_1.1";

  private final ObjectFiles files;
  private final Set<Problem> found = new LinkedHashSet<>();

  private Verifying(ObjectFiles files) {
    this.files = files;
  }

  static List<Problem> verify(Path object, ObjectFiles files) {
    Verifying verifying = new Verifying(files);
    verifying.bytes();
    verifying.structure(object);
    return List.copyOf(verifying.found);
  }

  /** Every byte and every entry, without the library's validator. */
  static List<Problem> bytes(ObjectFiles files) {
    Verifying verifying = new Verifying(files);
    verifying.bytes();
    return List.copyOf(verifying.found);
  }

  private void bytes() {
    declaration();
    inventories();
    Optional<FittingRecord> record = RecordReader.read(files).map(StoredRecord::record);
    record.ifPresent(r -> found.addAll(r.damage()));
    if (found.isEmpty()) {
      record.ifPresent(this::entries);
    }
    contents();
  }

  private void declaration() {
    try {
      if (!new String(files.bytes("0=" + DECLARATION), US_ASCII).equals(DECLARATION + "\n")) {
        hurt("0=" + DECLARATION, Damage.CHANGED);
      }
    } catch (IOException e) {
      hurt("0=" + DECLARATION, Damage.MISSING);
    }
  }

  private void inventories() {
    inventory("");
    try {
      files.versions().stream().sorted().forEach(v -> inventory("v" + v + "/"));
    } catch (IOException e) {
      hurt("", Damage.UNREADABLE, Argument.text(Reason.of(e)));
    }
  }

  private void inventory(String folder) {
    try {
      ObjectFiles.sum(files.bytes(folder + ObjectFiles.SUM));
    } catch (IOException e) {
      hurt(folder + ObjectFiles.SUM, Damage.SUM_FILE);
      return;
    }
    try {
      files.inventory(folder);
    } catch (IOException e) {
      hurt(folder + ObjectFiles.INVENTORY, Damage.INVENTORY, Argument.text(ObjectFiles.SUM));
    }
  }

  /** Each version has added its entry. */
  private void entries(FittingRecord record) {
    for (int number = 1; number <= record.size(); number++) {
      int wanted = number;
      if (record.entries().stream().noneMatch(e -> e.number() == wanted)
          && record.unread().stream().noneMatch(u -> u.number() == wanted)) {
        hurt("v" + number, Damage.NO_ENTRY);
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
      hurt(ObjectFiles.INVENTORY, Damage.INVENTORY, Argument.text(ObjectFiles.SUM));
    }
  }

  private void content(String path, String digest) {
    try (InputStream stream = files.open(path)) {
      if (!Digests.of(Digests.SHA_512, stream).equals(digest)) {
        hurt(path, Damage.CHANGED);
      }
    } catch (IOException e) {
      hurt(path, Damage.MISSING);
    }
  }

  private void structure(Path object) {
    try {
      ValidationResults results = Validator.validateObject(object, found.isEmpty());
      results.getErrors().forEach(this::structure);
    } catch (RuntimeException e) {
      // The validator gives up on some damage instead of listing it.
      hurt("", Damage.STRUCTURE, Argument.text(Reason.of(e)));
    }
  }

  /** Of a file that is named already, the validator's word is not needed. */
  private void structure(ValidationIssue issue) {
    if (found.stream().noneMatch(p -> issue.getMessage().contains(p.place().file()))) {
      hurt("", Damage.STRUCTURE, Argument.text(issue.getCode() + " " + issue.getMessage()));
    }
  }

  private void hurt(String path, Damage what, Argument... arguments) {
    String code = files.code().text();
    found.add(Problem.at(Place.of(path.isEmpty() ? code : code + "/" + path), what, arguments));
  }
}
