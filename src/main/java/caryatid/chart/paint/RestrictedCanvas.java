package caryatid.chart.paint;

import java.awt.Color;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.awt.image.BufferedImageOp;
import java.awt.image.ImageObserver;
import java.awt.image.RenderedImage;
import java.awt.image.renderable.RenderableImage;
import java.text.AttributedCharacterIterator;

/**
 * The part of a drawing surface that a chart without pictures does not need: images, moved or
 * turned surfaces, text of mixed fonts. Every such call throws an {@link
 * UnsupportedOperationException}, so that a chart that would look wrong fails in the tests.
 */
abstract class RestrictedCanvas extends Graphics2D {
  static UnsupportedOperationException not(String what) {
    return new UnsupportedOperationException(what);
  }

  @Override
  public void drawString(AttributedCharacterIterator words, int x, int y) {
    throw not("text of mixed kinds");
  }

  @Override
  public void drawString(AttributedCharacterIterator words, float x, float y) {
    throw not("text of mixed kinds");
  }

  @Override
  public void drawGlyphVector(GlyphVector glyphs, float x, float y) {
    throw not("letters as figures");
  }

  @Override
  public boolean drawImage(Image image, AffineTransform how, ImageObserver observer) {
    throw not("pictures");
  }

  @Override
  public void drawImage(BufferedImage image, BufferedImageOp how, int x, int y) {
    throw not("pictures");
  }

  @Override
  public void drawRenderedImage(RenderedImage image, AffineTransform how) {
    throw not("pictures");
  }

  @Override
  public void drawRenderableImage(RenderableImage image, AffineTransform how) {
    throw not("pictures");
  }

  @Override
  public boolean drawImage(Image image, int x, int y, ImageObserver observer) {
    throw not("pictures");
  }

  @Override
  public boolean drawImage(Image image, int x, int y, int w, int h, ImageObserver observer) {
    throw not("pictures");
  }

  @Override
  public boolean drawImage(Image image, int x, int y, Color behind, ImageObserver observer) {
    throw not("pictures");
  }

  @Override
  public boolean drawImage(
      Image image, int x, int y, int w, int h, Color behind, ImageObserver observer) {
    throw not("pictures");
  }

  @Override
  public boolean drawImage(
      Image image, int a, int b, int c, int d, int e, int f, int g, int h, ImageObserver o) {
    throw not("pictures");
  }

  @Override
  public boolean drawImage(
      Image image,
      int a,
      int b,
      int c,
      int d,
      int e,
      int f,
      int g,
      int h,
      Color behind,
      ImageObserver o) {
    throw not("pictures");
  }

  @Override
  public void translate(int x, int y) {
    throw not("a moved canvas");
  }

  @Override
  public void translate(double x, double y) {
    throw not("a moved canvas");
  }

  @Override
  public void rotate(double angle) {
    throw not("a turned canvas");
  }

  @Override
  public void rotate(double angle, double x, double y) {
    throw not("a turned canvas");
  }

  @Override
  public void scale(double x, double y) {
    throw not("a scaled canvas");
  }

  @Override
  public void shear(double x, double y) {
    throw not("a sheared canvas");
  }

  @Override
  public Graphics create() {
    throw not("a second canvas");
  }

  @Override
  public void setXORMode(Color other) {
    throw not("colours that cancel");
  }

  @Override
  public void copyArea(int x, int y, int w, int h, int dx, int dy) {
    throw not("pictures");
  }

  @Override
  public void clearRect(int x, int y, int w, int h) {
    throw not("clearing");
  }

  @Override
  public void transform(AffineTransform how) {
    setTransform(how);
  }

  @Override
  public void setTransform(AffineTransform how) {
    if (!how.isIdentity()) {
      throw not("a moved canvas");
    }
  }

  @Override
  public AffineTransform getTransform() {
    return new AffineTransform();
  }
}
