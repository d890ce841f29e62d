package org.brakerules.parts;

import java.util.Optional;
import org.brakerules.model.part.PartKind;

/**
 * Something that can be ordered.
 *
 * @param id its id, such as {@code roller-clip}
 * @param singular one of it in words
 * @param plural several of it in words
 * @param part the kind of part it is; empty if it is a small part that no decision speaks of
 * @param withLining whether it is or carries a brake lining, so that a friction code holds for it
 */
public record Item(
    String id, String singular, String plural, Optional<PartKind> part, boolean withLining) {

  /** The item in words for so many of it. */
  public String inWords(int pieces) {
    return pieces == 1 ? singular : plural;
  }
}
