package org.brakerules.harness.sheet;

import java.util.List;
import java.util.stream.Collectors;
import org.brakerules.harness.html.Markup;
import org.brakerules.parts.Handling;
import org.brakerules.parts.PartsLine;
import org.brakerules.parts.WheelEndParts;

/** What to order, and what must come off the worn shoes before they leave. */
final class OrderChapter {

  private final Markup page;
  private final WheelEndParts parts;

  OrderChapter(Markup page, WheelEndParts parts) {
    this.page = page;
    this.parts = parts;
  }

  void write() {
    page.open("section").element("h2", "Parts for this wheel end");
    page.open("div", "class", "orders");
    list("New", Handling.ORDER);
    list("Off the worn shoes before they leave", Handling.SALVAGE);
    list("Look at first", Handling.INSPECT);
    page.closeTo("section");
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
