package org.brakerules.internal.fact;

import org.brakerules.model.decision.Verdict;
import org.brakerules.model.part.Part;

/** Everything a rule can say of a part: the whole right-hand side of the rule language. */
public final class Verdicts {

  /** Hears the verdicts. */
  @FunctionalInterface
  public interface Listener {
    /**
     * A rule spoke.
     *
     * @param verdict what it said
     * @param part of which part
     * @param point the inspection point it asks for; empty if it asks for none
     */
    void heard(Verdict verdict, Part part, String point);
  }

  private final Listener listener;

  /** Passes every verdict on. */
  public Verdicts(Listener listener) {
    this.listener = listener;
  }

  /** The part is replaced. */
  public void replace(Part part) {
    listener.heard(Verdict.REPLACE, part, "");
  }

  /** The part is cleaned and goes back. */
  public void clean(Part part) {
    listener.heard(Verdict.CLEAN, part, "");
  }

  /** The part is adjusted, shimmed or fitted again. */
  public void adjust(Part part) {
    listener.heard(Verdict.ADJUST, part, "");
  }

  /** Work on the part stops. */
  public void hold(Part part) {
    listener.heard(Verdict.HOLD, part, "");
  }

  /** The part is undecided until this point of it is looked at. */
  public void lookAt(Part part, String point) {
    listener.heard(Verdict.LOOK_AT, part, point);
  }

  /** The part is undecided until this point of it is measured again, the other work being done. */
  public void measureAgain(Part part, String point) {
    listener.heard(Verdict.MEASURE_AGAIN, part, point);
  }
}
