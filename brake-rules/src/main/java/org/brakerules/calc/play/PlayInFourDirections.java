package org.brakerules.calc.play;

import org.brakerules.model.quantity.Length;

/**
 * The play of a shaft in a bushing along four lines across the bore, 45 degrees apart. Two lines
 * cannot show wear between them.
 *
 * @param upAndDown straight up and down
 * @param upInFront between up in front and down behind
 * @param frontToRear straight to the front and to the rear
 * @param downInFront between down in front and up behind
 */
public record PlayInFourDirections(
    Length upAndDown, Length upInFront, Length frontToRear, Length downInFront) {

  Length in(PlayDirection direction) {
    return switch (direction) {
      case UP_AND_DOWN -> upAndDown;
      case UP_IN_FRONT -> upInFront;
      case FRONT_TO_REAR -> frontToRear;
      case DOWN_IN_FRONT -> downInFront;
    };
  }
}
