package caryatid.recording.c3d;

/**
 * Where the samples of a file are: frame after frame, in each the points, then the channels'
 * samples.
 *
 * @param start the first byte
 * @param points points in a frame, each of four numbers
 * @param channels channels in a sample
 * @param perFrame samples of every channel in a frame
 * @param frames how many frames
 * @param real whether numbers are real, of four bytes; else integers of two
 * @param frameHz frames in a second; 0 where the file does not say
 */
record DataLayout(
    int start, int points, int channels, int perFrame, int frames, boolean real, double frameHz) {

  int width() {
    return real ? 4 : 2;
  }

  long frameBytes() {
    return (4L * points + (long) channels * perFrame) * width();
  }

  /** The first byte of a point. */
  int point(int frame, int point) {
    return (int) (start + frame * frameBytes() + 4L * point * width());
  }

  /** The byte of a channel's sample. */
  int sample(int sample, int channel) {
    int frame = sample / perFrame;
    long within = 4L * points + (long) (sample % perFrame) * channels + channel;
    return (int) (start + frame * frameBytes() + within * width());
  }

  /** How many samples each channel has. */
  int samples() {
    return frames * perFrame;
  }

  /** Samples in a second. */
  double rateHz() {
    return frameHz * perFrame;
  }
}
