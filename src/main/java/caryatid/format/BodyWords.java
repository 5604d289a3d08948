package caryatid.format;

import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.LandmarkKind;
import caryatid.sheet.AmputationLevel;
import caryatid.sheet.Hands;
import caryatid.sheet.OtherFoot;
import caryatid.sheet.ProstheticSide;

/** Words for parts and sides of the body, and for how somebody stands. */
final class BodyWords {
  static final Words<Plane> PLANE =
      Words.of(
          Plane.values(),
          each ->
              switch (each) {
                case SAGITTAL -> "sagittal";
                case FRONTAL -> "frontal";
              });

  static final Words<Side> SIDE =
      Words.of(
          Side.values(),
          each ->
              switch (each) {
                case LEFT -> "left";
                case RIGHT -> "right";
              });

  static final Words<ProstheticSide> PROSTHETIC_SIDE =
      Words.of(
          ProstheticSide.values(),
          each ->
              switch (each) {
                case LEFT -> "left";
                case RIGHT -> "right";
                case BOTH -> "both";
              });

  static final Words<AmputationLevel> LEVEL =
      Words.of(
          AmputationLevel.values(),
          each ->
              switch (each) {
                case ANKLE_DISARTICULATION -> "ankle-disarticulation";
                case TRANSTIBIAL -> "transtibial";
                case KNEE_DISARTICULATION -> "knee-disarticulation";
                case TRANSFEMORAL -> "transfemoral";
                case HIP_DISARTICULATION -> "hip-disarticulation";
              });

  static final Words<LandmarkKind> LANDMARK =
      Words.of(
          LandmarkKind.values(),
          each ->
              switch (each) {
                case KNEE_CENTRE -> "knee-centre";
                case ANKLE_AXIS -> "ankle-axis";
                case FOOT_REFERENCE_POINT -> "foot-reference-point";
                case HIP -> "hip";
                case SOCKET_REFERENCE_POINT -> "socket-reference-point";
                case OUTER_PATELLAR_BORDER -> "outer-patellar-border";
                case OTHER -> "other";
              });

  static final Words<Hands> HANDS =
      Words.of(
          Hands.values(),
          each ->
              switch (each) {
                case FREE -> "free";
                case TOUCHING -> "touching";
                case HOLDING -> "holding";
              });

  static final Words<OtherFoot.Ground> GROUND =
      Words.of(
          OtherFoot.Ground.values(),
          each ->
              switch (each) {
                case PLATE -> "plate";
                case BLOCK -> "block";
                case FLOOR -> "floor";
              });

  private BodyWords() {}
}
