package org.brakerules.harness.batch;

import java.io.IOException;

/** Takes what was decided, in the order of the input. Only one thread writes to it. */
interface BatchOutput {

  /** Takes what became of the next chunk. */
  void append(ChunkResult result) throws IOException;
}
