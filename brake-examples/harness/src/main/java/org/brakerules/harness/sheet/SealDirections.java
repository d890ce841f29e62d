package org.brakerules.harness.sheet;

import java.util.List;
import java.util.stream.Collectors;
import org.brakerules.model.layout.CamshaftLayout;
import org.brakerules.model.part.CamshaftSeal;
import org.brakerules.model.part.Condition;
import org.brakerules.model.part.LipDirection;
import org.brakerules.model.part.SealKind;
import org.brakerules.model.reading.Station;

/** Which way the seals of one camshaft have to face, and which way they were seen to face. */
final class SealDirections {

  private final CamshaftLayout layout;
  private final List<CamshaftSeal> seals;

  /**
   * Looks at one camshaft.
   *
   * @param seals the seals of the job, at whichever station
   */
  SealDirections(CamshaftLayout layout, List<CamshaftSeal> seals) {
    this.layout = layout;
    this.seals = List.copyOf(seals);
  }

  /** The way that a lip has to face; several seals at one end count as one that has a direction. */
  LipToFace toFace(Station station) {
    List<LipToFace> all =
        at(station).stream().map(seal -> LipToFace.of(layout, station, seal.kind())).toList();
    return all.stream()
        .filter(one -> one != LipToFace.NO_DIRECTION)
        .findFirst()
        .orElse(
            all.isEmpty()
                ? LipToFace.of(layout, station, SealKind.UNKNOWN)
                : LipToFace.NO_DIRECTION);
  }

  String inWords(Station station) {
    String found =
        at(station).stream()
            .filter(seal -> seal.lip() != LipDirection.UNKNOWN)
            .map(seal -> saw(seal, toFace(station)))
            .collect(Collectors.joining(", "));
    return toFace(station).inWords() + (found.isEmpty() ? "" : "; " + found) + ".";
  }

  private static String saw(CamshaftSeal seal, LipToFace toFace) {
    String way = seal.lip() == LipDirection.TOWARD_HEAD ? "the cam head" : "the adjuster";
    return (seal.condition() == Condition.NEW ? "fitted" : "found")
        + " toward "
        + way
        + (toFace.forbids(seal.lip()) ? ", the wrong way round" : "");
  }

  private List<CamshaftSeal> at(Station station) {
    return seals.stream().filter(seal -> seal.station() == station).toList();
  }
}
