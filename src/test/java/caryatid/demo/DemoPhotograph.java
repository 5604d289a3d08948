package caryatid.demo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import javax.imageio.ImageIO;

/** Invented photographs of four coloured corners. */
public final class DemoPhotograph {
  /** Of the invented camera. */
  public static final String SERIAL = "SERIAL-778899";

  private DemoPhotograph() {}

  /** Red at the upper left, green at the upper right, blue at the lower left, black beside it. */
  public static BufferedImage corners(int width, int height) {
    BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D canvas = picture.createGraphics();
    Color[] colours = {Color.RED, Color.GREEN, Color.BLUE, Color.BLACK};
    for (int i = 0; i < 4; i++) {
      canvas.setColor(colours[i]);
      canvas.fillRect((i % 2) * width / 2, i / 2 * height / 2, width / 2, height / 2);
    }
    canvas.dispose();
    return picture;
  }

  /** The bytes of a picture. */
  public static byte[] written(BufferedImage picture, String format) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(picture, format, out);
    return out.toByteArray();
  }

  /**
   * A JPEG with an Exif segment of its own: orientation, and a serial number and a place as text
   * (Exif 2.32: big-endian TIFF, one directory).
   */
  public static byte[] turned(BufferedImage picture, int orientation) throws IOException {
    byte[] jpeg = written(picture, "jpg");
    byte[] text = (SERIAL + " N52.5 E13.4\0").getBytes(StandardCharsets.US_ASCII);
    ByteArrayOutputStream exif = new ByteArrayOutputStream();
    exif.write("Exif\0\0MM\0*\0\0\0\b".getBytes(StandardCharsets.ISO_8859_1));
    exif.write(new byte[] {0, 2});
    exif.write(new byte[] {1, 0x12, 0, 3, 0, 0, 0, 1, 0, (byte) orientation, 0, 0});
    exif.write(new byte[] {(byte) 0xA4, 0x31, 0, 2, 0, 0, 0, (byte) text.length, 0, 0, 0, 38});
    exif.write(new byte[4]);
    exif.write(text);
    int length = exif.size() + 2;
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    all.write(jpeg, 0, 2);
    all.write(new byte[] {(byte) 0xFF, (byte) 0xE1, (byte) (length >> 8), (byte) length});
    exif.writeTo(all);
    all.write(jpeg, 2, jpeg.length - 2);
    return all.toByteArray();
  }
}
