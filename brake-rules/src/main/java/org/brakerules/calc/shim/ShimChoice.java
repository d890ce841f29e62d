package org.brakerules.calc.shim;

import java.util.List;
import org.brakerules.model.quantity.Length;

/** What to do with one stack of shims. */
public sealed interface ShimChoice {

  /**
   * A stack that brings the end play inside its band.
   *
   * @param stack the whole stack, thickest first
   * @param takeOut the shims that come out of it, thickest first
   * @param putIn the shims that go in, thickest first
   * @param endPlay the end play it leaves
   */
  record Fits(List<ShimPiece> stack, List<ShimPiece> takeOut, List<ShimPiece> putIn, Length endPlay)
      implements ShimChoice {

    /** Keeps its own copies. */
    public Fits {
      stack = List.copyOf(stack);
      takeOut = List.copyOf(takeOut);
      putIn = List.copyOf(putIn);
    }
  }

  /**
   * No stack of the shims at hand is thick and thin enough.
   *
   * @param beside the stack that comes nearest from below, thickest first; empty for none at all
   * @param thinnest the thinnest shim that would do beside it
   * @param thickest the thickest shim that would do beside it
   */
  record NothingFits(List<ShimPiece> beside, Length thinnest, Length thickest)
      implements ShimChoice {

    /** Keeps its own copy. */
    public NothingFits {
      beside = List.copyOf(beside);
    }
  }

  /**
   * Even without any shim the end play is under its minimum, so no shim is at fault.
   *
   * @param endPlay the end play without shims
   */
  record TooTightWithoutShims(Length endPlay) implements ShimChoice {}

  /**
   * Nothing moved. How hard the parts press on each other no end play tells: take shims out until
   * the shaft moves, then measure.
   */
  record Bound() implements ShimChoice {}

  /** The shims at hand make more stacks than can be tried: offer fewer kinds of them. */
  record TooManyStacks() implements ShimChoice {}
}
