package org.brakerules.model.json;

import org.jspecify.annotations.Nullable;

/**
 * Where a value stands in a document.
 *
 * @param parent the spot of the object or array it is in; null for the document itself
 * @param step the field name or array index that leads to it from there
 * @param line the line, from 1
 * @param column the column, from 1
 */
record Spot(@Nullable Spot parent, String step, int line, int column) {

  /** The JSON Pointer (RFC 6901) of the value. */
  String pointer() {
    return parent == null
        ? ""
        : parent.pointer() + "/" + step.replace("~", "~0").replace("/", "~1");
  }

  /** The position in a sentence. */
  String inWords() {
    return "line " + line + ", column " + column;
  }
}
