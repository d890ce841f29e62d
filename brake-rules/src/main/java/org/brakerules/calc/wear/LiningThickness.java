package org.brakerules.calc.wear;

import java.util.Comparator;
import java.util.List;
import org.brakerules.calc.Basis;
import org.brakerules.calc.Working;
import org.brakerules.model.decision.Standing;
import org.brakerules.model.quantity.Length;

/**
 * How evenly the lining of one shoe is worn, from its thickness at both edges of three places.
 *
 * @param thinnest the thinnest of all readings
 * @param taper how much cam end and anchor end differ, each by its thinner edge, not below zero
 * @param acrossEdges how much the two edges of one place differ at most, not below zero
 * @param working how it was worked out
 */
public record LiningThickness(Length thinnest, Length taper, Length acrossEdges, Working working) {

  /**
   * The thickness at one place of a shoe.
   *
   * @param oneEdge at one edge of the lining
   * @param otherEdge at the other edge
   */
  public record AtPlace(Length oneEdge, Length otherEdge) {

    Length thinner() {
      return oneEdge.compareTo(otherEdge) <= 0 ? oneEdge : otherEdge;
    }

    Length difference() {
      return oneEdge.minus(otherEdge).abs();
    }
  }

  /** Works out the wear of one lining. */
  public static LiningThickness of(AtPlace camEnd, AtPlace centre, AtPlace anchorEnd) {
    List<AtPlace> places = List.of(camEnd, centre, anchorEnd);
    Length thinnest = least(places.stream().map(AtPlace::thinner).toList());
    Length taper = camEnd.thinner().minus(anchorEnd.thinner()).abs();
    Length across =
        places.stream().map(AtPlace::difference).max(Comparator.naturalOrder()).orElseThrow();
    Working working =
        start()
            .given("cam end, both edges", pair(camEnd))
            .given("shoe centre, both edges", pair(centre))
            .given("anchor end, both edges", pair(anchorEnd))
            .step(
                "taper " + camEnd.thinner() + " and " + anchorEnd.thinner() + " differ by " + taper)
            .step("the edges of one place differ by " + across + " at most")
            .result("thinnest", thinnest)
            .result("taper", taper)
            .result("across the edges", across);
    return new LiningThickness(thinnest, taper, across, working);
  }

  private static Length least(List<Length> lengths) {
    return lengths.stream().min(Comparator.naturalOrder()).orElseThrow();
  }

  private static String pair(AtPlace place) {
    return place.oneEdge() + ", " + place.otherEdge();
  }

  /** The same without a result, where something must be known first. */
  public static Working missing(String what) {
    return start().missing(what);
  }

  private static Working start() {
    return Working.of(
        "lining.evenness",
        "How evenly the lining is worn",
        "taper = cam end - anchor end; across the edges = one edge - the other; without sign",
        Basis.exact(Standing.COMMON_PRACTICE, "three places, both edges"));
  }
}
