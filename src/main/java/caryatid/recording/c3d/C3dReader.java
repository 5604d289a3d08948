package caryatid.recording.c3d;

import caryatid.geometry.Axes;
import caryatid.geometry.Direction;
import caryatid.recording.model.ExportLayout;
import caryatid.recording.model.ImportFact;
import caryatid.recording.model.ImportProblem;
import caryatid.recording.model.LengthUnit;
import caryatid.recording.model.MarkerTrack;
import caryatid.recording.model.Markers;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.PlateLayout;
import caryatid.recording.model.PlateLayout.ExportOrigin;
import caryatid.recording.model.RecordingRemark;
import caryatid.recording.model.TimeBase;
import caryatid.recording.model.UnderstoodFact.Basis;
import caryatid.recording.table.Outcome;
import caryatid.recording.table.StageMessages;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads the force plates and the markers on the legs out of a C3D file (c3d.org). */
public final class C3dReader {
  /** Plates of one floor differ in height by less, mm (common practice, no source). */
  private static final double SAME_HEIGHT_MM = 5;

  /** A toe that points further off the axis is remarked, degrees (common practice, no source). */
  private static final double REMARKED_OFF_DEG = 10;

  private final String name;
  private final DescribedMotion described;
  private final Optional<PlateDescription> stated;
  private StageMessages messages;

  private C3dReader(String name, Optional<PlateDescription> stated) {
    this.name = name;
    this.stated = stated;
    this.described = new DescribedMotion(stated);
    this.messages = StageMessages.none(name);
  }

  /**
   * Whether a file is a C3D file: its first byte tells where the parameters are, its second is
   * 0x50.
   */
  public static boolean recognises(byte[] start) {
    return start.length >= C3dBytes.BLOCK && start[1] == 0x50 && start[0] > 1 && start[0] < 32;
  }

  /**
   * Reads a file; empty, with a problem, where it cannot be used.
   *
   * @param content all of the file
   * @param name the file's name as the user gave it
   * @param stated what a description states of its plates
   */
  public static Outcome<Optional<C3dExport>> read(
      byte[] content, String name, Optional<PlateDescription> stated) {
    C3dReader reader = new C3dReader(name, stated);
    try {
      Optional<C3dExport> export = Optional.of(reader.export(content));
      return new Outcome<>(export, reader.messages);
    } catch (C3dFault fault) {
      return new Outcome<>(
          Optional.empty(), reader.messages.withProblem(fault.topic(), fault.arguments()));
    }
  }

  private C3dExport export(byte[] content) throws C3dFault {
    C3dFile file = C3dFile.read(content, name);
    messages = messages.and(file.messages()).and(facts(file));
    LengthFinder lengths = new LengthFinder(file.parameters(), name);
    LengthUnit length = lengths.find();
    messages = messages.and(lengths.messages());
    List<PlateSpec> specs = specs(file, length);
    List<LabMarker> markers = LabMarker.of(file, length.mm());
    Optional<Axes> axes = axes(specs, markers);
    Optional<PersonFrame> person = person(specs, axes);
    List<MotionPlate> plates = plates(file, specs, length);
    PlateDescription description = description(plates, axes, person);
    messages = messages.and(MotionRemarks.of(file, plates, axes.map(Axes::up), name));
    messages = messages.and(rate(file.layout()));
    FeetOnPlates feet = FeetOnPlates.of(new Facing(specs, markers), plates);
    messages = messages.and(feet.facts(name));
    MotionTable table = MotionTable.of(plates, file.layout().samples());
    return new C3dExport(
        table.head(),
        table.columns(),
        table.lines(),
        file.layout().rateHz(),
        description,
        stated.flatMap(PlateDescription::axes).isEmpty() && axes.isPresent(),
        new Markers(tracks(markers, person, file.layout().frameHz()), feet.plates()));
  }

  private static List<MarkerTrack> tracks(
      List<LabMarker> markers, Optional<PersonFrame> person, double frameHz) {
    return person.stream().flatMap(p -> markers.stream().map(m -> p.track(m, frameHz))).toList();
  }

  private StageMessages facts(C3dFile file) {
    return StageMessages.none(name)
        .withFact(
            ImportFact.MOTION_FILE,
            Basis.STATED,
            Argument.count(file.layout().frames()),
            Argument.of(file.layout().frameHz(), Unit.HZ),
            Argument.count(file.layout().channels()),
            Argument.count(file.layout().samples()));
  }

