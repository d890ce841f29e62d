package org.brakerules.harness.sheet.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.brakerules.model.layout.CamshaftLayout;
import org.brakerules.model.part.Hand;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Side;

/** The views of one wheel end side by side, and the numbers that point at its parts. */
public final class WheelEndDrawing {

  private static final Set<PartKind> HUB =
      Set.of(
          PartKind.HUB,
          PartKind.WHEEL_SEAL,
          PartKind.WHEEL_BEARING,
          PartKind.TONE_RING,
          PartKind.WHEEL_SPEED_SENSOR);

  private final List<Spot> spots;
  private final List<Sketch> views = new ArrayList<>();
  private final boolean hub;

  /**
   * Draws a wheel end.
   *
   * @param side the side of the vehicle
   * @param hand the hand of shaft that it takes
   * @param layout how the shaft is carried
   * @param spots what each number points at, in the order of the numbers
   */
  public WheelEndDrawing(Side side, Hand hand, CamshaftLayout layout, List<Spot> spots) {
    this.spots = List.copyOf(spots);
    Set<Spot> wanted = new LinkedHashSet<>(spots);
    this.hub = wanted.stream().anyMatch(spot -> HUB.contains(spot.kind()));
    views.add(brake(side, hand, new Sketch(wanted)));
    views.add(arm(side, hand, new Sketch(wanted)));
    Sketch shaft = new Sketch(wanted);
    ShaftView.draw(shaft, layout);
    views.add(shaft);
    if (hub) {
      Sketch cut = new Sketch(wanted);
      HubView.draw(cut);
      views.add(cut);
    }
  }

  private static Sketch brake(Side side, Hand hand, Sketch sketch) {
    if (side == Side.LEFT) {
      BrakeView.draw(sketch, hand);
      return sketch;
    }
    BrakeView.draw(sketch, opposite(hand));
    return sketch.mirrored(BrakeView.AXLE.x());
  }

  /** A mirror turns the S round; it is drawn the other way first. */
  private static Hand opposite(Hand hand) {
    return switch (hand) {
      case LEFT -> Hand.RIGHT;
      case RIGHT -> Hand.LEFT;
      case UNKNOWN -> Hand.UNKNOWN;
    };
  }

  private static Sketch arm(Side side, Hand hand, Sketch sketch) {
    ArmView.draw(sketch, hand);
    boolean toTheRight = hand == Hand.RIGHT || (hand == Hand.UNKNOWN && side == Side.RIGHT);
    return toTheRight ? sketch.mirrored((ArmView.LEFT + ArmView.RIGHT) / 2) : sketch;
  }

  /** Whether the hub is drawn. */
  public boolean hasHub() {
    return hub;
  }

  /** All shapes, what lies behind first. */
  public List<Drawn> drawn() {
    return views.stream().flatMap(view -> view.drawn().stream()).toList();
  }

  /** The numbers, in the order of the views. */
  public List<Callout> callouts() {
    List<Callout> callouts = new ArrayList<>();
    byRail()
        .forEach(
            (rail, indices) -> {
              List<Point> wanted =
                  indices.stream().map(i -> grip(i).orElseThrow().point()).toList();
              List<Point> standing = rail.stand(wanted);
              for (int i = 0; i < indices.size(); i++) {
                int index = indices.get(i);
                callouts.add(new Callout(index, spots.get(index), standing.get(i), wanted.get(i)));
              }
            });
    return callouts;
  }

  /** What stands on each rail, in its order. */
  private Map<Rail, List<Integer>> byRail() {
    Map<Rail, List<Integer>> byRail = new LinkedHashMap<>();
    for (int i = 0; i < spots.size(); i++) {
      int index = i;
      grip(i)
          .ifPresent(
              grip -> byRail.computeIfAbsent(grip.rail(), any -> new ArrayList<>()).add(index));
    }
    byRail.forEach(
        (rail, indices) ->
            indices.sort(Comparator.comparing(i -> rail.along(grip(i).orElseThrow().point()))));
    return byRail;
  }

  private Optional<Grip> grip(int index) {
    return views.stream()
        .flatMap(view -> Optional.ofNullable(view.grips().get(spots.get(index))).stream())
        .findFirst();
  }
}
