package org.brakerules.model.layout;

/** How the camshaft is carried, greased and sealed. */
public enum CamshaftLayout {
  /** Both bushings and both seals in one tube, greased end to end from one fitting. */
  TUBE,
  /** One bushing in the spider, one in a support bracket, each with its own fitting and seals. */
  SPLIT,
  /** No fitting, filled for life; the maker decides. */
  CLOSED,
  UNKNOWN
}
