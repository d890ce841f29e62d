package org.brakerules.internal.decide;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.brakerules.internal.engine.RuleText;
import org.brakerules.internal.table.Names;
import org.brakerules.internal.table.Point;
import org.brakerules.internal.table.Property;
import org.brakerules.internal.table.Tables;
import org.brakerules.model.part.PartKind;

/**
 * On which kinds of part a look or reading bears beside the part itself, read from the conditions
 * of the rules.
 */
public final class Bearings {

  private final Map<String, Set<PartKind>> kinds = new LinkedHashMap<>();
  private final Map<String, Set<PartKind>> byPoint = new ConcurrentHashMap<>();

  /** Reads every rule once. */
  public Bearings(Tables tables, Iterable<RuleText> rules) {
    for (RuleText rule : rules) {
      for (String read : rule.readsBeside()) {
        kinds
            .computeIfAbsent(point(tables, read), id -> EnumSet.noneOf(PartKind.class))
            .add(rule.subject());
      }
    }
  }

  /** The kinds of part of which a rule speaks when it reads this point of another. */
  Set<PartKind> of(Point point) {
    return byPoint.computeIfAbsent(point.id(), id -> kinds.getOrDefault(read(point), Set.of()));
  }

  /** Rules read a layout or a vehicle whichever part asks for it. */
  private static String read(Point point) {
    return point.ofPart() ? point.id() : Names.of(point.owner()) + "." + point.property().idName();
  }

  /** A rule that reads a limit reads the measurement the limit is for. */
  private static String point(Tables tables, String read) {
    return tables
        .limits()
        .first(read)
        .flatMap(
            limit ->
                Property.of(limit.part(), limit.property())
                    .map(property -> limit.part().id() + "." + property.idName()))
        .orElse(read);
  }
}
