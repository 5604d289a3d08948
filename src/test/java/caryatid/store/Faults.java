package caryatid.store;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.util.concurrent.atomic.AtomicInteger;

/** Counts the steps that change something on the disk and lets chosen ones fail. */
final class Faults {
  /** The reason that failing steps give. */
  static final String REASON = "injected fault";

  /** How a killed program ends. */
  static final int KILLED = 137;

  private final AtomicInteger steps = new AtomicInteger();
  private final Unforced unforced = new Unforced();
  private final AtomicInteger refused = new AtomicInteger();
  private int first = Integer.MAX_VALUE;
  private int last = Integer.MAX_VALUE;
  private boolean struck;
  private boolean deadly;

  /** From now on, the steps from one to another, counted from 1, fail. */
  void arm(int firstStep, int lastStep) {
    steps.set(0);
    struck = false;
    first = firstStep;
    last = lastStep;
  }

  /** From now on, a step, counted from 1, ends the program on the spot instead, as a kill does. */
  void armToKill(int step) {
    arm(step, step);
    deadly = true;
  }

  void disarm() {
    first = Integer.MAX_VALUE;
    last = Integer.MAX_VALUE;
  }

  /** Whether the armed steps were reached. */
  boolean struck() {
    return struck;
  }

  /** What was written and not yet forced to the disk. */
  Unforced unforced() {
    return unforced;
  }

  /** So many moves are refused from now on, as where a scanner reads the file. */
  void refuseMoves(int times) {
    refused.set(times);
  }

  void beforeMove(String file) throws IOException {
    if (refused.getAndUpdate(left -> Math.max(0, left - 1)) > 0) {
      throw new AccessDeniedException(file);
    }
  }

  void step() throws IOException {
    int step = steps.incrementAndGet();
    if (step >= first && step <= last) {
      struck = true;
      if (deadly) {
        Runtime.getRuntime().halt(KILLED);
      }
      throw new IOException(REASON);
    }
  }
}
