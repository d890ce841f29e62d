package org.brakerules.model.part;

/**
 * The way the open side of a seal's lip faces.
 *
 * <p>A lip stops what presses on its open side and yields to what comes from behind.
 */
public enum LipDirection {
  /** The open side faces the slack adjuster. */
  TOWARD_ADJUSTER,
  /** The open side faces the cam head. */
  TOWARD_HEAD,
  UNKNOWN
}
