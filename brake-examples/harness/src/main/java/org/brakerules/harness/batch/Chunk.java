package org.brakerules.harness.batch;

import java.util.List;

/**
 * Some lines that follow each other, decided by one thread and written together.
 *
 * @param lines the lines; never empty
 * @param bytes how large they are together
 * @param after the input behind the last of them
 * @param position how many bytes of the file were read by then, for the progress
 */
record Chunk(List<Line> lines, long bytes, InputMark after, long position) {

  /** Keeps its own copy of the list. */
  Chunk {
    lines = List.copyOf(lines);
  }
}
