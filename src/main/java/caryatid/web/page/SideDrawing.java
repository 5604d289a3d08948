package caryatid.web.page;

/**
 * The feet as the wearer sees them from above: left is left; a foot of the prosthesis is filled.
 */
final class SideDrawing {
  private SideDrawing() {}

  static String svg(boolean left, boolean right) {
    return "<svg class=\"feet\" viewBox=\"0 0 32 30\" width=\"34\" height=\"32\" aria-hidden=\"true\">"
        + "<path class=\"%s\" d=\"M9 29C6 29 5 27 5 24C5 20 2 16 2 11C2 5 4 1 8 1C12 1 14 4 14 9C14 14 12.5 16 12.5 21C12.5 26 12 29 9 29Z\"/>"
            .formatted(left ? "prosthesis" : "foot")
        + "<path class=\"%s\" d=\"M23 29C26 29 27 27 27 24C27 20 30 16 30 11C30 5 28 1 24 1C20 1 18 4 18 9C18 14 19.5 16 19.5 21C19.5 26 20 29 23 29Z\"/>"
            .formatted(right ? "prosthesis" : "foot")
        + "</svg>";
  }
}
