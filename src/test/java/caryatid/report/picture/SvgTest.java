package caryatid.report.picture;

import static org.assertj.core.api.Assertions.assertThat;

import caryatid.chart.StripDrawing;
import caryatid.chart.mark.Drawing;
import caryatid.demo.Demo;
import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.LandmarkKind;
import caryatid.wording.Wording;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;

class SvgTest {
  private static Drawing drawing(String landmark) {
    Demo demo = Demo.empty(Side.RIGHT).landmark(landmark, LandmarkKind.KNEE_CENTRE, 42, 85, 492, 4);
    return StripDrawing.plan(
        demo.state(0),
        Optional.empty(),
        Plane.SAGITTAL,
        Side.RIGHT,
        Wording.in(Locale.ENGLISH),
        186,
        92);
  }

  private static Document parse(String svg) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
  }

  @Test
  void textIsTextAndTheSizeThatOfThePaper() throws Exception {
    Document parsed = parse(Svg.file(drawing("knee centre")));
    assertThat(parsed.getDocumentElement().getAttribute("width")).isEqualTo("186mm");
    assertThat(parsed.getDocumentElement().getAttribute("viewBox")).isEqualTo("0 0 186 92");
    assertThat(parsed.getDocumentElement().getTextContent()).contains("18\u00a0mm anterior");
    assertThat(parsed.getElementsByTagName("text").getLength())
        .isEqualTo(drawing("knee centre").texts().size());
  }

  @Test
  void namesCannotBreakOutOfTheirPlace() throws Exception {
    Document parsed = parse(Svg.file(drawing("<b>&\"'")));
    assertThat(parsed.getDocumentElement().getTextContent()).contains("<b>&\"'");
    assertThat(parsed.getElementsByTagName("b").getLength()).isZero();
  }

  @Test
  void theSameDrawingGivesTheSameText() {
    assertThat(Svg.file(drawing("knee centre"))).isEqualTo(Svg.file(drawing("knee centre")));
  }
}
