package org.brakerules.work;

import java.util.List;
import org.brakerules.model.part.Place;

/**
 * A part that a step puts in.
 *
 * @param part where it belongs
 * @param use which part goes in
 * @param rules the ids of the rules that decided so
 */
public record FittedPart(Place part, Use use, List<String> rules) {

  /** Which part goes in. */
  public enum Use {
    /** A new one: the part of the job is replaced, or gives way for the sake of another part. */
    NEW("new"),
    /** The one that came out. */
    GOES_BACK("goes back"),
    /** The one that came out, cleaned. */
    CLEANED("goes back cleaned"),
    /**
     * The shoe that came out with a new lining on it, or an exchange shoe that brings its lining.
     */
    RELINED("relined, or an exchange shoe with its lining"),
    /** The one that the new chamber or spring brake brings: the old unit leaves whole. */
    WITH_UNIT("comes with the new unit"),
    /** The new one that the job states: put in before the inspection, or lying ready. */
    INSPECTED_NEW("new already"),
    /**
     * A new one that is used once: the new one of the inspection only if it was not fitted yet, for
     * the work takes it off.
     */
    NEW_ONCE_MORE("new; if it was on already and comes off, another new one"),
    /** Shims of a stack that is changed: which of them go in the end play tells. */
    CHOSEN("by the end play measured"),
    /** The one that came out, adjusted, turned or bolted again. */
    ADJUSTED("goes back adjusted"),
    /** Not known yet, and only the work or its proof shows it. */
    DECIDED_AFTERWARDS("decided by what is read afterwards"),
    /** Not known yet: the part must be decided first. */
    UNDECIDED("decide first");

    private final String inWords;

    Use(String inWords) {
      this.inWords = inWords;
    }

    /** The use in a list, such as {@code goes back}. */
    public String inWords() {
      return inWords;
    }
  }

  /** Keeps its own copy of the rules. */
  public FittedPart {
    rules = List.copyOf(rules);
  }
}
