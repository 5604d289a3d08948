package caryatid.cli;

import caryatid.clinic.MeasuredDoubt;
import caryatid.clinic.PartTorque;
import caryatid.entry.Components;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.usecase.Records;
import caryatid.usecase.RememberedLimits;
import caryatid.usecase.RememberedParts;
import caryatid.usecase.RememberedPlates;
import caryatid.usecase.prove.MeasuredHands;
import caryatid.wording.EntryWords;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What belongs to the clinic; its work is in the commands below it. */
@Command(
    name = "clinic",
    mixinStandardHelpOptions = true,
    description = "Keeps what belongs to the clinic and not to a wearer.",
    subcommands = {
      ClinicCommand.Plate.class,
      ClinicCommand.Parts.class,
      ClinicCommand.SetLimits.class,
      ClinicCommand.MarkingHand.class,
      ClinicCommand.FeetTurn.class,
      ClinicCommand.Show.class
    })
final class ClinicCommand extends CommandGroup {
  /** Remembers a plate description. */
  @Command(
      name = "plate",
      mixinStandardHelpOptions = true,
      description =
          "Remembers a plate description for all exports with the same columns, so that check needs"
              + " no --plate for them.")
  static final class Plate extends RecordSubcommand {
    @Parameters(index = "0", paramLabel = "EXPORT", description = "An export of the plate.")
    private Path export;

    @Parameters(index = "1", paramLabel = "DESCRIPTION", description = "Its description (YAML).")
    private Path description;

    @Option(names = "--replace", description = "Forget another description for these columns.")
    private boolean replace;

    @Override
    int run(Records records) throws BadInput, StoreFailure {
      NamedBytes plate = CaryatidCommand.FILES.read(description);
      int columns =
          RememberedPlates.remember(records, CaryatidCommand.FILES.read(export), plate, replace);
      say("cli.plateRemembered", description, columns);
      return 0;
    }
  }

  /** Remembers components with their makers' limits. */
  @Command(
      name = "parts",
      mixinStandardHelpOptions = true,
      description =
          "Remembers components with the limits their makers state, so that a record's components"
              + " entry needs no more than what and name.")
  static final class Parts extends RecordSubcommand {
    @Parameters(
        paramLabel = "FILE",
        description = "A YAML file as `record form components` prints it, filled in.")
    private Path file;

    @Override
    int run(Records records) throws BadInput, StoreFailure {
      RememberedParts.Count count =
          RememberedParts.remember(records, CaryatidCommand.FILES.read(file));
      say("cli.partsRemembered", count.components());
      if (count.torques() > 0) {
        say("cli.torquesRemembered", count.torques());
      }
      return 0;
    }
  }

  /** Remembers limits of what is asked about and refused. */
  @Command(
      name = "limits",
      mixinStandardHelpOptions = true,
      description =
          "Remembers the clinic's limits of what is asked about and refused, for every sheet that"
              + " sets none of its own, and for settings in records.")
  static final class SetLimits extends RecordSubcommand {
    @Parameters(paramLabel = "FILE", description = "A YAML file: clinic-limits: 1, and limits.")
    private Path file;

    @Override
    int run(Records records) throws BadInput, StoreFailure {
      say(
          "cli.limitsRemembered",
          RememberedLimits.remember(records, CaryatidCommand.FILES.read(file)));
      return 0;
    }
  }

  /** Measures something of the clinic, remembers it and shows it. */
  private abstract static class MeasuringCommand extends RecordSubcommand {
    abstract MeasuredDoubt measure(Records records) throws BadInput, StoreFailure;

    @Override
    int run(Records records) throws BadInput, StoreFailure {
      print(MeasuredHands.lines(List.of(measure(records)), wording()));
      return 0;
    }
  }

  /** Remembers how well a hand marks. */
  @Command(
      name = "hand",
      mixinStandardHelpOptions = true,
      description =
          "Measures how well landmarks are marked, from the same ones marked several times, and"
              + " remembers it for sheets that state no marking-mm.")
  static final class MarkingHand extends MeasuringCommand {
    @Parameters(paramLabel = "FILE", description = "A YAML file: hand-repeatability: 1.")
    private Path file;

    @Override
    MeasuredDoubt measure(Records records) throws BadInput, StoreFailure {
      return MeasuredHands.rememberHand(records, CaryatidCommand.FILES.read(file));
    }
  }

  /** Remembers how far feet are turned. */
  @Command(
      name = "turn",
      mixinStandardHelpOptions = true,
      description =
          "Measures how far feet are turned on the plate, from several placements, and remembers it"
              + " for sheets that state no turn-deg.")
  static final class FeetTurn extends MeasuringCommand {
    @Parameters(paramLabel = "FILE", description = "A YAML file: feet-turn: 1.")
    private Path file;

    @Override
    MeasuredDoubt measure(Records records) throws BadInput, StoreFailure {
      return MeasuredHands.rememberTurn(records, CaryatidCommand.FILES.read(file));
    }
  }

  /** Shows what the clinic remembers. */
  @Command(
      name = "show",
      mixinStandardHelpOptions = true,
      description =
          "Shows what is remembered: plate descriptions with their columns, components with their"
              + " limits and torques, the clinic's limits.")
  static final class Show extends RecordSubcommand {
    @Override
    int run(Records records) throws BadInput {
      List<String> known = new ArrayList<>();
      RememberedPlates.all(records)
          .forEach(plate -> known.add(line(plate.name(), String.join(", ", plate.columns()))));
      for (Components.ComponentLimits part : RememberedParts.all(records)) {
        Components alone = new Components(List.of(part), Optional.empty());
        known.addAll(new EntryWords(wording()).lines(alone));
      }
      for (PartTorque torque : RememberedParts.torques(records)) {
        known.add(
            wording()
                .fill(
                    "cli.torqueKnown",
                    texts(
                        torque.what() + " " + torque.name(),
                        torque.fastener(),
                        torque.torqueNm().toPlainString())));
      }
      known.addAll(MeasuredHands.lines(MeasuredHands.all(records), wording()));
      RememberedLimits.text(records).ifPresent(yaml -> known.addAll(yaml.lines().toList()));
      if (known.isEmpty()) {
        say("cli.nothingRemembered", records.folder());
      }
      print(known);
      return 0;
    }

    private String line(String name, String columns) {
      return wording().fill("cli.plateKnown", texts(name, columns));
    }
  }
}
