package org.brakerules.benchmark.oracle;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;
import org.brakerules.model.job.Acceptance;
import org.brakerules.model.quantity.Quantities;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.quantity.Torque;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Reading;

/** How far a reading is trusted: by what is stated, by its instrument, or wholly. */
final class Trust {

  private static final BigDecimal SHARE_OF_TORQUE = new BigDecimal("0.04");

  /** What a common instrument of each method can be wrong by, from memory. */
  private static final Map<Method, Quantity<?>> DOUBT = new EnumMap<>(Method.class);

  static {
    doubt("0.001 in", Method.DIAL_INDICATOR, Method.DIAL_INDICATOR_LIFTED_BY_HAND);
    doubt("0.001 in", Method.FEELER_GAUGE, Method.BORE_GAUGE, Method.BORE_LESS_JOURNAL);
    doubt("0.002 in", Method.CALIPER, Method.DEPTH_GAUGE);
    doubt("0.0005 in", Method.MICROMETER);
    doubt("0.005 in", Method.DRUM_GAUGE);
    doubt("1/32 in", Method.STEEL_RULE, Method.FULL_APPLICATION, Method.PRIED_BY_HAND);
    doubt("1/32 in", Method.SPRING_BRAKE_REAPPLIED);
    doubt("1 deg", Method.PROTRACTOR);
  }

  private Trust() {}

  private static void doubt(String value, Method... methods) {
    for (Method method : methods) {
      DOUBT.put(method, Quantities.parse(value));
    }
  }

  static <Q extends Quantity<Q>> Reading<Q> trusted(Reading<Q> reading, Acceptance acceptance) {
    return switch (acceptance) {
      case SIMPLE -> reading.withoutUncertainty();
      case GUARDED_IF_STATED -> reading;
      case GUARDED -> reading.uncertainty().isPresent() ? reading : byInstrument(reading);
    };
  }

  @SuppressWarnings("unchecked") // the class of the quantity is compared before
  private static <Q extends Quantity<Q>> Reading<Q> byInstrument(Reading<Q> reading) {
    Q value = reading.value();
    if (reading.method() == Method.TORQUE_WRENCH && value instanceof Torque torque) {
      Torque doubt = new Torque(torque.newtonMetres().multiply(SHARE_OF_TORQUE), torque.unit());
      return reading.plusOrMinus((Q) doubt);
    }
    Quantity<?> doubt = DOUBT.get(reading.method());
    return doubt != null && doubt.getClass() == value.getClass()
        ? reading.plusOrMinus((Q) doubt)
        : reading;
  }
}
