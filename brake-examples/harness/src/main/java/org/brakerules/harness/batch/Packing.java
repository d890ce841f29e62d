package org.brakerules.harness.batch;

import java.nio.file.Path;

/**
 * How the two outputs are packed.
 *
 * @param decided the output
 * @param rejected the rejects
 */
record Packing(Packer decided, Packer rejected) {

  static final Packing NONE = new Packing(Packer.PLAIN, Packer.PLAIN);

  /** What suits the names of the files. */
  static Packing of(Path decided, Path rejected) {
    return new Packing(Packer.of(decided.toString()), Packer.of(rejected.toString()));
  }
}
