package caryatid.report.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdfparser.PDFStreamParser;

/**
 * Whether objects of two documents say the same, with everything they refer to; streams are
 * compared unpacked.
 */
final class SameObjects {
  /** How streams are packed. */
  private static final Set<COSName> PACKING =
      Set.of(COSName.LENGTH, COSName.FILTER, COSName.DECODE_PARMS, COSName.DL);

  /** Widths of letters may differ so much from one Java to another, in points. */
  private static final double LEAST_POINTS = 0.02;

  /** By identity: objects refer to each other in circles. */
  private record ObjectPair(COSBase one, COSBase other) {
    @Override
    public boolean equals(Object o) {
      return o instanceof ObjectPair pair && pair.one == one && pair.other == other;
    }

    @Override
    public int hashCode() {
      return 31 * System.identityHashCode(one) + System.identityHashCode(other);
    }
  }

  private final Set<ObjectPair> seen = new HashSet<>();

  boolean are(COSBase given, COSBase printed) {
    COSBase one = direct(given);
    COSBase other = direct(printed);
    if (one == null || other == null) {
      return one == other;
    }
    if (one instanceof COSNumber a && other instanceof COSNumber b) {
      return near(a, b);
    }
    if (one instanceof COSDictionary || one instanceof COSArray) {
      return !seen.add(new ObjectPair(one, other)) || deep(one, other);
    }
    return one.equals(other);
  }

  private static COSBase direct(COSBase object) {
    return object instanceof COSObject reference ? reference.getObject() : object;
  }

  private boolean deep(COSBase one, COSBase other) {
    if (one instanceof COSArray a) {
      return other instanceof COSArray b && items(a, b);
    }
    if (one instanceof COSStream a) {
      return other instanceof COSStream b && members(a, b) && contents(a, b);
    }
    return !(other instanceof COSStream)
        && other instanceof COSDictionary b
        && members((COSDictionary) one, b);
  }

  private boolean items(COSArray one, COSArray other) {
    boolean same = one.size() == other.size();
    for (int i = 0; same && i < one.size(); i++) {
      same = are(one.get(i), other.get(i));
    }
    return same;
  }

  private boolean members(COSDictionary one, COSDictionary other) {
    Set<COSName> keys = new HashSet<>(one.keySet());
    keys.addAll(other.keySet());
    keys.removeAll(PACKING);
    keys.remove(COSName.PARENT);
    return keys.stream()
        .allMatch(key -> are(one.getDictionaryObject(key), other.getDictionaryObject(key)));
  }

  private static boolean contents(COSStream one, COSStream other) {
    try {
      byte[] a = unpacked(one);
      byte[] b = unpacked(other);
      return Arrays.equals(a, b) || sameDrawing(a, b);
    } catch (IOException e) {
      return false;
    }
  }

  private static byte[] unpacked(COSStream stream) throws IOException {
    try (InputStream in = stream.createInputStream()) {
      return in.readAllBytes();
    }
  }

  /** The same operators with the same words and nearly the same numbers. */
  private static boolean sameDrawing(byte[] one, byte[] other) throws IOException {
    List<Object> a = new PDFStreamParser(one).parse();
    List<Object> b = new PDFStreamParser(other).parse();
    boolean same = a.size() == b.size() && a.stream().anyMatch(Operator.class::isInstance);
    for (int i = 0; same && i < a.size(); i++) {
      same = token(a.get(i), b.get(i));
    }
    return same;
  }

  private static boolean token(Object one, Object other) {
    if (one instanceof Operator a && other instanceof Operator b) {
      return a.getName().equals(b.getName()) && Arrays.equals(a.getImageData(), b.getImageData());
    }
    return one instanceof COSBase a && other instanceof COSBase b && new SameObjects().are(a, b);
  }

  private static boolean near(COSNumber one, COSNumber other) {
    return Math.abs(one.floatValue() - other.floatValue()) <= LEAST_POINTS;
  }
}
