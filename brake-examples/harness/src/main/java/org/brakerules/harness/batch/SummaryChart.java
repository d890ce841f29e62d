package org.brakerules.harness.batch;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Map;
import java.util.stream.Collectors;
import org.brakerules.harness.Counted;
import org.brakerules.harness.batch.Summary.Frequent;
import org.brakerules.harness.batch.Tally.Count;
import org.brakerules.harness.html.Markup;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.part.PartKind;

/**
 * What a batch came to as a drawing in black on white: what becomes of each kind of part, and the
 * most frequent reasons. Its description says the same in words.
 */
final class SummaryChart {

  private static final int WIDTH = 840;
  private static final int LEFT = 190;
  private static final int BAR = 440;
  private static final int ROW = 22;
  private static final int TOP = 96;

  private final Summary summary;
  private final Tally tally;
  private final Markup out = new Markup();

  private SummaryChart(Summary summary) {
    this.summary = summary;
    this.tally = summary.tally();
  }

  static String of(Summary summary) {
    return new SummaryChart(summary).draw();
  }

  private String draw() {
    int reasonsTop = TOP + ROW * (tally.kinds().size() + 1) + 40;
    int height = reasonsTop + ROW * summary.reasons().size() + 20;
    out.open(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "viewBox",
        "0 0 " + WIDTH + " " + height,
        "width",
        Integer.toString(WIDTH),
        "height",
        Integer.toString(height),
        "role",
        "img",
        "aria-labelledby",
        "title description",
        "font-family",
        "sans-serif",
        "font-size",
        "13");
    out.element("title", title(), "id", "title");
    out.element("desc", description(), "id", "description");
    Hatching.define(out);
    out.empty("rect", "width", Integer.toString(WIDTH), "height", at(height), "fill", "white");
    words(16, 26, title(), "start", "17");
    words(16, 48, rejects(), "start", "13");
    legend();
    kinds();
    reasons(reasonsTop);
    out.closeTo("svg");
    return out.toString();
  }

  private String title() {
    return "%s decided, %s, %s %% undecided"
        .formatted(
            Counted.of(tally.count(Count.JOBS), "job"),
            Counted.of(tally.parts().total(), "part"),
            summary.undecidedPercent());
  }

  private String rejects() {
    return "%s without a decision; %s with a hold"
        .formatted(
            Counted.of(tally.rejects(), "line"), Counted.of(tally.count(Count.ON_HOLD), "job"));
  }

  /** Everything the drawing shows, for whoever cannot see it. */
  private String description() {
    String kinds =
        tally.kinds().entrySet().stream()
            .map(kind -> kind.getKey().inWords() + ": " + inWords(kind.getValue()))
            .collect(Collectors.joining("; "));
    String reasons =
        summary.reasons().stream()
            .map(reason -> "%s %s: %d".formatted(reason.rule(), reason.title(), reason.parts()))
            .collect(Collectors.joining("; "));
    return "%s. What becomes of each kind of part: %s. Most frequent reasons for anything but reuse, by parts: %s."
        .formatted(rejects(), kinds, reasons);
  }

  private static String inWords(KindCount count) {
    return Arrays.stream(Disposition.values())
        .filter(one -> count.count(one) > 0)
        .map(one -> count.count(one) + " " + Names.of(one))
        .collect(Collectors.joining(", "));
  }

  private void legend() {
    int x = LEFT;
    for (Disposition disposition : Disposition.values()) {
      box(x, 62, 18, 14, Hatching.of(disposition));
      words(x + 24, 74, Names.of(disposition), "start", "13");
      x += 102;
    }
  }

  private void kinds() {
    int y = TOP;
    for (Map.Entry<PartKind, KindCount> kind : tally.kinds().entrySet()) {
      bar(y, kind.getKey().inWords(), kind.getValue());
      y += ROW;
    }
    bar(y, "all parts", tally.parts());
  }

  private void bar(int y, String name, KindCount count) {
    words(LEFT - 8, y + 13, name, "end", "13");
    long before = 0;
    for (Disposition disposition : Disposition.values()) {
      long parts = count.count(disposition);
      if (parts > 0) {
        double from = LEFT + share(before, count.total());
        double to = LEFT + share(before + parts, count.total());
        box(from, y, to - from, 17, Hatching.of(disposition));
      }
      before += parts;
    }
    words(LEFT + BAR + 8, y + 13, numbers(count), "start", "12");
  }

  private static String numbers(KindCount count) {
    String holds = count.holds() == 0 ? "" : ", " + Counted.of(count.holds(), "hold");
    return "%d, %d undecided%s".formatted(count.total(), count.count(Disposition.UNDECIDED), holds);
  }

  private static double share(long some, long all) {
    return all == 0 ? 0 : (double) BAR * some / all;
  }

  private void reasons(int top) {
    words(16, top - 10, "Most frequent reasons for anything but reuse, by parts", "start", "15");
    int y = top;
    for (Frequent reason : summary.reasons()) {
      words(LEFT - 8, y + 13, reason.rule(), "end", "12");
      double length = 220.0 * reason.parts() / summary.reasons().get(0).parts();
      box(LEFT, y, length, 15, "silver");
      words(LEFT + length + 8, y + 12, reason.parts() + "  " + reason.title(), "start", "12");
      y += ROW;
    }
  }

  private void words(double x, double y, String words, String anchor, String size) {
    out.element("text", words, "x", at(x), "y", at(y), "text-anchor", anchor, "font-size", size);
  }

  private void box(double x, double y, double width, double height, String fill) {
    out.empty(
        "rect",
        "x",
        at(x),
        "y",
        at(y),
        "width",
        at(width),
        "height",
        at(height),
        "fill",
        fill,
        "stroke",
        "black");
  }

  /** A tenth of a unit is finer than any printer. */
  private static String at(double place) {
    return BigDecimal.valueOf(Math.round(place * 10), 1).stripTrailingZeros().toPlainString();
  }
}
