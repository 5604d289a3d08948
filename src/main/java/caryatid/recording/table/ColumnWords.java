package caryatid.recording.table;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The words of columns' names in the languages of exports, without accents. */
public final class ColumnWords {
  static final Set<String> TIME = words("time t timestamp seconds zeit temps tijd tiempo tempo");
  static final Set<String> INDEX =
      words(
          "frame sample samples seq index nr no item # row muestra campione amostra échantillon"
              + " trame fotogramma");

  /** Words that neither name a quantity nor tell plates apart. */
  public static final Set<String> FILLERS =
      words(
          "ground reaction center centre of pressure force forces moment moments torque cop grf"
              + " plate platform forceplate fp channel m f p v c mom cp global kraft drehmoment"
              + " druckmittelpunkt druckzentrum druckpunkt bodenreaktionskraft kraftmessplatte"
              + " platte achse axe eje asse eixo axis couple pression cdp plateforme reaction sol"
              + " du de la le"
              + " fuerza momento centro presion plataforma reaccion suelo del forza pressione"
              + " pedana piattaforma reazione di della coppia torsione forca pressao plataforma"
              + " reacao solo da do vertical vertikal verticale vertikalkraft senkrecht en in quer"
              + " transversal transversale längs laengs longitudinal longitudinale");

  /** Words for the vertical where a name says no axis: it is z, as it is next to x and y. */
  static final Set<String> VERTICAL = words("vertical vertikal verticale vertikalkraft senkrecht");

  /** Words for across the plate where a name says no axis: x, as the vertical is z. */
  static final Set<String> ACROSS = words("quer transversal transversale");

  /** Words for along the plate: y. */
  static final Set<String> ALONG = words("längs laengs longitudinal longitudinale");

  /** A foot's letter before a quantity, as in RCOP_X. */
  private static final Pattern FOOT = Pattern.compile("([lr])(cop|grf|force|moment)([xyz]?)");

  /** Words for what is computed of a channel and is none itself. */
  static final Set<String> DERIVED =
      words(
          "velocity velocities vel speed acceleration accel acc jerk area ellipse path pathlength"
              + " length range rms sd std var variance mean average avg error frequency freq power"
              + " angle rate geschwindigkeit fläche weg mittelwert vitesse aire surface longueur"
              + " moyenne velocidad área longitud media");

  /** Words for one of several versions of the same channel. */
  static final Set<String> VERSIONS =
      words(
          "raw unfiltered filtered filt filter smooth smoothed lowpass butterworth uncorrected"
              + " corrected processed unprocessed roh gefiltert brut filtré crudo filtrado");

  /** Words next to which v and p mean a force and its point, not a velocity and a position. */
  static final Set<String> FORCE_CONTEXT = Set.of("ground", "force", "forces", "grf", "torque");

  private static Set<String> words(String parted) {
    return Set.copyOf(List.of(folded(parted).split(" ", -1)));
  }

  /** Without accents, which exports often leave out. */
  private static String folded(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFD).replaceAll("\\p{M}", "");
  }

  /** The words of a column's name, a foot's letter apart. */
  static List<String> of(ColumnName column) {
    List<String> words = new ArrayList<>();
    for (String word : column.words()) {
      Matcher foot = FOOT.matcher(folded(word));
      if (foot.matches()) {
        words.add(foot.group(1));
        words.add(foot.group(2) + foot.group(3));
      } else {
        words.add(folded(word));
      }
    }
    return words;
  }

  private ColumnWords() {}
}
