package org.brakerules.harness.sheet;

import java.util.List;
import java.util.stream.Stream;
import org.brakerules.harness.html.Markup;
import org.brakerules.work.Stop;

/** Why the work goes no further here, how it goes on, and how the brake is left until then. */
final class StopChapter {

  private final Markup page;
  private final Standstill standstill;

  StopChapter(Markup page, Standstill standstill) {
    this.page = page;
    this.standstill = standstill;
  }

  /**
   * Writes a box for each stop.
   *
   * @param stops the stops at this wheel end
   */
  void write(Stream<Stop> stops) {
    stops.forEach(this::stop);
    if (standstill.waits()) {
      waiting();
    }
  }

  private void stop(Stop stop) {
    page.open("section", "class", "stop").element("h2", "Work stops here");
    page.element(
        "p",
        "The plan goes no further than step "
            + stop.step()
            + ", and what becomes of the parts waits as long.");
    list(stop.why());
    page.element("p", "How it goes on:");
    list(stop.wayOut());
    page.element("p", "Until then:");
    list(standstill.leaves());
    page.closeTo("section");
  }

  private void waiting() {
    page.open("section", "class", "stop").element("h2", "Work waits here");
    page.element(
        "p",
        "The plan stops at "
            + standstill.elsewhere()
            + ", and this wheel end waits for it. Until then:");
    list(standstill.leaves());
    page.closeTo("section");
  }

  private void list(List<String> lines) {
    page.open("ul");
    lines.forEach(line -> page.element("li", line));
    page.close();
  }
}
