package org.brakerules.harness.batch;

/**
 * How the two outputs are packed.
 *
 * @param decided the output
 * @param rejected the rejects
 */
record Packing(Packer decided, Packer rejected) {

  static final Packing NONE = new Packing(Packer.PLAIN, Packer.PLAIN);

  /** What suits the names of the files. */
  static Packing of(Places places) {
    return new Packing(
        Packer.of(places.decided().toString()), Packer.of(places.rejected().toString()));
  }
}
