package org.brakerules.harness.batch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The demo batch: a week of the invented yard, with one bad line in it. */
final class DemoBatch {

  static final Path FILE = Path.of("..", "batches", "harrowmere-week.jsonl");
  static final int BAD_LINE = 6;

  private DemoBatch() {}

  /** Its good lines. */
  static List<String> jobs() throws IOException {
    List<String> lines = new ArrayList<>(Files.readAllLines(FILE));
    lines.remove(BAD_LINE - 1);
    return lines;
  }
}
