package org.brakerules.harness.sheet;

import org.brakerules.model.part.Hand;

/**
 * Which way the cam is drawn, in words. A hand is the way the S is turned, seen from the head: here
 * a left-hand one turns to the left. Makers' lists may count otherwise, so the words send there.
 */
final class CamTurn {

  private CamTurn() {}

  static String inWords(Hand hand) {
    return switch (hand) {
      case LEFT -> drawn("left-hand", "left, against the clock");
      case RIGHT -> drawn("right-hand", "right, with the clock");
      case UNKNOWN ->
          "Which hand of camshaft this wheel end takes is not stated: neither its S nor its turn is"
              + " drawn.";
    };
  }

  private static String drawn(String hand, String way) {
    return "Drawn with a "
        + hand
        + " camshaft: seen from the wheel it turns to the "
        + way
        + ", to apply (arrows). Chamber and arm may sit elsewhere; the turn stays. Marking and"
        + " maker's list decide the hand.";
  }
}
