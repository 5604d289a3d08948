package caryatid.format;

import caryatid.entry.Entry;
import caryatid.entry.KeptFile;
import caryatid.entry.form.Answers;
import caryatid.entry.form.Choices;
import caryatid.entry.form.ContentToAnswers;
import caryatid.entry.form.FormFault;
import caryatid.entry.form.FormReader;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.sheet.yaml.InputValue;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** An entry as JSON and back; docs/fitting-entry.schema.json says the same as a JSON Schema. */
public final class EntryJson {
  private EntryJson() {}

  public static byte[] write(Entry entry) {
    try {
      return Json.write(json -> envelope(json, entry));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Writes an entry that is to be kept.
   *
   * @throws BadInput if it could not be read again, with the fields that would be the reason: an
   *     entry that nobody can read would damage its record for good
   */
  public static byte[] kept(Entry entry) throws BadInput {
    byte[] bytes = write(entry);
    try {
      own(bytes, entry.kind().key());
    } catch (BadInput e) {
      Place place = Place.of(entry.kind().key());
      throw new BadInput(
          e.problems().stream().map(p -> new Problem(place, p.topic(), p.arguments())).toList());
    }
    return bytes;
  }

  private static void envelope(JsonGenerator json, Entry entry) throws IOException {
    json.writeStartObject();
    json.writeNumberField(EntryHeader.VERSION, EntryHeader.CURRENT);
    json.writeNumberField("number", entry.number());
    json.writeStringField("kind", entry.kind().key());
    json.writeStringField("at", EntryHeader.TIME.format(entry.at()));
    json.writeStringField("by", entry.by());
    if (entry.corrects().isPresent()) {
      json.writeNumberField("corrects", entry.corrects().get().number());
      json.writeStringField("because", entry.corrects().get().why());
    }
    Optional<OffsetDateTime> asOf = entry.corrects().flatMap(Entry.Correction::asOf);
    if (asOf.isPresent()) {
      json.writeStringField("as-of", EntryHeader.TIME.format(asOf.get()));
    }
    json.writeFieldName("content");
    group(json, ContentToAnswers.answers(entry.content()));
    if (!entry.files().isEmpty()) {
      files(json, entry);
    }
    json.writeEndObject();
  }

  private static void files(JsonGenerator json, Entry entry) throws IOException {
    json.writeArrayFieldStart("files");
    for (KeptFile file : entry.files()) {
      json.writeStartObject();
      json.writeStringField("name", file.name());
      json.writeStringField("is", Choices.ROLE.code(file.is()));
      json.writeStringField("original", file.original());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void group(JsonGenerator json, Answers answers) throws IOException {
    json.writeStartObject();
    members(json, answers);
    json.writeEndObject();
  }

  /** Answers as members of the object that is being written. */
  static void members(JsonGenerator json, Answers answers) throws IOException {
    for (Map.Entry<String, Answers.Value> answer : answers.values().entrySet()) {
      json.writeFieldName(answer.getKey());
      value(json, answer.getValue());
    }
  }

  private static void value(JsonGenerator json, Answers.Value value) throws IOException {
    if (value instanceof Answers.Value.Name name) {
      name(json, name);
    } else if (value instanceof Answers.Value.Words words) {
      json.writeString(words.text());
    } else if (value instanceof Answers.Value.Amount amount) {
      json.writeNumber(amount.number().toPlainString());
    } else if (value instanceof Answers.Value.YesNo yesNo) {
      json.writeBoolean(yesNo.yes());
    } else {
      json.writeStartArray();
      for (Answers row : ((Answers.Value.Rows) value).rows()) {
        group(json, row);
      }
      json.writeEndArray();
    }
  }

  private static void name(JsonGenerator json, Answers.Value.Name name) throws IOException {
    json.writeStartObject();
    if (name.code().isPresent()) {
      json.writeStringField(FormReader.CODE, name.code().get().code());
    }
    if (!name.text().isBlank()) {
      json.writeStringField(FormReader.TEXT, name.text());
    }
    json.writeEndObject();
  }

  /**
   * Reads an entry of any version.
   *
   * @param name the file, for problems
   */
  public static EntryReading read(byte[] bytes, String name) {
    try {
      InputValue given = parse(bytes, name);
      Optional<String> newer =
          given instanceof InputValue.Group group ? EntryHeader.newer(group) : Optional.empty();
      return newer.isPresent()
          ? new EntryReading.Newer(
              Problem.at(Place.of(name), FormFault.NEWER_FORM, Argument.text(newer.get())))
          : new EntryReading.Done(entry(given));
    } catch (BadInput e) {
      return new EntryReading.Unreadable(e.problems());
    }
  }

  /**
   * Reads an entry that this program wrote.
   *
   * @throws BadInput if it cannot be read, with everything that is wrong
   */
  public static Entry own(byte[] bytes, String name) throws BadInput {
    return entry(parse(bytes, name));
  }

  private static Entry entry(InputValue given) throws BadInput {
    if (!(given instanceof InputValue.Group group)
        || !(group.members().get("content") instanceof InputValue.Group content)) {
      throw new BadInput(Problem.at(given.place(), FormFault.MISSING, Argument.text("content")));
    }
    Map<String, InputValue> members = new LinkedHashMap<>(group.members());
    members.remove("content");
    return EntryHeader.open(new InputValue.Group(members, group.place()), content);
  }

  private static InputValue parse(byte[] bytes, String name) throws BadInput {
    try {
      return Json.read(bytes, name);
    } catch (IOException e) {
      throw new BadInput(Problem.at(Place.of(name), FormFault.NOT_JSON, Argument.why(e)));
    }
  }
}
