package org.brakerules.internal.parts;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.parts.Amount;
import org.brakerules.parts.Detail;
import org.brakerules.parts.Handling;
import org.brakerules.parts.Item;
import org.brakerules.parts.PartsLine;
import org.brakerules.parts.TotalLine;
import org.brakerules.parts.WheelEndParts;

/** Puts pieces together to lines, and lines to totals. */
final class Lines {

  /** What lines must have in common to be put together. */
  private record Alike(Handling handling, Item item, Optional<Item> comesWith, List<Detail> match) {

    static Alike of(Piece piece) {
      return new Alike(piece.handling(), piece.item(), piece.comesWith(), piece.match());
    }

    static Alike of(PartsLine line) {
      return new Alike(line.handling(), line.item(), line.comesWith(), line.match());
    }
  }

  private final Comparator<Alike> order;

  Lines(List<Item> items) {
    this.order =
        Comparator.comparing(Alike::handling)
            .thenComparing(alike -> items.indexOf(alike.item()))
            .thenComparing(alike -> alike.comesWith().isPresent());
  }

  /** The lines of one wheel end, what is ordered first. */
  List<PartsLine> lines(Collection<Piece> pieces) {
    Map<Alike, Piece> alike = new LinkedHashMap<>();
    pieces.forEach(piece -> alike.merge(Alike.of(piece), piece, Piece::plus));
    return alike.entrySet().stream()
        .sorted(Map.Entry.comparingByKey(order))
        .map(Map.Entry::getValue)
        .map(
            piece ->
                new PartsLine(
                    piece.item(),
                    piece.amount(),
                    piece.handling(),
                    piece.comesWith(),
                    List.copyOf(piece.places()),
                    piece.grounds(),
                    piece.match()))
        .toList();
  }

  /** The lines of several wheel ends, put together. */
  List<TotalLine> totals(List<WheelEndParts> ends) {
    Map<Alike, Amount> amounts = new LinkedHashMap<>();
    Map<Alike, NavigableSet<WheelEndPath>> paths = new LinkedHashMap<>();
    for (WheelEndParts end : ends) {
      for (PartsLine line : end.lines()) {
        Alike alike = Alike.of(line);
        amounts.merge(alike, line.amount(), Amount::plus);
        paths.computeIfAbsent(alike, key -> new TreeSet<>()).add(end.wheelEnd());
      }
    }
    List<TotalLine> totals = new ArrayList<>();
    amounts.entrySet().stream()
        .sorted(Map.Entry.comparingByKey(order))
        .forEach(one -> totals.add(total(one.getKey(), one.getValue(), paths)));
    return totals;
  }

  private static TotalLine total(
      Alike alike, Amount amount, Map<Alike, NavigableSet<WheelEndPath>> paths) {
    return new TotalLine(
        alike.item(),
        amount,
        alike.handling(),
        alike.comesWith(),
        alike.match(),
        List.copyOf(paths.getOrDefault(alike, new TreeSet<>())));
  }
}
