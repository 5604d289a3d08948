package caryatid.report.picture;

import caryatid.recording.model.NamedBytes;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.metadata.exif.ExifDirectoryBase;
import com.drew.metadata.exif.ExifIFD0Directory;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Iterator;
import java.util.Locale;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;

/**
 * Photographs as a record keeps them: upright, of a bounded size, and nothing but the picture.
 * Place, time, serial number, a small preview and whatever else a camera wrote are gone, because
 * only the picture is written anew.
 */
public final class Photographs {
  /** The longer side of what is kept, pixels: 160 mm at 250 dots an inch. */
  private static final int LONGEST = 1600;

  private static final int MOST_MB = 40;
  private static final int MOST_BYTES = MOST_MB * 1_000_000;
  private static final int MOST_MEGAPIXELS = 100;

  private Photographs() {}

  /**
   * The photograph as it is kept; a JPEG stays one, and so does a PNG.
   *
   * @throws BadInput if it is neither, too large, or cannot be read
   */
  public static NamedBytes plain(NamedBytes given) throws BadInput {
    Place place = Place.of(given.name());
    byte[] bytes = bytes(given);
    if (bytes.length > MOST_BYTES) {
      throw tooLarge(place);
    }
    try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(bytes))) {
      ImageReader reader = reader(in, place);
      try {
        reader.setInput(in, true, true);
        String format = reader.getFormatName().toLowerCase(Locale.ROOT);
        BufferedImage picture = read(reader, place);
        BufferedImage upright = upright(picture, orientation(bytes));
        return NamedBytes.of(given.name(), written(upright, format));
      } finally {
        reader.dispose();
      }
    } catch (IOException | RuntimeException e) {
      throw new BadInput(Problem.at(place, PhotographProblem.UNREADABLE, Argument.why(e)));
    }
  }

  private static byte[] bytes(NamedBytes given) throws BadInput {
    try {
      return given.readAtMost(MOST_BYTES + 1);
    } catch (IOException e) {
      throw given.unreadable(e);
    }
  }

  private static ImageReader reader(ImageInputStream in, Place place) throws IOException, BadInput {
    Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
    if (readers.hasNext()) {
      ImageReader reader = readers.next();
      String format = reader.getFormatName().toLowerCase(Locale.ROOT);
      if (format.equals("jpeg") || format.equals("png")) {
        return reader;
      }
    }
    throw new BadInput(Problem.at(place, PhotographProblem.NOT_A_PICTURE));
  }

  /** Reads no more pixels than are needed for what is kept. */
  private static BufferedImage read(ImageReader reader, Place place) throws IOException, BadInput {
    long pixels = (long) reader.getWidth(0) * reader.getHeight(0);
    if (pixels > MOST_MEGAPIXELS * 1_000_000L) {
      throw tooLarge(place);
    }
    int longest = Math.max(reader.getWidth(0), reader.getHeight(0));
    int each = Math.max(1, longest / (2 * LONGEST));
    ImageReadParam every = reader.getDefaultReadParam();
    every.setSourceSubsampling(each, each, 0, 0);
    return reader.read(0, every);
  }

  private static BadInput tooLarge(Place place) {
    return new BadInput(
        Problem.at(
            place,
            PhotographProblem.TOO_LARGE,
            Argument.count(MOST_MEGAPIXELS),
            Argument.count(MOST_MB)));
  }

  /**
   * How the camera was held, 1 to 8 (Exif 2.32, tag Orientation); 1, upright, where nothing says
   * it.
   */
  private static int orientation(byte[] bytes) throws IOException {
    try {
      ExifIFD0Directory directory =
          ImageMetadataReader.readMetadata(new ByteArrayInputStream(bytes))
              .getFirstDirectoryOfType(ExifIFD0Directory.class);
      Integer stated =
          directory == null ? null : directory.getInteger(ExifDirectoryBase.TAG_ORIENTATION);
      return stated == null || stated < 1 || stated > 8 ? 1 : stated;
    } catch (ImageProcessingException e) {
      return 1;
    }
  }

  /** The picture turned upright, on white, and made smaller where it is larger than is kept. */
  private static BufferedImage upright(BufferedImage picture, int orientation) {
    int longest = Math.max(picture.getWidth(), picture.getHeight());
    double scale = Math.min(1, (double) LONGEST / longest);
    int width = (int) Math.max(1, Math.round(scale * picture.getWidth()));
    int height = (int) Math.max(1, Math.round(scale * picture.getHeight()));
    boolean lying = orientation >= 5;
    BufferedImage upright =
        new BufferedImage(
            lying ? height : width, lying ? width : height, BufferedImage.TYPE_INT_RGB);
    Graphics2D canvas = upright.createGraphics();
    canvas.setColor(Color.WHITE);
    canvas.fillRect(0, 0, upright.getWidth(), upright.getHeight());
    canvas.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    canvas.transform(turned(orientation, width, height));
    canvas.drawImage(picture, 0, 0, width, height, null);
    canvas.dispose();
    return upright;
  }

  /** Where a picture's pixels go that is stored in an orientation (Exif 2.32, tag Orientation). */
  private static AffineTransform turned(int orientation, int width, int height) {
    return switch (orientation) {
      case 2 -> new AffineTransform(-1, 0, 0, 1, width, 0);
      case 3 -> new AffineTransform(-1, 0, 0, -1, width, height);
      case 4 -> new AffineTransform(1, 0, 0, -1, 0, height);
      case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
      case 6 -> new AffineTransform(0, 1, -1, 0, height, 0);
      case 7 -> new AffineTransform(0, -1, -1, 0, height, width);
      case 8 -> new AffineTransform(0, -1, 1, 0, 0, width);
      default -> new AffineTransform();
    };
  }

  private static byte[] written(BufferedImage picture, String format) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(picture, format, out);
    return out.toByteArray();
  }
}
