package caryatid.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.util.stream.Collectors;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.ValidationResult;

/**
 * Validation by an independent program, veraPDF, against ISO 19005-3 level A (archives) and ISO
 * 14289-1 (access).
 */
public final class Standards {
  private Standards() {}

  /** Fails with everything that either standard has against a document. */
  public static void assertKept(byte[] pdf) throws Exception {
    VeraGreenfieldFoundryProvider.initialise();
    assertKept(pdf, PDFAFlavour.PDFA_3_A);
    assertKept(pdf, PDFAFlavour.PDFUA_1);
  }

  private static void assertKept(byte[] pdf, PDFAFlavour flavour) throws Exception {
    try (PDFAParser parser =
        Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour)) {
      ValidationResult found =
          Foundries.defaultInstance().createValidator(flavour, false).validate(parser);
      assertThat(
              found.getTestAssertions().stream()
                  .map(Object::toString)
                  .collect(Collectors.joining("\n")))
          .as(flavour.toString())
          .isEmpty();
      assertThat(found.isCompliant()).as(flavour.toString()).isTrue();
    }
  }
}
