package caryatid.impure;

import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.FileInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.DecimalFormat;
import java.text.NumberFormat;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Collections;
import java.util.Date;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.ThreadLocalRandom;
import java.util.function.Supplier;

/** What code that computes must not do, a method for each; the rule must find every one. */
@SuppressWarnings("all")
public final class Violations {
  private Violations() {}

  static Object now() {
    return OffsetDateTime.now();
  }

  static Object nowByAClock(Clock clock) {
    return Instant.now(clock);
  }

  static Object nowByReference() {
    Supplier<LocalDate> today = LocalDate::now;
    return today.get();
  }

  static Object date() {
    return new Date();
  }

  static long clock(Clock clock) {
    return clock.millis();
  }

  static double random() {
    return Math.random();
  }

  static Object seededRandom() {
    return new Random(3);
  }

  static int threadLocalRandom() {
    return ThreadLocalRandom.current().nextInt();
  }

  static void shuffle(List<String> list) {
    Collections.shuffle(list);
  }

  static long nanoTime() {
    return System.nanoTime();
  }

  static long currentTimeMillis() {
    return System.currentTimeMillis();
  }

  static Object randomUuid() {
    return UUID.randomUUID();
  }

  static Object zone() {
    return ZoneId.systemDefault();
  }

  static Object defaultLocale() {
    return Locale.getDefault();
  }

  static Object defaultCharset() {
    return Charset.defaultCharset();
  }

  static String format(double number) {
    return String.format("%.1f", number);
  }

  static String formatted(double number) {
    return "%.1f".formatted(number);
  }

  static String lowerCase(String text) {
    return text.toLowerCase();
  }

  static String upperCase(String text) {
    return text.toUpperCase();
  }

  static String lowerCaseByReference(List<String> list) {
    return list.stream().map(String::toLowerCase).findFirst().orElseThrow();
  }

  static byte[] bytes(String text) {
    return text.getBytes();
  }

  static String text(byte[] bytes) {
    return new String(bytes);
  }

  static Object decimalFormat() {
    return new DecimalFormat("0.0");
  }

  static Object numberFormat() {
    return NumberFormat.getInstance();
  }

  static Object dateFormat() {
    return DateTimeFormatter.ofPattern("d MMMM");
  }

  static void out() {
    System.out.println();
  }

  static Object err() {
    return System.err;
  }

  static int in() throws IOException {
    return System.in.read();
  }

  static Object property() {
    return System.getProperty("user.name");
  }

  static Object environment() {
    return System.getenv("HOME");
  }

  static byte[] file(Path path) throws IOException {
    return Files.readAllBytes(path);
  }

  static Object path() {
    return Path.of("file");
  }

  static Object fileStream() throws IOException {
    return new FileInputStream("file");
  }

  static int callersStream(InputStream in) throws IOException {
    return in.read();
  }

  static String callersReader(BufferedReader in) throws IOException {
    return in.readLine();
  }

  static Object streamOfBytes(byte[] bytes) {
    return new ByteArrayInputStream(bytes);
  }

  static Object resource() {
    return Violations.class.getResourceAsStream("file");
  }

  static void sleep() throws InterruptedException {
    Thread.sleep(1);
  }
}
