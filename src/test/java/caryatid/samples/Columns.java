package caryatid.samples;

import java.util.List;

/** Columns of plates that measure forces and moments. */
final class Columns {
  private Columns() {}

  /**
   * Six columns, as Fx, Fy, Fz in N and Mx, My, Mz.
   *
   * @param before what stands before each name
   * @param forceDecimals how many decimals of a force
   * @param nmm how many N mm make one of the written unit of moments
   * @param momentDecimals how many decimals of a moment
   */
  static List<ExportText.Column> forceAndMoment(
      String before,
      PlateModel.Reading[] plate,
      int forceDecimals,
      double nmm,
      int momentDecimals) {
    String unit = nmm == 1 ? "N mm" : "N m";
    return List.of(
        new ExportText.Column(before + "Fx", "N", forceDecimals, i -> plate[i].force().x()),
        new ExportText.Column(before + "Fy", "N", forceDecimals, i -> plate[i].force().y()),
        new ExportText.Column(before + "Fz", "N", forceDecimals, i -> plate[i].force().z()),
        new ExportText.Column(
            before + "Mx", unit, momentDecimals, i -> plate[i].moment().x() / nmm),
        new ExportText.Column(
            before + "My", unit, momentDecimals, i -> plate[i].moment().y() / nmm),
        new ExportText.Column(
            before + "Mz", unit, momentDecimals, i -> plate[i].moment().z() / nmm));
  }
}
