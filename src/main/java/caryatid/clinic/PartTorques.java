package caryatid.clinic;

import caryatid.entry.form.Answers;
import caryatid.entry.form.Field;
import caryatid.entry.form.FieldType;
import caryatid.loadline.Bounds;
import caryatid.loadline.LimitedQuantity;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Torques of components' fasteners as rows of a form. */
public final class PartTorques {
  private static final Bounds POSSIBLE = LimitedQuantity.FASTENER_TORQUE.usual();
  private static final String WHAT = "what";
  private static final String NAME = "name";
  private static final String FASTENER = "fastener";
  private static final String TORQUE = "torque-nm";
  private static final String SOURCE = "source";

  /** The rows. */
  public static final Field FIELD =
      Field.rows(
          "torques",
          Field.words(WHAT).needed(),
          Field.words(NAME).needed(),
          Field.words(FASTENER).needed(),
          new Field(
              TORQUE,
              new FieldType.Number(POSSIBLE.refuseBelow(), POSSIBLE.refuseAbove(), false),
              true),
          Field.words(SOURCE));

  private PartTorques() {}

  /** The torques that a form states. */
  public static List<PartTorque> of(Answers form) {
    return form.rows(FIELD.key()).stream().map(PartTorques::torque).toList();
  }

  private static PartTorque torque(Answers row) {
    return new PartTorque(
        row.words(WHAT).orElseThrow(),
        row.words(NAME).orElseThrow(),
        row.words(FASTENER).orElseThrow(),
        row.number(TORQUE).orElseThrow(),
        row.words(SOURCE));
  }

  static Optional<Answers.Value> value(List<PartTorque> torques) {
    return torques.isEmpty()
        ? Optional.empty()
        : Optional.of(new Answers.Value.Rows(torques.stream().map(PartTorques::row).toList()));
  }

  private static Answers row(PartTorque torque) {
    Map<String, Answers.Value> values = new LinkedHashMap<>();
    values.put(WHAT, new Answers.Value.Words(torque.what()));
    values.put(NAME, new Answers.Value.Words(torque.name()));
    values.put(FASTENER, new Answers.Value.Words(torque.fastener()));
    values.put(TORQUE, new Answers.Value.Amount(torque.torqueNm()));
    torque.source().ifPresent(source -> values.put(SOURCE, new Answers.Value.Words(source)));
    return new Answers(values);
  }
}
