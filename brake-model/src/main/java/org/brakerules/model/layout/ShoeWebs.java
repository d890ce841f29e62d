package org.brakerules.model.layout;

/** The number of webs of a shoe. */
public enum ShoeWebs {
  SINGLE,
  DOUBLE,
  UNKNOWN
}
