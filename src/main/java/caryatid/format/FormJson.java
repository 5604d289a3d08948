package caryatid.format;

import caryatid.entry.form.Answers;
import caryatid.entry.form.Form;
import caryatid.entry.form.FormFault;
import caryatid.entry.form.FormReader;
import caryatid.entry.form.NameNotation;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.sheet.yaml.InputValue;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;

/** A form that was filled in as a JSON file of its own, led by its version. */
public final class FormJson {
  private FormJson() {}

  /**
   * Writes a form.
   *
   * @param key name of the version's member
   * @param version from 1
   */
  public static byte[] write(String key, int version, Answers answers) {
    try {
      return Json.write(
          json -> {
            json.writeStartObject();
            json.writeNumberField(key, version);
            EntryJson.members(json, answers);
            json.writeEndObject();
          });
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Reads a form.
   *
   * @param key name of the version's member
   * @param newest the newest version that can be read
   * @param name the file, for problems
   * @throws BadInput if it is no such form, or of a newer version
   */
  public static Answers read(String key, int newest, Form form, byte[] bytes, String name)
      throws BadInput {
    Place place = Place.of(name);
    try {
      if (Json.read(bytes, name) instanceof InputValue.Group group
          && group.members().get(key) instanceof InputValue.Single version
          && version.text().matches("[1-9]\\d{0,8}")) {
        if (Integer.parseInt(version.text()) > newest) {
          throw new BadInput(
              Problem.at(place, FormFault.NEWER_FORM, Argument.text(version.text())));
        }
        Map<String, InputValue> members = new LinkedHashMap<>(group.members());
        members.remove(key);
        return FormReader.read(
            form, new InputValue.Group(members, group.place()), NameNotation.CODES);
      }
    } catch (IOException e) {
      throw new BadInput(
          Problem.at(place, FormFault.NOT_JSON, Argument.text(String.valueOf(e.getMessage()))));
    }
    throw new BadInput(Problem.at(place, FormFault.MISSING, Argument.text(key)));
  }
}
