package org.brakerules.internal.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.brakerules.calc.play.ClevisPinSize;
import org.brakerules.internal.table.Names;
import org.brakerules.model.layout.ChamberSize;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.CamshaftSeal;
import org.brakerules.model.part.ClevisPin;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.PinSize;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.SlackAdjuster;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Reading;
import org.brakerules.parts.Detail;
import org.brakerules.parts.Handling;

/**
 * By what the right part is known, as far as the job states it.
 *
 * @param linings the linings of the axle
 * @param asked what is asked for of its new parts instead of what was found
 */
record Matching(LiningCodes linings, AskedFor asked) {

  private static final Detail PARTNER = new Detail("across the axle", "must match");

  /** What must match of a part that is ordered, or compared with the one across the axle. */
  List<Detail> of(AxleEnd end, Place place, Handling handling) {
    if (handling != Handling.ORDER && (handling != Handling.INSPECT || end.inspected())) {
      return List.of();
    }
    Details details = new Details();
    add(end, place, details);
    boolean springSide = place.kind() == PartKind.SPRING_BRAKE;
    return asked.in(springSide ? PartKind.CHAMBER : place.kind(), details.all);
  }

  private void add(AxleEnd end, Place place, Details details) {
    Layout layout = end.layout();
    Part part = end.part(place);
    switch (place.kind()) {
      case CHAMBER, SPRING_BRAKE -> chamber(layout, details);
      case SLACK_ADJUSTER -> adjuster(layout, part, details);
      case SHOE, LINING -> lining(layout, details);
      case DRUM -> {
        details.size("diameter", layout.drumDiameter());
        details.choice("mount", layout.drumMount());
        details.add(PARTNER);
      }
      case CAMSHAFT_SEAL -> details.choice("kind", ((CamshaftSeal) part).kind());
      case CLEVIS -> details.choice("design", layout.clevis());
      case CLEVIS_PIN -> pinSize(part).ifPresent(pin -> details.text("size", InchFraction.of(pin)));
      case COTTER_PIN ->
          pinOf(end, place).ifPresent(pin -> details.text("size by ASME B18.8.1", cotter(pin)));
      default -> {}
    }
  }

  private static void chamber(Layout layout, Details details) {
    ChamberSize size = layout.chamber();
    details.choice("family", size.family());
    details.text("type", size.type());
    details.choice("stroke class", size.strokeClass());
    details.size("rated stroke", size.ratedStroke());
    details.choice("spring brake", layout.springBrake());
    details.text("spring type", size.springType());
    details.add(PARTNER);
  }

  private static void adjuster(Layout layout, Part part, Details details) {
    details.choice("kind", layout.adjuster());
    details.choice("arm", layout.arm());
    details.size(
        "arm length",
        ((SlackAdjuster) part).armLength().readings().stream().map(Reading::value).findFirst());
    details.add(PARTNER);
  }

  private void lining(Layout layout, Details details) {
    linings.toMatch().ifPresent(code -> details.text("friction code", code));
    linings.asFound().ifPresent(code -> details.text("friction code as found", code));
    details.choice("webs", layout.webs());
    details.choice("lining", layout.liningPieces());
    details.size("drum diameter", layout.drumDiameter());
    details.add(PARTNER);
  }

  private static String cotter(Length pin) {
    return InchFraction.of(ClevisPinSize.of(pin).cotter());
  }

  private static Optional<Length> pinOf(AxleEnd end, Place cotter) {
    return pinSize(end.part(end.path().place(PartKind.CLEVIS_PIN, cotter.station())));
  }

  private static Optional<Length> pinSize(Part pin) {
    PinSize size = ((ClevisPin) pin).size();
    return switch (size) {
      case QUARTER_INCH -> Optional.of(Length.parse("1/4 in"));
      case HALF_INCH -> Optional.of(Length.parse("1/2 in"));
      case FIVE_EIGHTHS_INCH -> Optional.of(Length.parse("5/8 in"));
      case UNKNOWN -> Optional.empty();
    };
  }

  /** Only what is stated is written down. */
  private static final class Details {

    private final List<Detail> all = new ArrayList<>();

    void choice(String name, Enum<?> constant) {
      String value = Names.of(constant).replace('-', ' ').toLowerCase(Locale.ROOT);
      text(name, value.equals("unknown") ? "" : value);
    }

    void text(String name, String value) {
      if (!value.isEmpty()) {
        add(new Detail(name, value));
      }
    }

    void size(String name, Optional<Length> size) {
      size.ifPresent(length -> add(new Detail(name, length.toString())));
    }

    void add(Detail detail) {
      all.add(detail);
    }
  }
}
