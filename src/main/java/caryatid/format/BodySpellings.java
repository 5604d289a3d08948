package caryatid.format;

import caryatid.geometry.Plane;
import caryatid.geometry.Side;
import caryatid.loadline.LandmarkKind;
import caryatid.sheet.AmputationLevel;
import caryatid.sheet.AnkleAxis;
import caryatid.sheet.Hands;
import caryatid.sheet.OtherFoot;
import caryatid.sheet.ProstheticSide;

/** How parts and sides of the body, and ways of standing, are spelled in files. */
final class BodySpellings {
  static final Spellings<Plane> PLANE =
      Spellings.of(
          Plane.values(),
          each ->
              switch (each) {
                case SAGITTAL -> "sagittal";
                case FRONTAL -> "frontal";
              });

  static final Spellings<Side> SIDE =
      Spellings.of(
          Side.values(),
          each ->
              switch (each) {
                case LEFT -> "left";
                case RIGHT -> "right";
              });

  static final Spellings<ProstheticSide> PROSTHETIC_SIDE =
      Spellings.of(
          ProstheticSide.values(),
          each ->
              switch (each) {
                case LEFT -> "left";
                case RIGHT -> "right";
                case BOTH -> "both";
              });

  static final Spellings<AnkleAxis> ANKLE_AXIS =
      Spellings.of(
          AnkleAxis.values(),
          each ->
              switch (each) {
                case NONE -> "none";
                case LEFT -> "left";
                case RIGHT -> "right";
                case BOTH -> "both";
              });

  static final Spellings<AmputationLevel> LEVEL =
      Spellings.of(
          AmputationLevel.values(),
          each ->
              switch (each) {
                case PARTIAL_FOOT -> "partial-foot";
                case ANKLE_DISARTICULATION -> "ankle-disarticulation";
                case TRANSTIBIAL -> "transtibial";
                case KNEE_DISARTICULATION -> "knee-disarticulation";
                case TRANSFEMORAL -> "transfemoral";
                case HIP_DISARTICULATION -> "hip-disarticulation";
                case ROTATIONPLASTY -> "rotationplasty";
              });

  static final Spellings<LandmarkKind> LANDMARK =
      Spellings.of(
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

  static final Spellings<Hands> HANDS =
      Spellings.of(
          Hands.values(),
          each ->
              switch (each) {
                case FREE -> "free";
                case TOUCHING -> "touching";
                case HOLDING -> "holding";
              });

  static final Spellings<OtherFoot.Ground> GROUND =
      Spellings.of(
          OtherFoot.Ground.values(),
          each ->
              switch (each) {
                case PLATE -> "plate";
                case BLOCK -> "block";
                case FLOOR -> "floor";
              });

  private BodySpellings() {}
}
