package org.brakerules.harness.figures;

import java.math.BigDecimal;
import java.math.MathContext;
import org.brakerules.model.decision.LimitInForce;
import org.brakerules.model.quantity.Angle;
import org.brakerules.model.quantity.Force;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.quantity.Pressure;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.quantity.Share;
import org.brakerules.model.quantity.Torque;
import org.brakerules.model.reading.Reading;

/**
 * Where a reading stands beside its limit: as a share of the limit, drawn larger where reading and
 * limit lie close together.
 *
 * @param fromLimit the reading less the limit, as a share of the limit
 * @param uncertainty the uncertainty as a share of the limit; zero if none is stated
 * @param zoom how many times as large it is drawn: 1, 10 or 100
 */
record RowScale(BigDecimal fromLimit, BigDecimal uncertainty, int zoom) {

  private static final int[] ZOOMS = {100, 10};

  static RowScale of(Reading<?> reading, LimitInForce limit) {
    BigDecimal whole = amount(limit.value());
    if (whole.signum() == 0) {
      BigDecimal beside = BigDecimal.valueOf(amount(reading.value()).signum());
      return new RowScale(beside, BigDecimal.ZERO, 1);
    }
    BigDecimal from = share(amount(reading.value()).subtract(whole), whole);
    BigDecimal least =
        reading.uncertainty().map(one -> share(amount(one), whole)).orElse(BigDecimal.ZERO);
    BigDecimal widest = from.abs().add(least);
    for (int zoom : ZOOMS) {
      if (widest.multiply(BigDecimal.valueOf(zoom)).compareTo(BigDecimal.ONE) < 0) {
        return new RowScale(from, least, zoom);
      }
    }
    return new RowScale(from, least, 1);
  }

  /** How far from the limit it is drawn, at most half the room either way. */
  int offset(int halfRoom) {
    int offset = drawn(fromLimit, halfRoom);
    return Math.max(-halfRoom, Math.min(halfRoom, offset));
  }

  int whisker(int halfRoom) {
    return Math.min(halfRoom, drawn(uncertainty, halfRoom));
  }

  boolean hasUncertainty() {
    return uncertainty.signum() > 0;
  }

  String inWords() {
    return zoom == 1 ? "" : "x " + zoom;
  }

  private int drawn(BigDecimal share, int halfRoom) {
    return share.multiply(BigDecimal.valueOf((long) halfRoom * zoom)).intValue();
  }

  private static BigDecimal share(BigDecimal amount, BigDecimal whole) {
    return amount.divide(whole, MathContext.DECIMAL64);
  }

  private static BigDecimal amount(Quantity<?> quantity) {
    if (quantity instanceof Length length) {
      return BigDecimal.valueOf(length.nanometres());
    }
    if (quantity instanceof Angle angle) {
      return BigDecimal.valueOf(angle.microdegrees());
    }
    if (quantity instanceof Torque torque) {
      return torque.newtonMetres();
    }
    if (quantity instanceof Share share) {
      return share.percent();
    }
    if (quantity instanceof Pressure pressure) {
      return pressure.newtonsPerSquareInch();
    }
    return ((Force) quantity).newtons();
  }
}
