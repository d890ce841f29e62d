package org.brakerules.harness.batch;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;

/**
 * Takes an input apart into lines. Where a chunk ends hangs on the lines alone and never on time or
 * threads, so that packed output is the same to the byte however often a run was stopped.
 */
final class LineChunks implements Chunks {

  /** As many lines as a thread decides in one go. */
  static final int MOST_LINES = 32;

  /** A chunk takes no more lines once it is so large. */
  static final int ENOUGH_BYTES = 1 << 18;

  /** One byte more than any job has, so that its reader sees that it is too large. */
  static final int MOST_KEPT = 5_000_001;

  private final Input input;
  private final MessageDigest digest = sha256();
  private final byte[] buffer = new byte[1 << 16];
  private int from;
  private int to;
  private long lines;

  LineChunks(Input input) {
    this.input = input;
  }

  @Override
  public Optional<Chunk> next() throws IOException {
    List<Line> chunk = new ArrayList<>(MOST_LINES);
    long bytes = 0;
    while (chunk.size() < MOST_LINES && bytes < ENOUGH_BYTES) {
      Optional<Line> line = line();
      if (line.isEmpty()) {
        break;
      }
      chunk.add(line.get());
      bytes += line.get().bytes().length;
    }
    return chunk.isEmpty()
        ? Optional.empty()
        : Optional.of(new Chunk(chunk, bytes, mark(), input.position()));
  }

  /**
   * Passes over what an earlier run has read.
   *
   * @return whether the input is the same up to there
   */
  boolean skipTo(InputMark mark) throws IOException {
    while (lines < mark.lines()) {
      if (line().isEmpty()) {
        return false;
      }
    }
    return mark().equals(mark);
  }

  /** How far the input was read. */
  InputMark mark() {
    try {
      byte[] sum = ((MessageDigest) digest.clone()).digest();
      return new InputMark(lines, HexFormat.of().formatHex(sum));
    } catch (CloneNotSupportedException e) {
      throw new IllegalStateException("This Java cannot copy a checksum.", e);
    }
  }

  private Optional<Line> line() throws IOException {
    ByteArrayOutputStream kept = new ByteArrayOutputStream(1 << 13);
    long length = 0;
    while (from < to || fill()) {
      int end = lineFeed();
      kept.write(buffer, from, Math.min(end - from, MOST_KEPT - kept.size()));
      length += end - from;
      boolean isWhole = end < to;
      take(isWhole ? end + 1 : end);
      if (isWhole) {
        return Optional.of(new Line(++lines, kept.toByteArray(), length));
      }
    }
    return length == 0
        ? Optional.empty()
        : Optional.of(new Line(++lines, kept.toByteArray(), length));
  }

  private boolean fill() throws IOException {
    from = 0;
    to = Math.max(0, input.read(buffer));
    return to > 0;
  }

  private int lineFeed() {
    int at = from;
    while (at < to && buffer[at] != '\n') {
      at++;
    }
    return at;
  }

  private void take(int end) {
    digest.update(buffer, from, end - from);
    from = end;
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("This Java has no SHA-256.", e);
    }
  }
}
