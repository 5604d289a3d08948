package caryatid.recording.model;

import caryatid.remark.Coded;

/** Where on a leg a marker says it sits, by its name. */
public enum BodyPoint implements Coded {
  KNEE("BodyPoint.KNEE"),
  ANKLE("BodyPoint.ANKLE"),
  HEEL("BodyPoint.HEEL"),
  TOE("BodyPoint.TOE");

  private final String code;

  BodyPoint(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
