package caryatid.usecase.stand;

import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.KeptFile;
import caryatid.fitting.RecordCode;
import caryatid.geometry.Plane;
import caryatid.loadline.Target;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.sheet.LandmarkEntry;
import caryatid.sheet.LandmarkEntry.MeasuredDistance;
import caryatid.sheet.ProstheticSide;
import caryatid.sheet.TrialSheet;
import caryatid.sheet.TrialSheetReader;
import caryatid.standing.Stance;
import caryatid.store.StoredRecord;
import caryatid.uncertainty.Contribution;
import caryatid.usecase.Records;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What was typed for the latest stand of a record, by its sheet, whoever wrote it. */
final class EarlierFields {
  private final Map<String, String> fields = new LinkedHashMap<>();
  private final boolean both;

  private EarlierFields(boolean both) {
    this.both = both;
  }

  /** The fields; none where there was no stand, or its sheet cannot be read. */
  static Map<String, String> of(Records records, String code) throws BadInput {
    StoredRecord stored = records.store().open(RecordCode.of(code));
    Optional<Entry> stand =
        stored.record().valid().stream()
            .filter(entry -> entry.kind() == EntryKind.STAND)
            .reduce((earlier, later) -> later);
    Optional<KeptFile> sheet = stand.flatMap(entry -> entry.file(KeptFile.Role.SHEET));
    if (sheet.isEmpty()) {
      return Map.of();
    }
    try {
      NamedBytes bytes = NamedBytes.of(sheet.get().name(), stored.bytes(stand.get(), sheet.get()));
      return of(TrialSheetReader.read(bytes, name -> earlier(stored, stand.get(), name)));
    } catch (BadInput unreadable) {
      return Map.of();
    }
  }

  private static Optional<NamedBytes> earlier(StoredRecord stored, Entry stand, String name) {
    for (KeptFile file : stand.files()) {
      if (file.is() == KeptFile.Role.EARLIER_SHEET && file.name().equals(name)) {
        try {
          return Optional.of(NamedBytes.of(name, stored.bytes(stand, file)));
        } catch (BadInput damaged) {
          return Optional.empty();
        }
      }
    }
    return Optional.empty();
  }

  /** The fields of a sheet. */
  static Map<String, String> of(TrialSheet sheet) {
    EarlierFields earlier = new EarlierFields(sheet.side() == ProstheticSide.BOTH);
    for (int i = 0; i < sheet.landmarks().size(); i++) {
      earlier.landmark(StandFields.LANDMARK + "[" + (i + 1) + "].", sheet.landmarks().get(i));
    }
    for (int i = 0; i < sheet.targets().size(); i++) {
      earlier.target(StandFields.TARGET + "[" + (i + 1) + "].", sheet.targets().get(i));
    }
    earlier.put(StandFields.WORN, sheet.footwear().description());
    earlier.put(StandFields.HEEL, signed(sheet.footwear().heelHeightMm()));
    sheet.bodyMassKg().ifPresent(kg -> earlier.put(StandFields.BODY_MASS, number(kg)));
    sheet
        .otherFoot()
        .ifPresent(foot -> earlier.other(foot.on().lastPart(), foot.heightDifferenceMm()));
    sheet
        .knee()
        .ifPresent(knee -> earlier.put(StandFields.KNEE_LOCKED, knee.locked() ? "yes" : "no"));
    sheet.knee().flatMap(k -> k.mode()).ifPresent(m -> earlier.put(StandFields.KNEE_MODE, m));
    sheet.notes().role().ifPresent(role -> earlier.put(StandFields.ROLE, role));
    earlier.stance(sheet);
    return earlier.fields;
  }

  private void put(String name, String value) {
    fields.put(name, value);
  }

  /** The amount alone, where the direction has a field of its own. */
  private static String number(double value) {
    return signed(Math.abs(value));
  }

  private static String signed(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }

  private void other(String on, double heightMm) {
    put(StandFields.OTHER_FOOT, on.toLowerCase(Locale.ROOT));
    put(StandFields.OTHER_HIGHER, number(heightMm));
    put(StandFields.OTHER_SENSE, heightMm < 0 ? StandFields.LOWER : StandFields.HIGHER);
  }

  private void stance(TrialSheet sheet) {
    if (sheet.stance() instanceof Stance.PlatePerFoot feet) {
      put(StandFields.STANCE, StandFields.PLATE_PER_FOOT);
      put(StandFields.PLATE_LEFT, feet.leftPlate());
      put(StandFields.PLATE_RIGHT, feet.rightPlate());
    } else if (sheet.stance() instanceof Stance.BothFeetOnOnePlate plate) {
      put(StandFields.STANCE, StandFields.BOTH_ON_ONE);
      plate.plate().ifPresent(name -> put(StandFields.PLATE, name));
    } else if (sheet.stance() instanceof Stance.ProstheticFootOnPlate plate) {
      put(StandFields.STANCE, StandFields.FOOT_ON_PLATE);
      plate.plate().ifPresent(name -> put(StandFields.PLATE, name));
    }
  }

  private void landmark(String row, LandmarkEntry landmark) {
    put(row + "name", landmark.name());
    if (both) {
      put(row + "side", landmark.side().lastPart().toLowerCase(Locale.ROOT));
    }
    landmark
        .forward()
        .ifPresent(d -> distance(row + "forward", d, StandFields.IN_FRONT, StandFields.BEHIND));
    landmark
        .rightward()
        .ifPresent(d -> distance(row + "rightward", d, StandFields.RIGHT_OF, StandFields.LEFT_OF));
    put(row + "up", number(landmark.upMm()));
    landmark
        .forward()
        .or(landmark::rightward)
        .filter(d -> d.markingDegrees() == Contribution.STATED_DEGREES)
        .ifPresent(d -> put(row + "marking", number(d.markingMm())));
    landmark.definition().ifPresent(is -> put(row + "is", is));
  }

  /** What was measured from another landmark is left to be measured again from a line. */
  private void distance(String name, MeasuredDistance distance, String positive, String negative) {
    if (!distance.fromLandmark()) {
      put(name, number(distance.mm()));
      put(name + "-sense", distance.mm() < 0 ? negative : positive);
      distance.from().ifPresent(line -> put(name + "-from", line));
    }
  }

  private void target(String row, Target target) {
    put(row + "plane", target.plane().lastPart().toLowerCase(Locale.ROOT));
    put(row + "landmark", target.landmark());
    if (both) {
      put(row + "side", target.side().lastPart().toLowerCase(Locale.ROOT));
    }
    boolean sagittal = target.plane() == Plane.SAGITTAL;
    boolean minus = target.recommendedMm() < 0;
    put(row + "sense", sagittal ? minus ? "posterior" : "anterior" : minus ? "medial" : "lateral");
    put(row + "recommended", number(target.recommendedMm()));
    put(row + "below", number(target.belowMm()));
    put(row + "above", number(target.aboveMm()));
    put(row + "source", target.source());
    put(row + "meant-for", target.line() == Target.MeantFor.FOOT ? "foot" : "whole body");
    target.condition().ifPresent(valid -> put(row + "valid-for", valid));
  }
}
