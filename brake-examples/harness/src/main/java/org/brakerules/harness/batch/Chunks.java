package org.brakerules.harness.batch;

import java.io.IOException;
import java.util.Optional;

/** Hands out the lines of an input in chunks. Only one thread asks. */
interface Chunks {

  /** The next chunk; empty at the end of the input. */
  Optional<Chunk> next() throws IOException;
}
