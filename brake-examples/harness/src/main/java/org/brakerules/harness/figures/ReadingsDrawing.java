package org.brakerules.harness.figures;

import java.util.List;
import java.util.stream.Collectors;
import javax.xml.stream.XMLStreamException;
import org.brakerules.model.decision.Check;
import org.brakerules.model.decision.CheckStatus;
import org.brakerules.model.decision.LimitInForce;
import org.brakerules.model.reading.Reading;

/**
 * Draws each reading against its limit, all limits on one line: a dot the reading, filled if it is
 * beyond, a whisker its uncertainty.
 */
final class ReadingsDrawing {

  private static final int LEFT = 300;
  private static final int ROOM = 300;
  private static final int LIMIT_AT = LEFT + ROOM / 2;
  private static final int ROW = 34;
  private static final int TOP = 64;
  private static final int HALF_ROOM = ROOM / 2;

  private final String title;
  private final List<Check> readings;

  ReadingsDrawing(String wheelEnd, List<Check> readings) {
    this.title = "Readings against their limits, " + wheelEnd;
    this.readings = readings;
  }

  String draw() throws XMLStreamException {
    int bottom = TOP + readings.size() * ROW;
    Drawing drawing = new Drawing(title, inWords(), bottom + 56);
    drawing.words(LIMIT_AT, TOP - 14, "limit", "middle", 12);
    drawing.line(LIMIT_AT, TOP - 8, LIMIT_AT, bottom, "");
    int y = TOP + ROW / 2;
    for (Check check : readings) {
      row(drawing, y, check);
      y += ROW;
    }
    drawing.words(
        16,
        bottom + 26,
        "a row goes from nothing to twice the limit, or is drawn 10 or 100 times as large about the"
            + " limit; arrow: the good side",
        "start",
        11);
    drawing.words(
        16,
        bottom + 42,
        "open dot: inside; filled dot: beyond; square: too close to tell; whisker: uncertainty",
        "start",
        11);
    return drawing.finish();
  }

  private static void row(Drawing drawing, int y, Check check) throws XMLStreamException {
    Reading<?> reading = check.reading().orElseThrow();
    LimitInForce limit = check.limit().orElseThrow();
    RowScale scale = RowScale.of(reading, limit);
    int x = LIMIT_AT + scale.offset(HALF_ROOM);
    drawing.line(LEFT, y, LEFT + ROOM, y, "1 4");
    if (scale.hasUncertainty()) {
      whisker(drawing, y, x, scale.whisker(HALF_ROOM));
    }
    drawing.arrow(LIMIT_AT, y + 9, !limit.comparison().isUpper());
    if (check.status() == CheckStatus.UNPROVEN) {
      drawing.square(x, y);
    } else {
      drawing.dot(x, y, check.status() == CheckStatus.BEYOND);
    }
    drawing.words(LEFT - 10, y + 4, name(check), "end", 12);
    drawing.words(LEFT, y - 4, scale.inWords(), "start", 9);
    drawing.words(LEFT + ROOM + 10, y + 4, reading.written() + "; " + limit.inWords(), "start", 11);
  }

  private static void whisker(Drawing drawing, int y, int x, int half) throws XMLStreamException {
    drawing.line(x - half, y, x + half, y, "");
    drawing.line(x - half, y - 5, x - half, y + 5, "");
    drawing.line(x + half, y - 5, x + half, y + 5, "");
  }

  private static String name(Check check) {
    String part = check.part().kind().inWords();
    String station =
        check.part().kind().hasStations() ? " " + check.part().station().inWords() : "";
    return part + station + ", " + check.propertyInWords();
  }

  private String inWords() {
    return readings.stream().map(ReadingsDrawing::inWords).collect(Collectors.joining("; "));
  }

  private static String inWords(Check check) {
    Reading<?> reading = check.reading().orElseThrow();
    String uncertainty = reading.uncertainty().map(least -> " plus or minus " + least).orElse("");
    String stands =
        switch (check.status()) {
          case WITHIN -> "inside";
          case BEYOND -> "beyond";
          default -> "too close to";
        };
    return name(check)
        + " "
        + reading.written()
        + uncertainty
        + " "
        + stands
        + " the limit "
        + check.limit().orElseThrow().inWords();
  }
}
