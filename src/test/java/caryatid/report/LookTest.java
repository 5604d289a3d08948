package caryatid.report;
import caryatid.chart.Box;
import caryatid.demo.Demo;
import caryatid.demo.Worst;
import caryatid.geometry.Side;
import caryatid.geometry.Plane;
import caryatid.wording.Wording;
import java.nio.file.*;
import java.util.*;
import org.junit.jupiter.api.Test;
class LookTest {
  @Test void look() throws Exception {
    Path out = Path.of("/tmp/pg/look"); Files.createDirectories(out);
    for (String l : new String[]{"en","de","fr","es"}) for (Paper paper : Paper.values()) {
      Wording w = Wording.in(Locale.forLanguageTag(l));
      Map<String,Demo> demos = Map.of("tt", Demo.transtibial(Side.RIGHT).notes(), "tf", Demo.transfemoral(Side.LEFT).notes(), "worst", Worst.stand(), "far", Demo.transtibial(Side.LEFT).line(80,260));
      for (var e : demos.entrySet()) {
        Demo d = e.getValue();
        var r = d.resultOf(d.state(12), d.state(0));
        byte[] pdf = Report.pdf(e.getKey().equals("worst") ? d.result() : r, List.of(d.recording()), Attachments.NONE, w, paper);
        Files.write(out.resolve(e.getKey()+"-"+l+"-"+paper+".pdf"), pdf);
        double[] sums = Report.content(d.result(), List.of(d.recording()), w).pages().stream().mapToDouble(p -> new Pieces(paper).of(p).stream().mapToDouble(Piece::heightMm).sum()).toArray();
        System.out.println(e.getKey()+" "+l+" "+paper+" room "+PdfLayout.roomMm(paper)+" "+Arrays.toString(sums));
      }
    }
  }
}
