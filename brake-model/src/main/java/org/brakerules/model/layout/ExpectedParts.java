package org.brakerules.model.layout;

import java.util.ArrayList;
import java.util.List;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.Scope;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.reading.Station;

/**
 * The parts a brake of a given layout has for certain. Only these are missed when an inspection
 * leaves them out; a part that only some brakes of the layout have is decided when it is stated.
 */
final class ExpectedParts {

  private final Layout layout;
  private final WheelEndPath wheelEnd;
  private final Scope scope;
  private final List<Place> places = new ArrayList<>();

  private ExpectedParts(Layout layout, WheelEndPath wheelEnd, Scope scope) {
    this.layout = layout;
    this.wheelEnd = wheelEnd;
    this.scope = scope;
  }

  static List<Place> of(Layout layout, WheelEndPath wheelEnd, Scope scope) {
    ExpectedParts expected = new ExpectedParts(layout, wheelEnd, scope);
    expected.camshaft();
    expected.shoesAndDrum();
    expected.anchors();
    expected.adjusterAndChamber();
    expected.hub();
    return expected.places.stream().sorted().toList();
  }

  private void camshaft() {
    once(PartKind.CAMSHAFT, PartKind.CAMSHAFT_BRACKET, PartKind.SPIDER);
    everyStation(PartKind.CAMSHAFT_BUSHING, PartKind.CAMSHAFT_SEAL);
    at(PartKind.SNAP_RING, Station.SPLINE_END);
    switch (layout.camshaft()) {
      case TUBE -> {
        once(PartKind.HEAD_WASHER);
        at(PartKind.GREASE_FITTING, Station.TUBE);
      }
      case SPLIT -> at(PartKind.GREASE_FITTING, Station.HEAD_END, Station.SPLINE_END);
      case CLOSED, UNKNOWN -> {}
    }
  }

  private void shoesAndDrum() {
    once(PartKind.RETURN_SPRING, PartKind.DRUM, PartKind.SHOE_RETAINING_SPRING);
    everyStation(PartKind.CAM_ROLLER, PartKind.ROLLER_CLIP, PartKind.SHOE, PartKind.LINING);
    if (layout.webs() == ShoeWebs.DOUBLE) {
      everyStation(PartKind.RETURN_SPRING_PIN);
    }
  }

  private void anchors() {
    everyStation(PartKind.ANCHOR_PIN);
    if (layout.anchorPins() == AnchorPins.REMOVABLE) {
      everyStation(PartKind.ANCHOR_BUSHING, PartKind.ANCHOR_PIN_RETAINER);
    }
  }

  private void adjusterAndChamber() {
    once(PartKind.SLACK_ADJUSTER, PartKind.CLEVIS, PartKind.JAM_NUT, PartKind.PUSH_ROD);
    once(PartKind.CHAMBER, PartKind.HOSE);
    at(PartKind.CLEVIS_PIN, Station.LARGE);
    at(PartKind.COTTER_PIN, Station.LARGE);
    if (layout.arm() == ArmKind.LINKED) {
      at(PartKind.CLEVIS_PIN, Station.SMALL);
      at(PartKind.COTTER_PIN, Station.SMALL);
    }
    if (layout.arm() == ArmKind.ANCHORED) {
      once(PartKind.CONTROL_ARM);
    }
    if (layout.springBrake() == Fitted.YES) {
      once(PartKind.SPRING_BRAKE);
    }
  }

  private void hub() {
    if (layout.drumMount() == DrumMount.INBOARD) {
      once(PartKind.HUB, PartKind.WHEEL_SEAL);
      everyStation(PartKind.WHEEL_BEARING);
    }
    if (layout.sensor() == Fitted.YES) {
      once(PartKind.WHEEL_SPEED_SENSOR, PartKind.TONE_RING);
    }
  }

  private void once(PartKind... kinds) {
    for (PartKind kind : kinds) {
      at(kind, Station.WHOLE_PART);
    }
  }

  private void everyStation(PartKind... kinds) {
    for (PartKind kind : kinds) {
      at(kind, kind.stations().toArray(Station[]::new));
    }
  }

  private void at(PartKind kind, Station... stations) {
    if (!scope.reaches(kind.laidOpenFrom())) {
      return;
    }
    for (Station station : stations) {
      places.add(wheelEnd.place(kind, station));
    }
  }
}
