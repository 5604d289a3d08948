package caryatid.samples;

import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The states of K7's fitting on the way from the bench to two shoes, each with recordings of its
 * own. The state the fitting ends in without shoes is that of the three stands of {@link K7}.
 *
 * @param name of its sheet; its recordings are named a, b and c where they are several
 * @param massKg with prosthesis and what is worn, kg
 * @param anteriorMm long-run mean of the prosthetic foot's centre of pressure, anterior, mm
 * @param kneeMm where the knee centre truly is, anterior, mm
 * @param triesMm how far each stand is from the mean of many, to the right and anterior, mm
 */
record Story(String name, double massKg, double anteriorMm, double kneeMm, double[][] triesMm) {
  private static final int SECONDS = 18;
  private static final double PATELLAR_BORDER_MM = 70;

  /**
   * The load line behind the knee; the foot moved forward by 10 mm; the ankle plantarflexed by 4
   * degrees (one degree too much for walking); either shoe with the ankle set to its heel.
   */
  private static final List<Story> STANDS =
      List.of(
          new Story("stand-1", 82, -15, -1, new double[][] {{0.7, -1.6}}),
          new Story("stand-2", 82, -14, -10, new double[][] {{-0.9, 1.1}, {0.4, -1.4}, {0.6, 0.5}}),
          new Story("stand-3", 82, -7, -38, new double[][] {{1.1, 0.4}}),
          new Story("walking-shoe", 83, -13, -32, new double[][] {{-0.6, 0.9}}),
          new Story("sports-shoe", 83, -12, -33, new double[][] {{0.5, -1.3}}));

  private Person person() {
    return K7.person(massKg, new Foothold(18, anteriorMm, 0.6, People.UNDER_ONE_FOOT, 9, -6));
  }

  private String recording(int index) {
    String which = triesMm.length > 1 ? String.valueOf((char) ('a' + index)) : "";
    return "story/" + name + which + ".csv";
  }

  /** The recordings by name; the truth about them is added to a list. */
  static Map<String, byte[]> recordings(List<Truth> truth) {
    Map<String, byte[]> files = new TreeMap<>();
    Noise noise = new Noise(11);
    for (Story story : STANDS) {
      for (int i = 0; i < story.triesMm.length; i++) {
        Person now = story.person().movedBy(story.triesMm[i][0], story.triesMm[i][1]);
        Stand stand = Stand.of(now, SECONDS * 100, 100, noise.split());
        truth.addAll(Truth.of(story.recording(i), story.person(), stand, 0, SECONDS));
        files.put(story.recording(i), K7.sixChannels(stand));
      }
    }
    return files;
  }

  /** The landmarks with targets, where they truly are. */
  static List<Marked> marked() {
    List<Marked> marked = new ArrayList<>();
    for (Story story : STANDS) {
      String sheet = "story/" + story.name + ".yaml";
      Person person = story.person();
      marked.add(
          new Marked(
              sheet, Plane.SAGITTAL, "knee centre", story.kneeMm, person, Side.RIGHT, 5, 35));
      marked.add(
          new Marked(
              sheet,
              Plane.FRONTAL,
              "outer patellar border",
              PATELLAR_BORDER_MM,
              person,
              Side.RIGHT,
              -65,
              -35));
    }
    return marked;
  }
}
