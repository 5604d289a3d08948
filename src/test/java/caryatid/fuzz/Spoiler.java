package caryatid.fuzz;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** Spoils a text file in one to four ways, by chance and repeatably. */
final class Spoiler {
  private static final List<String> ODD =
      List.of(
          "",
          "-",
          "1e309",
          "-0",
          "NaN",
          "\u0000",
          "\u001b]0;x\u0007",
          "\u202e",
          "\ud83e\uddbf",
          "'",
          "\"",
          ",",
          ";",
          "\t",
          "999999999999",
          "{",
          "[",
          ": ",
          "&a",
          "*a",
          "%YAML 3.0",
          "\ufeff",
          "0.5",
          "\u00b2",
          "膝",
          "#",
          "---");

  private final Random random;

  Spoiler(long seed) {
    this.random = new Random(seed);
  }

  byte[] spoil(byte[] bytes) {
    byte[] spoilt = bytes;
    int times = 1 + random.nextInt(2) * random.nextInt(4);
    for (int i = 0; i < times; i++) {
      spoilt = once(spoilt);
    }
    return spoilt;
  }

  private byte[] once(byte[] bytes) {
    return switch (random.nextInt(15)) {
      case 0 -> flipped(bytes);
      case 1 -> Arrays.copyOf(bytes, random.nextInt(bytes.length + 1));
      case 2 -> zeroed(bytes);
      case 3 -> lines(bytes, 0);
      case 4 -> lines(bytes, 1);
      case 5 -> lines(bytes, 2);
      case 6 -> column(bytes);
      case 7, 8 -> token(bytes);
      case 9, 10 -> numbers(bytes);
      default -> digits(bytes);
    };
  }

  private byte[] flipped(byte[] bytes) {
    byte[] flipped = bytes.clone();
    if (flipped.length > 0) {
      flipped[random.nextInt(flipped.length)] ^= (byte) (1 << random.nextInt(8));
    }
    return flipped;
  }

  private byte[] zeroed(byte[] bytes) {
    byte[] zeroed = bytes.clone();
    int from = random.nextInt(zeroed.length + 1);
    Arrays.fill(zeroed, from, Math.min(zeroed.length, from + random.nextInt(64)), (byte) 0);
    return zeroed;
  }

  /** Leaves a line out, doubles one, or exchanges two. */
  private byte[] lines(byte[] bytes, int how) {
    List<String> lines = new ArrayList<>(text(bytes).lines().toList());
    if (lines.size() < 2) {
      return bytes;
    }
    int at = random.nextInt(lines.size());
    int other = random.nextInt(lines.size());
    switch (how) {
      case 0 -> lines.remove(at);
      case 1 -> lines.add(other, lines.get(at));
      default -> Collections.swap(lines, at, other);
    }
    return bytes(String.join("\n", lines) + "\n");
  }

  /** One odd value in the first place of every line. */
  private byte[] column(byte[] bytes) {
    String odd = odd();
    return bytes(
        String.join(
            "\n",
            text(bytes).lines().map(l -> l.replaceFirst("^[^,]*", "")).map(l -> odd + l).toList()));
  }

  /** Up to 20 digits exchanged for others. */
  private byte[] digits(byte[] bytes) {
    byte[] changed = bytes.clone();
    int times = 1 + random.nextInt(20);
    for (int i = 0; changed.length > 0 && i < times; i++) {
      int at = random.nextInt(changed.length);
      if (Character.isDigit(changed[at])) {
        changed[at] = (byte) ('0' + random.nextInt(10));
      }
    }
    return changed;
  }

  /**
   * The numbers of one column from some line on doubled, halved, without their sign or its digits
   * after the mark.
   */
  private byte[] numbers(byte[] bytes) {
    int column = random.nextInt(8);
    int how = random.nextInt(4);
    List<String> lines = new ArrayList<>(text(bytes).lines().toList());
    for (int i = random.nextInt(lines.size() + 1); i < lines.size(); i++) {
      String[] cells = lines.get(i).split("(?<=[,;: ])|(?=[,;: ])", -1);
      if (2 * column < cells.length) {
        cells[2 * column] = number(cells[2 * column], how);
        lines.set(i, String.join("", cells));
      }
    }
    return bytes(String.join("\n", lines) + "\n");
  }

  private static String number(String cell, int how) {
    if (!cell.matches("-?\\d+(\\.\\d+)?")) {
      return cell;
    }
    return switch (how) {
      case 0 -> Double.toString(2 * Double.parseDouble(cell));
      case 1 -> Double.toString(Double.parseDouble(cell) / 2);
      case 2 -> cell.replace("-", "");
      default -> cell.replaceFirst("\\..*", "");
    };
  }

  /** One word or number replaced. */
  private byte[] token(byte[] bytes) {
    String text = text(bytes);
    if (text.isEmpty()) {
      return bytes;
    }
    int from = random.nextInt(text.length());
    int to = Math.min(text.length(), from + random.nextInt(8));
    return bytes(text.substring(0, from) + odd() + text.substring(to));
  }

  private String odd() {
    return ODD.get(random.nextInt(ODD.size()));
  }

  private static String text(byte[] bytes) {
    return new String(bytes, StandardCharsets.ISO_8859_1);
  }

  private static byte[] bytes(String text) {
    return text.chars().allMatch(c -> c < 256)
        ? text.getBytes(StandardCharsets.ISO_8859_1)
        : text.getBytes(StandardCharsets.UTF_8);
  }
}
