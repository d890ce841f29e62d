package org.brakerules.internal.rule;

import java.util.Optional;
import org.brakerules.internal.fact.Verdicts;
import org.brakerules.model.part.Part;

/**
 * The one verdict of a rule.
 *
 * @param call which
 * @param variable the variable of the part
 * @param point the inspection point it asks for; empty if it asks for none
 */
public record WrittenAction(Call call, String variable, Optional<String> point) {

  /** The verdicts of the rule language. */
  public enum Call {
    /** The part is replaced. */
    REPLACE("replace"),
    /** The part is cleaned. */
    CLEAN("clean"),
    /** The part is adjusted. */
    ADJUST("adjust"),
    /** Work stops. */
    HOLD("hold"),
    /** A look is asked for. */
    LOOK_AT("lookAt"),
    /** A reading is asked for again. */
    MEASURE_AGAIN("measureAgain");

    private final String word;

    Call(String word) {
      this.word = word;
    }

    /** As rule files write it. */
    public String word() {
      return word;
    }
  }

  /** Speaks. */
  public void speak(Verdicts verdicts, Part part) {
    switch (call) {
      case REPLACE -> verdicts.replace(part);
      case CLEAN -> verdicts.clean(part);
      case ADJUST -> verdicts.adjust(part);
      case HOLD -> verdicts.hold(part);
      case LOOK_AT -> verdicts.lookAt(part, point.orElseThrow());
      case MEASURE_AGAIN -> verdicts.measureAgain(part, point.orElseThrow());
    }
  }

  @Override
  public String toString() {
    return "verdict."
        + call.word()
        + "( "
        + variable
        + point.map(id -> ", " + id).orElse("")
        + " )";
  }
}
