package org.brakerules.model.reading;

import java.util.Locale;
import java.util.Optional;

/** Where on the brake a part sits or a reading is taken. */
public enum Station {
  /** The part as a whole; it has no stations. */
  WHOLE_PART,
  /** At the cam head, next to the spider. */
  HEAD_END,
  /** At the spline, next to the slack adjuster. */
  SPLINE_END,
  /** In the tube, between the bushings. */
  TUBE,
  /** At the slack adjuster itself. */
  ADJUSTER,
  /** On the pitch circle of the camshaft spline. */
  SPLINE_PITCH_RADIUS,
  /** At the clevis hole of the adjuster arm. */
  CLEVIS_HOLE,
  /** On or of the upper shoe. */
  UPPER,
  /** On or of the lower shoe. */
  LOWER,
  /** Of the large clevis pin. */
  LARGE,
  /** Of the small clevis pin of a linked adjuster. */
  SMALL,
  /** The inner bearing. */
  INNER,
  /** The outer bearing. */
  OUTER,
  /** At the middle of the shoe's arc. */
  SHOE_CENTRE,
  /** At the cam end of the shoe. */
  CAM_END,
  /** At the anchor end of the shoe. */
  ANCHOR_END,
  /** At the thinnest point, bevels left out. */
  THINNEST_POINT,
  /** At the open side of the drum. */
  OPEN_SIDE,
  /** At the middle of the drum's braking path. */
  MIDDLE,
  /** At the closed side of the drum. */
  CLOSED_SIDE,
  /** Not stated. */
  UNKNOWN;

  private final String id = name().toLowerCase(Locale.ROOT).replace('_', '-');
  private final String words = id.replace('-', ' ');

  /** The name of the station in paths and JSON, such as {@code head-end}. */
  public String id() {
    return id;
  }

  /** The name of the station in a sentence, such as {@code head end}. */
  public String inWords() {
    return words;
  }

  /** Finds a station by its id. */
  public static Optional<Station> byId(String id) {
    for (Station station : values()) {
      if (station.id().equals(id)) {
        return Optional.of(station);
      }
    }
    return Optional.empty();
  }
}
