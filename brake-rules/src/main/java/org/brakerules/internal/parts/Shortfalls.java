package org.brakerules.internal.parts;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.brakerules.parts.ChosenKit;
import org.brakerules.parts.Handling;
import org.brakerules.parts.Item;
import org.brakerules.parts.Shortfall;
import org.brakerules.parts.WheelEndParts;

/**
 * Where kits hold less than what they are packed for needs.
 *
 * @param items everything that can be ordered
 * @param ends the parts lists of the ends of the axle
 * @param required what the axle needs
 */
record Shortfalls(ItemTable items, List<WheelEndParts> ends, Map<String, Integer> required) {

  List<Shortfall> of(List<ChosenKit> kits) {
    return kits.stream().flatMap(this::of).toList();
  }

  private Stream<Shortfall> of(ChosenKit chosen) {
    return chosen.kit().contents().entrySet().stream()
        .map(
            one -> {
              Item item = items.find(one.getKey()).orElseThrow();
              int needed = needed(chosen, item);
              return new Shortfall(chosen.kit().id(), item, one.getValue(), needed);
            })
        .filter(shortfall -> shortfall.holds() < shortfall.needed());
  }

  private int needed(ChosenKit chosen, Item item) {
    return switch (chosen.kit().reach()) {
      case WHEEL_END -> ends.stream().mapToInt(end -> needed(end, item)).max().orElse(0);
      case AXLE -> required.getOrDefault(item.id(), 0);
      case PIECE -> 0;
    };
  }

  private static int needed(WheelEndParts end, Item item) {
    return end.lines().stream()
        .filter(line -> line.handling() == Handling.ORDER && line.comesWith().isEmpty())
        .filter(line -> line.item().equals(item))
        .mapToInt(line -> line.amount().pieces())
        .sum();
  }
}
