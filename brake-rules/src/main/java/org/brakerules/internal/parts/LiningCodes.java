package org.brakerules.internal.parts;

import java.util.List;
import java.util.Optional;
import org.brakerules.model.part.Condition;
import org.brakerules.model.part.Lining;
import org.brakerules.model.part.Presence;
import org.brakerules.parts.Handling;

/**
 * The friction codes of the linings of one axle.
 *
 * @param staying those of the linings that stay, each once; an empty text is one that is not stated
 * @param found those of the linings that were found and go, each once, as far as stated
 */
record LiningCodes(List<String> staying, List<String> found) {

  /** No lining at all. */
  static final LiningCodes NONE = new LiningCodes(List.of(), List.of());

  static LiningCodes of(List<HandledParts> ends) {
    return new LiningCodes(
        ends.stream().flatMap(end -> codes(end, true).stream()).distinct().toList(),
        ends.stream()
            .flatMap(end -> codes(end, false).stream())
            .filter(code -> !code.isEmpty())
            .distinct()
            .toList());
  }

  private static List<String> codes(HandledParts handled, boolean staying) {
    return handled.end().parts().values().stream()
        .filter(Lining.class::isInstance)
        .map(Lining.class::cast)
        .filter(lining -> lining.presence() == Presence.FITTED)
        .filter(lining -> stays(handled, lining) == staying)
        .filter(lining -> staying || lining.condition() == Condition.AS_FOUND)
        .map(Lining::frictionCode)
        .toList();
  }

  private static boolean stays(HandledParts handled, Lining lining) {
    HandledPart part = handled.parts().get(lining.place());
    return part != null && part.handling() != Handling.ORDER;
  }

  /** The code a new lining must have; empty if none stays, or it is not one and stated. */
  Optional<String> toMatch() {
    return staying.size() == 1
        ? staying.stream().filter(one -> !one.isEmpty()).findFirst()
        : Optional.empty();
  }

  /** The code of what goes, where nothing has to be matched. */
  Optional<String> asFound() {
    return staying.isEmpty() && found.size() == 1 ? found.stream().findFirst() : Optional.empty();
  }

  /** Whether a lining stays of which it is not known what a new one must match. */
  boolean isOpen() {
    return !staying.isEmpty() && toMatch().isEmpty();
  }
}
