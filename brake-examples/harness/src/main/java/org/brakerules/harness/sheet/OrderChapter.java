package org.brakerules.harness.sheet;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.brakerules.harness.html.Markup;
import org.brakerules.parts.Handling;
import org.brakerules.parts.PartsLine;
import org.brakerules.parts.WheelEndParts;

/** What to order, and what must come off the worn shoes before they leave. */
final class OrderChapter {

  private final Markup page;
  private final WheelEndParts parts;
  private final Optional<String> shims;

  /**
   * Lists parts.
   *
   * @param shims those that go in out of the shims at hand; empty if none does
   */
  OrderChapter(Markup page, WheelEndParts parts, Optional<String> shims) {
    this.page = page;
    this.parts = parts;
    this.shims = shims;
  }

  void write() {
    page.open("section").element("h2", "Parts for this wheel end");
    page.open("div", "class", "orders");
    list("New", Handling.ORDER);
    shims.ifPresent(this::atHand);
    list("Off the worn shoes before they leave", Handling.SALVAGE);
    list("Look at first", Handling.INSPECT);
    page.closeTo("section");
  }

  private void atHand(String pieces) {
    page.element("h3", "Out of the shims at hand").open("ul", "class", "order");
    page.element("li", pieces + ", by the end play measured").close();
  }

  private void list(String heading, Handling handling) {
    List<PartsLine> lines =
        parts.lines().stream().filter(line -> line.handling() == handling).toList();
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
