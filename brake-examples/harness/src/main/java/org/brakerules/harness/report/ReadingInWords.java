package org.brakerules.harness.report;

import java.util.Optional;
import org.brakerules.calc.trust.Instrument;
import org.brakerules.model.decision.Check;
import org.brakerules.model.decision.CheckStatus;
import org.brakerules.model.decision.LimitInForce;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.quantity.Unit;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Reading;
import org.brakerules.model.reading.Station;

/** A reading against its limit: what was read, the limit, and how far inside or beyond. */
final class ReadingInWords {

  private final Check check;

  private ReadingInWords(Check check) {
    this.check = check;
  }

  static String of(Check check) {
    return new ReadingInWords(check).inWords();
  }

  /** A reading that decided something, with how far it can be trusted. */
  static String deciding(Check check) {
    ReadingInWords words = new ReadingInWords(check);
    return words.inWords() + check.reading().map(words::trust).orElse("");
  }

  private String inWords() {
    String read = check.reading().map(ReadingInWords::read).orElse("not measured");
    String limit = check.limit().map(this::limit).orElse("no limit under this rule set");
    String margin = check.margin().map(this::margin).orElse("");
    return check.propertyInWords() + " " + read + "; " + limit + margin;
  }

  private static String read(Reading<?> reading) {
    return reading.written()
        + reading.uncertainty().map(most -> " +/- " + most).orElse("")
        + where(reading.station())
        + (reading.method() == Method.UNKNOWN ? "" : " (" + reading.method().inWords() + ")")
        + reading.reservoirPressure().map(air -> ", reservoir at " + air).orElse("");
  }

  /** How the margin compares with what the instrument errs, where nothing better is stated. */
  private <Q extends Quantity<Q>> String trust(Reading<Q> reading) {
    if (reading.uncertainty().isPresent() || check.margin().isEmpty()) {
      return "";
    }
    return Instrument.of(reading.method())
        .flatMap(instrument -> trust(reading, instrument))
        .orElse("; uncertainty not stated");
  }

  @SuppressWarnings("unchecked") // a check holds quantities of one kind only
  private <Q extends Quantity<Q>> Optional<String> trust(
      Reading<Q> reading, Instrument instrument) {
    Q margin = (Q) check.margin().orElseThrow();
    return instrument
        .uncertaintyOf(reading.value())
        .map(
            errs ->
                (margin.compareTo(errs) > 0 ? ", more than a " : ", no more than a ")
                    + instrument.name()
                    + " errs ("
                    + errs
                    + ", "
                    + instrument.standing().inWords()
                    + ")");
  }

  private static String where(Station station) {
    boolean isStated = station != Station.UNKNOWN && station != Station.WHOLE_PART;
    return isStated ? " at the " + station.inWords() : "";
  }

  private String limit(LimitInForce limit) {
    return "limit "
        + limit.inWords()
        + inUnitOfReading(limit.value()).map(same -> " (" + same + ")").orElse("")
        + ", "
        + Wording.source(limit.source());
  }

  private String margin(Quantity<?> margin) {
    String amount = inUnitOfReading(margin).orElseGet(margin::toString);
    return "; " + amount + (check.status() == CheckStatus.BEYOND ? " beyond it" : " inside it");
  }

  private Optional<String> inUnitOfReading(Quantity<?> quantity) {
    return check
        .reading()
        .map(reading -> reading.value().unit())
        .filter(unit -> !unit.equals(quantity.unit()))
        .map(unit -> format(quantity, unit));
  }

  @SuppressWarnings("unchecked") // a check holds quantities of one kind only
  private static <Q extends Quantity<Q>> String format(Quantity<?> quantity, Unit<?> unit) {
    return ((Quantity<Q>) quantity).format((Unit<Q>) unit);
  }
}
