package caryatid.recording.c3d;

import static java.nio.charset.StandardCharsets.UTF_8;

import caryatid.recording.model.NamedBytes;

/** An invented stand of a laboratory as C3D and as CSV, with what has to be written for each. */
public final class LaboratoryStand {
  /** What a description of the C3D file needs. */
  public static final String DESCRIPTION =
      """
      plate-description: 1
      name: Gait laboratory
      axes: {right: -y, anterior: +x, up: +z}
      measuring-lines:
        - {name: zero across, forward-from-mm: 0, registration-mm: 1}
        - {name: zero along, rightward-from-mm: 0, registration-mm: 1}
      """;

  /** What one of the CSV file needs: all that the C3D file states itself. */
  public static final String DESCRIPTION_OF_TEXT =
      """
      plate-description: 1
      name: Gait laboratory
      time: {rate-hz: 200}
      axes: {right: -y, anterior: +x, up: +z}
      force-is: on the person
      plates:
        - name: plate 1
          columns: {force-x: Fx1, force-y: Fy1, force-z: Fz1, moment-x: Mx1, moment-y: My1, moment-z: Mz1}
          units: {force: N, moment: N mm}
          edges-mm: {left: -540, right: -260, rear: 150, front: 650}
          true-origin-mm: {x: 0, y: 0, z: -40}
          export-origin-mm: {right: -400, anterior: 400}
        - name: plate 2
          columns: {force-x: Fx2, force-y: Fy2, force-z: Fz2, moment-x: Mx2, moment-y: My2, moment-z: Mz2}
          units: {force: N, moment: N mm}
          edges-mm: {left: -840, right: -560, rear: 150, front: 650}
          true-origin-mm: {x: 0, y: 0, z: -40}
          export-origin-mm: {right: -700, anterior: 400}
      measuring-lines:
        - {name: zero across, forward-from-mm: 0, registration-mm: 1}
        - {name: zero along, rightward-from-mm: 0, registration-mm: 1}
      """;

  /** The right foot on plate 1, the left one on plate 2. */
  public static final String SHEET =
      """
      trial-sheet: 1
      wearer: L5
      at: 2026-03-04T10:40+01:00
      side: right
      level: transtibial
      body-mass-kg: 85
      stance: {kind: one plate per foot, left: plate 2, right: plate 1}
      hands: free
      footwear: {worn: barefoot, heel-height-mm: 0}
      landmarks:
        - name: ankle axis
          forward-mm: 400
          forward-from: zero across
          rightward-mm: -420
          rightward-from: zero along
          up-mm: 80
          marking-mm: 3
        - name: knee centre
          forward-mm: 460
          forward-from: zero across
          rightward-mm: -420
          rightward-from: zero along
          up-mm: 450
          marking-mm: 4
      targets:
        - plane: sagittal
          landmark: knee centre
          recommended-mm: 20
          below-mm: 15
          above-mm: 15
          source: Invented instructions for the demo foot, section 4
          meant-for: foot
      notes:
        practitioner: AB
        role: prosthetist
      """;

  private LaboratoryStand() {}

  /** The stand as a C3D file. */
  public static byte[] c3d() {
    return MadeStand.calm().file().bytes();
  }

  /** The same as a text. */
  public static byte[] csv() {
    return MadeStand.calm().csv().getBytes(UTF_8);
  }

  public static NamedBytes named(String name, String text) {
    return NamedBytes.of(name, text.getBytes(UTF_8));
  }
}
