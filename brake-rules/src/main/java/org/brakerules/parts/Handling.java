package org.brakerules.parts;

/** What to do with an item, what is most pressing first. */
public enum Handling {
  /** A new one is needed. */
  ORDER,
  /** It must come off the worn shoes before these leave in exchange. */
  SALVAGE,
  /** It is looked at before it is known whether it goes back. */
  INSPECT,
  /** It goes back. */
  KEEP
}
