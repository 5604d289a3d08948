package caryatid.wording;

import java.util.Locale;

/** The languages in which there are sentences. */
public enum Language {
  EN("en"),
  DE("de"),
  FR("fr"),
  ES("es");

  private final String tag;

  Language(String tag) {
    this.tag = tag;
  }

  /** Its tag by BCP 47, which also ends the names of its bundles. */
  public String tag() {
    return tag;
  }

  public Locale locale() {
    return Locale.forLanguageTag(tag);
  }
}