  private List<PlateSpec> specs(C3dFile file, LengthUnit length) throws C3dFault {
    List<PlateSpec> specs = new ArrayList<>();
    for (int number : described.numbers(PlateSpec.count(file.parameters()))) {
      PlateSpec spec = PlateSpec.read(file.parameters(), number, length.mm());
      Direction normal = spec.frame().z().nearest();
      if (!Facing.level(spec, normal)
          || specs.stream()
              .anyMatch(other -> other.frame().z().nearest().axis() != normal.axis())) {
        throw new C3dFault(ImportProblem.MOTION_TILTED, Argument.text(PlateSpec.name(number)));
      }
      specs.add(spec);
    }
    return specs;
  }

  /** As described, if markers do not contradict; else as plates and markers show. */
  private Optional<Axes> axes(List<PlateSpec> specs, List<LabMarker> markers) throws C3dFault {
    Facing facing = new Facing(specs, markers);
    Optional<Axes> axes = stated.flatMap(PlateDescription::axes);
    if (axes.isPresent()) {
      if (facing.contradicts(axes.get())) {
        throw new C3dFault(ImportProblem.MOTION_FACING);
      }
      return axes;
    }
    Optional<Facing.FoundAxes> found = facing.find();
    if (found.isPresent()) {
      Argument off = Argument.of(found.get().offDeg(), Unit.DEG);
      messages = messages.withFact(ImportFact.MOTION_AXES, Basis.CONCLUDED, off);
      if (found.get().offDeg() > REMARKED_OFF_DEG) {
        messages = messages.withRemark(RecordingRemark.MOTION_TURNED, off);
      }
    }
    return found.map(Facing.FoundAxes::axes);
  }

  private Optional<PersonFrame> person(List<PlateSpec> specs, Optional<Axes> axes) throws C3dFault {
    if (axes.isEmpty()) {
      return Optional.empty();
    }
    List<Double> heights =
        specs.stream().map(s -> s.frame().centre().along(axes.get().up())).sorted().toList();
    double lowest = heights.get(0);
    double highest = heights.get(heights.size() - 1);
    if (highest - lowest > SAME_HEIGHT_MM) {
      messages =
          messages.withRemark(
              RecordingRemark.MOTION_HEIGHTS, Argument.of(highest - lowest, Unit.MM));
    }
    double floorMm = (lowest + highest) / 2;
    PersonFrame unshifted = new PersonFrame(axes.get(), new ExportOrigin(0, 0), floorMm);
    return Optional.of(new PersonFrame(axes.get(), described.zero(specs, unshifted), floorMm));
  }

  private List<MotionPlate> plates(C3dFile file, List<PlateSpec> specs, LengthUnit length)
      throws C3dFault {
    AnalogChannels analog = new AnalogChannels(file);
    List<MotionPlate> plates = new ArrayList<>();
    for (PlateSpec spec : specs) {
      Optional<PlateLayout> layout = described.of(spec.number());
      PlateChannels channels =
          new PlateChannels(spec, analog, length, layout.flatMap(PlateLayout::forceUnit));
      plates.add(
          new MotionPlate(
              layout.map(PlateLayout::name).orElse(PlateSpec.name(spec.number())),
              spec,
              channels.read()));
    }
    return plates;
  }

  private PlateDescription description(
      List<MotionPlate> plates, Optional<Axes> axes, Optional<PersonFrame> person) throws C3dFault {
    List<PlateLayout> layouts = new ArrayList<>();
    for (MotionPlate plate : plates) {
      Optional<PlateLayout> layout = described.of(plate.spec().number());
      PlateLayout file = plate.layout(person, layout, axes.map(Axes::up));
      described.requireAgreement(plate.spec(), file);
      layouts.add(file);
    }
    PlateDescription basis =
        stated.orElseGet(
            () ->
                new PlateDescription(
                    "plate",
                    ExportLayout.UNSTATED,
                    TimeBase.UNSTATED,
                    Optional.empty(),
                    Optional.empty(),
                    List.of(),
                    List.of(),
                    Optional.empty(),
                    false));
    return basis.with(axes, layouts);
  }

  /** That a described rate is the file's, which must be one. */
  private StageMessages rate(DataLayout layout) {
    StageMessages nothing = StageMessages.none(name);
    double fileHz = layout.rateHz();
    OptionalDouble statedHz = stated.map(s -> s.time().rateHz()).orElse(OptionalDouble.empty());
    boolean apart =
        statedHz.isPresent() && fileHz > 0 && Math.abs(statedHz.getAsDouble() / fileHz - 1) > 0.001;
    return apart
        ? nothing.withProblem(
            ImportProblem.RATE_DESCRIBED,
            Argument.of(statedHz.getAsDouble(), Unit.HZ),
            Argument.of(fileHz, Unit.HZ))
        : nothing;
  }
}
