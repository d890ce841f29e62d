package org.brakerules.harness.sheet;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.brakerules.harness.html.Markup;
import org.brakerules.model.part.Place;
import org.brakerules.parts.Handling;
import org.brakerules.parts.PartsLine;
import org.brakerules.parts.WheelEndParts;

/** What to order, and what must come off the worn shoes before they leave. */
final class OrderChapter {

  private final Markup page;
  private final WheelEndParts parts;
  private final Optional<String> shims;
  private final Set<Place> undecided;

  /**
   * Lists parts.
   *
   * @param shims those that go in out of the shims at hand; empty if none does
   * @param undecided the parts that are decided first
   */
  OrderChapter(Markup page, WheelEndParts parts, Optional<String> shims, Set<Place> undecided) {
    this.undecided = undecided;
    this.page = page;
    this.parts = parts;
    this.shims = shims;
  }

  void write() {
    page.open("section").element("h2", "Parts for this wheel end");
    page.open("div", "class", "orders");
    list("New", line -> line.handling() == Handling.ORDER);
    shims.ifPresent(this::atHand);
    list("Off the worn shoes before they leave", line -> line.handling() == Handling.SALVAGE);
    list("Look at first", this::isLookedAtFirst);
    page.closeTo("section");
  }

  private void atHand(String pieces) {
    page.element("h3", "Out of the shims at hand").open("ul", "class", "order");
    page.element("li", pieces + ", by the end play measured").close();
  }

  /** What is saved from the worn shoes may have to be looked at as well before it goes on again. */
  private boolean isLookedAtFirst(PartsLine line) {
    return line.handling() == Handling.INSPECT
        || (line.handling() == Handling.SALVAGE
            && line.places().stream().anyMatch(undecided::contains));
  }

  private void list(String heading, Predicate<PartsLine> which) {
    List<PartsLine> lines = parts.lines().stream().filter(which).toList();
    if (lines.isEmpty()) {
      return;
    }
    page.element("h3", heading).open("ul", "class", "order");
    lines.forEach(line -> page.element("li", inWords(line)));
    page.close();
  }

  private static String inWords(PartsLine line) {
    String match =
        line.match().stream()
            .map(one -> one.name() + " " + one.value())
            .collect(Collectors.joining(", "));
    String confirm =
        line.amount().isCertain() ? "" : " (" + String.join("; ", line.amount().confirm()) + ")";
    return line.amount().inWords()
        + " "
        + line.item().inWords(line.amount().pieces())
        + confirm
        + line.comesWith().map(with -> ", with the " + with.inWords(2)).orElse("")
        + (match.isEmpty() ? "" : "; to match: " + match);
  }
}
