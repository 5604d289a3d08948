package caryatid.exchange;

import caryatid.entry.Assessment;
import caryatid.entry.Closing;
import caryatid.entry.Entry;
import caryatid.entry.EntryContent;
import caryatid.entry.EntryKind;
import caryatid.entry.StandSummary;
import caryatid.entry.Walking;
import caryatid.entry.form.Choices;
import caryatid.format.JsonObjectWriter;
import caryatid.geometry.Side;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import caryatid.wording.LandmarkWords;
import caryatid.wording.Wording;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** What was observed: offsets against targets, load shares, socket comfort scores. */
final class Observations {
  static final String OFFSET = "offset-mm";
  static final String SHARE = "load-share-percent";
  static final String COMFORT = "socket-comfort";
  private static final String TYPE = "Observation";
  private static final String PERCENT = "%";

  private final ToldRecord told;
  private final Wording wording;
  private final OffsetValue offsets;

  Observations(ToldRecord told, LandmarkWords landmarks) {
    this.told = told;
    this.wording = told.wording();
    this.offsets = new OffsetValue(told, landmarks);
  }

  /**
   * One value of an entry.
   *
   * @param part what names it among the entry's
   * @param code its code
   * @param sentence it in words
   * @param value its members that others do not have
   */
  private record Observed(
      Entry entry, String part, String code, String sentence, Fhir.FhirPart value) {}

  /** All of them, in the order of the entries. */
  List<BundledResource> all() {
    List<BundledResource> all = new ArrayList<>();
    for (Entry entry : told.record().entries()) {
      for (JudgedOffset offset : JudgedOffset.of(entry, told)) {
        String part = OFFSET + "-" + offset.index();
        all.add(
            resource(
                new Observed(
                    entry, part, OFFSET, offsets.sentence(offset), offsets.members(offset))));
      }
      entry
          .content(StandSummary.class)
          .flatMap(StandSummary::loadSharePercent)
          .map(share -> share(entry, share))
          .ifPresent(share -> all.add(resource(share)));
      OptionalInt score = comfort(entry.content());
      if (score.isPresent()) {
        all.add(resource(comfort(entry, score.getAsInt())));
      }
    }
    return all;
  }

  /**
   * What an entry says that was corrected is told as entered in error, also to a system that has it
   * already.
   */
  private BundledResource resource(Observed one) {
    String identity = told.identity(one.entry().number() + "." + one.part());
    Fhir.FhirPart content =
        out -> {
          head(out, one, identity);
          one.value().into(out);
        };
    return told.isCorrected(one.entry())
        ? BundledResource.renewed(TYPE, identity, content)
        : BundledResource.once(TYPE, Fhir.IDENTIFIERS, identity, content);
  }

  private void head(JsonObjectWriter out, Observed one, String identity) throws IOException {
    boolean corrected = told.isCorrected(one.entry());
    if (one.code().equals(OFFSET)) {
      Fhir.object(out, "meta", Fhir.profile("offset"));
    }
    Fhir.words(out, told.language(), one.sentence());
    Fhir.objects(out, "identifier", List.of(Fhir.identifier(Fhir.IDENTIFIERS, identity)));
    if (!corrected) {
      Fhir.objects(out, "partOf", List.of(Fhir.reference(Sessions.urn(told, one.entry()))));
    }
    out.text("status", corrected ? "entered-in-error" : "final");
    Fhir.object(out, "code", Fhir.concept(one.code(), Optional.of(name(one.code()))));
    Fhir.object(out, "subject", Fhir.reference(told.patient()));
    out.text("effectiveDateTime", Fhir.time(told.record().timeOf(one.entry())));
    Fhir.objects(out, "performer", List.of(Fhir.by(one.entry())));
  }

  private String name(String code) {
    return wording.word("Exchange.code." + code);
  }

  /** A component whose value is one of this project's codes. */
  static Fhir.FhirPart coded(String code, String value) {
    return out -> {
      Fhir.object(out, "code", Fhir.concept(code));
      Fhir.object(out, "valueCodeableConcept", Fhir.concept(value));
    };
  }

  /** The side is that of the prosthesis; of two there is no share. */
  private Observed share(Entry entry, BigDecimal percent) {
    List<Side> sides =
        told.record().opening().map(opening -> opening.side().sides()).orElse(List.of());
    Fhir.FhirPart value =
        out -> {
          Fhir.object(out, "valueQuantity", Fhir.quantity(percent.toPlainString(), PERCENT));
          if (entry.isTyped()) {
            Fhir.object(out, "method", Fhir.concept("typed"));
          }
          if (sides.size() == 1) {
            String side = Choices.SIDE.code(sides.get(0));
            Fhir.objects(out, "component", List.of(coded("side", side)));
          }
        };
    String number = wording.number(percent.doubleValue(), Unit.PERCENT);
    return new Observed(entry, SHARE, SHARE, sentence(SHARE, number), value);
  }

  private Observed comfort(Entry entry, int score) {
    Fhir.FhirPart range =
        out -> {
          Fhir.object(out, "low", Fhir.quantity("0", "1"));
          Fhir.object(out, "high", Fhir.quantity("10", "1"));
        };
    Fhir.FhirPart value =
        out -> {
          out.whole("valueInteger", score);
          Fhir.objects(out, "referenceRange", List.of(range));
        };
    String sentence = sentence(COMFORT, Integer.toString(score));
    return new Observed(entry, COMFORT, COMFORT, sentence, value);
  }

  private static OptionalInt comfort(EntryContent content) {
    if (content.kind() == EntryKind.ASSESSMENT) {
      return ((Assessment) content).socketComfort();
    }
    if (content.kind() == EntryKind.WALKING) {
      return ((Walking) content).socketComfort();
    }
    return content.kind() == EntryKind.CLOSING
        ? ((Closing) content).socketComfort()
        : OptionalInt.empty();
  }

  private String sentence(String code, String value) {
    return wording.fill("Exchange.observed", Argument.text(name(code)), Argument.text(value));
  }
}
