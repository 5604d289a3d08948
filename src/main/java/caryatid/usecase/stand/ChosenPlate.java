package caryatid.usecase.stand;

import static java.nio.charset.StandardCharsets.UTF_8;

import caryatid.clinic.KnownPlate;
import caryatid.recording.model.MeasuringLine;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.PlateLayout;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.sheet.DescriptionReader;
import caryatid.usecase.Records;
import caryatid.usecase.RememberedPlates;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The plates that the clinic remembers, and what of the chosen one is needed to measure from it.
 *
 * @param names the names of all; an empty one first where it is asked which one is meant
 * @param chosen the name of the chosen one; the first where none was chosen
 * @param plates names of its plates, from the left where their edges are known
 * @param forwardLines names of the lines from which one measures forward
 * @param rightwardLines names of the lines from which one measures to the right
 */
public record ChosenPlate(
    List<String> names,
    String chosen,
    List<String> plates,
    List<String> forwardLines,
    List<String> rightwardLines) {
  public ChosenPlate {
    names = List.copyOf(names);
    plates = List.copyOf(plates);
    forwardLines = List.copyOf(forwardLines);
    rightwardLines = List.copyOf(rightwardLines);
  }

  /**
   * The plate that a draft names.
   *
   * @return empty where the clinic remembers none
   * @throws BadInput if what the clinic remembers cannot be read
   */
  public static Optional<ChosenPlate> of(Records records, Map<String, String> fields)
      throws BadInput {
    Optional<KnownPlate> chosen = known(records, fields);
    if (chosen.isEmpty()) {
      return Optional.empty();
    }
    List<KnownPlate> all = RememberedPlates.all(records);
    Stream<String> none = isAsked(all, fields) ? Stream.of("") : Stream.of();
    List<String> names =
        Stream.concat(none, all.stream().map(plate -> label(plate, all)).distinct()).toList();
    PlateDescription plate = DescriptionReader.read(bytes(chosen.get()));
    return Optional.of(
        new ChosenPlate(
            names,
            label(chosen.get(), all),
            fromTheLeft(plate.plates()).stream().map(PlateLayout::name).toList(),
            lines(plate, MeasuringLine.Sense.FORWARD),
            lines(plate, MeasuringLine.Sense.RIGHTWARD)));
  }

  /** Plates by their left edges; in the description's order where one has no edges. */
  private static List<PlateLayout> fromTheLeft(List<PlateLayout> plates) {
    return plates.stream().allMatch(plate -> plate.size().isPresent())
        ? plates.stream()
            .sorted(Comparator.comparingDouble(plate -> plate.size().orElseThrow().leftMm()))
            .toList()
        : plates;
  }

  private static List<String> lines(PlateDescription plate, MeasuringLine.Sense sense) {
    return plate.lines().stream()
        .filter(line -> line.sense() == sense)
        .map(MeasuringLine::name)
        .toList();
  }

  /**
   * The description of the plate that a draft names, for the check.
   *
   * @throws BadInput if the clinic no longer remembers that plate: another one is never guessed
   */
  static Optional<NamedBytes> description(Records records, Map<String, String> fields)
      throws BadInput {
    Optional<KnownPlate> known = known(records, fields);
    String named = fields.getOrDefault(StandFields.KNOWN_PLATE, "");
    List<KnownPlate> all = RememberedPlates.all(records);
    if (!named.isEmpty() && known.filter(plate -> label(plate, all).equals(named)).isEmpty()) {
      throw new BadInput(
          Problem.at(
              Place.of(StandFields.KNOWN_PLATE), StandFault.PLATE_GONE, Argument.text(named)));
    }
    if (isAsked(all, fields)) {
      throw new BadInput(Problem.at(Place.of(StandFields.KNOWN_PLATE), StandFault.WHICH_PLATE));
    }
    return known.map(ChosenPlate::bytes);
  }

  /** Whether nobody chose, and names alone do not tell which one is meant. */
  private static boolean isAsked(List<KnownPlate> all, Map<String, String> fields) {
    return fields.getOrDefault(StandFields.KNOWN_PLATE, "").isEmpty()
        && all.stream().map(KnownPlate::name).distinct().count() < all.size();
  }

  /** Its name; where another plate has the same one, with the columns that tell them apart. */
  private static String label(KnownPlate plate, List<KnownPlate> all) {
    boolean alone = all.stream().filter(one -> one.name().equals(plate.name())).count() == 1;
    return alone ? plate.name() : plate.name() + " (" + String.join(", ", plate.columns()) + ")";
  }

  private static NamedBytes bytes(KnownPlate plate) {
    return NamedBytes.of(plate.name(), plate.description().getBytes(UTF_8));
  }

  private static Optional<KnownPlate> known(Records records, Map<String, String> fields)
      throws BadInput {
    List<KnownPlate> all = RememberedPlates.all(records);
    String named = fields.getOrDefault(StandFields.KNOWN_PLATE, "");
    return all.stream()
        .filter(plate -> label(plate, all).equals(named))
        .findFirst()
        .or(() -> all.stream().findFirst());
  }
}
