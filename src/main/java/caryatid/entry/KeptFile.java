package caryatid.entry;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A file that is kept with an entry, byte for byte.
 *
 * @param name its name in the entry's folder
 * @param is what it is
 * @param original the name it had when it was given
 */
public record KeptFile(String name, Role is, String original) {
  /** Of new names; Windows' programs open no path of 260 characters or more, folders included. */
  private static final int LONGEST = 60;

  /** A name that Windows keeps for a device, whatever follows a dot. */
  private static final String DEVICE = "(?i)(con|prn|aux|nul|com[1-9]|lpt[1-9])([.].*)?";

  /** What a kept file is. */
  public enum Role {
    RECORDING("recording"),
    /** A plate description. */
    DESCRIPTION("description"),
    /** A trial sheet. */
    SHEET("sheet"),
    /** A trial sheet that the stand's own is based on. */
    EARLIER_SHEET("earlier sheet"),
    /** The states before, as the check was given them. */
    EARLIER_STATES("earlier states"),
    /** The result for programs. */
    RESULT("result"),
    REPORT("report"),
    /** A photograph, upright, without place, time and serial number. */
    PHOTOGRAPH("photograph"),
    OTHER("other");

    private final String code;

    Role(String code) {
      this.code = code;
    }

    /** The code that files hold; never changed. */
    public String code() {
      return code;
    }

    /** The typed name, for example {@code earlier-sheet}. */
    public static Optional<Role> of(String typed) {
      return Arrays.stream(values()).filter(r -> r.key().equals(typed)).findFirst();
    }

    /** All of them as they are typed. */
    public static List<String> keys() {
      return Arrays.stream(values()).map(Role::key).toList();
    }

    private String key() {
      return code.replace(' ', '-');
    }
  }

  /**
   * @throws IllegalArgumentException if the name is none that every file system takes
   */
  public KeptFile {
    if (!isName(name)) {
      throw new IllegalArgumentException("file name: " + name);
    }
  }

  /**
   * A name that says what the file is and what it was called, of characters that every file system
   * takes; other characters become {@code _}.
   */
  public static String nameFor(Role is, String original) {
    String last =
        original.substring(Math.max(original.lastIndexOf('/'), original.lastIndexOf('\\')) + 1);
    String plain = last.replaceAll("[^A-Za-z0-9._-]", "_").replaceAll("^\\.+|\\.+$", "");
    String lead = is.key();
    String name = plain.toLowerCase(Locale.ROOT).startsWith(lead) ? plain : lead + "-" + plain;
    return name.length() <= LONGEST ? name : name.substring(0, LONGEST / 2) + tail(name);
  }

  private static String tail(String name) {
    return name.substring(name.length() - LONGEST / 2).replaceAll("\\.+$", "");
  }

  /** Whether every file system takes a name and it is no other than itself in upper case. */
  public static boolean isName(String name) {
    return name.matches("[A-Za-z0-9_-]([A-Za-z0-9._-]{0,98}[A-Za-z0-9_-])?")
        && !name.matches(DEVICE)
        && !name.equals(Entry.FILE);
  }
}
