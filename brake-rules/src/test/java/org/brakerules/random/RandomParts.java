package org.brakerules.random;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.brakerules.internal.table.Point;
import org.brakerules.internal.table.Point.Finds;
import org.brakerules.internal.table.Subject;
import org.brakerules.internal.table.Tables;
import org.brakerules.model.part.Condition;
import org.brakerules.model.part.Disturbance;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.Presence;
import org.brakerules.model.part.Sign;
import org.brakerules.model.part.Tag;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Station;

/**
 * Random parts of one wheel end. Components are filled by their type, so a new property or kind of
 * part is covered without a change here.
 */
final class RandomParts {

  private static final Set<String> GOOD_SIGNS =
      Tables.load().points().points().stream()
          .filter(point -> point.finds() == Finds.GOOD)
          .map(RandomParts::nameOf)
          .collect(Collectors.toSet());

  private final Dice dice;
  private final Mood mood;
  private final Surroundings around;
  private final Aim aim;

  RandomParts(Dice dice, Mood mood, Surroundings around, Aim aim) {
    this.dice = dice;
    this.mood = mood;
    this.around = around;
    this.aim = aim;
  }

  static boolean isGoodSign(PartKind kind, String property) {
    return GOOD_SIGNS.contains(kind + "." + property);
  }

  private static String nameOf(Point point) {
    return point.part() + "." + point.property().name();
  }

  List<Part> parts(WheelEndPath path, Set<PartKind> kinds) {
    List<Part> parts = new ArrayList<>();
    for (PartKind kind : kinds) {
      for (Station station : kind.stations()) {
        if (dice.percent(mood.stated)) {
          Place place = path.place(kind, station);
          parts.add(part(place));
          if (kind.mostAtOnePlace() > 1 && dice.percent(3)) {
            parts.add(part(place.numbered(2 + dice.below(2))));
          }
        }
      }
    }
    return parts;
  }

  private Part part(Place place) {
    Tag tag =
        new Tag(
            place,
            (Presence) aimed(place, "presence", Presence.class).orElseGet(this::presence),
            (Condition) aimed(place, "condition", Condition.class).orElseGet(this::condition),
            dice.percent(80) ? Disturbance.BY_SCOPE : dice.any(Disturbance.class));
    Part part =
        Records.build(place.kind().recordType(), component -> valueOf(component, tag, mood));
    return mood == Mood.SOUND && dice.percent(30) ? withOneOddity(part) : part;
  }

  private Optional<Object> aimed(Place place, String property, Class<?> type) {
    return aim.ofPart(place.kind(), property, type, dice);
  }

  private Presence presence() {
    return dice.percent(mood.stated) ? Presence.FITTED : dice.any(Presence.class);
  }

  private Condition condition() {
    return dice.percent(70) ? Condition.AS_FOUND : Condition.NEW;
  }

  /** A part with one thing about it that may be wrong, which its other properties do not hide. */
  private Part withOneOddity(Part part) {
    RecordComponent odd =
        dice.any(
            Records.components(part.getClass()).stream()
                .filter(component -> component.getType() != String.class)
                .toList());
    Object value =
        odd.getType() == Sign.class
            ? dice.any(List.of(Sign.SEEN, Sign.SEEN, Sign.NOT_CHECKED))
            : valueOf(odd, part.tag(), Mood.WILD);
    return Records.with(part, odd.getName(), value);
  }

  private Object valueOf(RecordComponent component, Tag tag, Mood of) {
    Class<?> type = component.getType();
    if (type == Tag.class) {
      return tag;
    }
    if (type == String.class) {
      return frictionCode(tag);
    }
    boolean asked = aim.asksFor(tag.place().kind(), component) && dice.percent(90);
    if (type == Measurement.class) {
      Subject blank = around.subject(tag.place().kind().blank(tag));
      return asked
          ? Measurement.notTaken()
          : new RandomReadings(dice, of).measurement(blank, component, around, aim);
    }
    if (asked && type == Sign.class) {
      return Sign.NOT_CHECKED;
    }
    return aimed(tag.place(), component.getName(), type)
        .orElseGet(
            () ->
                type == Sign.class
                    ? sign(isGoodSign(tag.place().kind(), component.getName()), of)
                    : dice.state(type, of));
  }

  /** No dice are thrown for it, so that nothing else of a seed's job hangs on it. */
  private static String frictionCode(Tag tag) {
    int any = (tag.place() + tag.condition().name() + tag.disturbance().name()).hashCode();
    return List.of("", "FF", "GG").get(Math.floorMod(any, 3));
  }

  private Sign sign(boolean goodNews, Mood of) {
    if (dice.percent(of.good)) {
      return goodNews ? Sign.SEEN : Sign.NOT_SEEN;
    }
    return dice.any(Sign.class);
  }
}
