package org.brakerules.model.json;

import java.io.Serializable;

/**
 * One thing that is wrong with a document.
 *
 * @param pointer the JSON Pointer (RFC 6901) of the value; empty for the document as a whole
 * @param line the line of the value, from 1
 * @param column the column of the value in characters, from 1
 * @param found what is there
 * @param expected what to write instead
 */
public record Problem(String pointer, int line, int column, String found, String expected)
    implements Serializable {

  /** The problem in one line of text. */
  public String message() {
    String where = pointer.isEmpty() ? "" : ", " + Shown.plain(pointer);
    return "line %d, column %d%s: found %s, expected %s"
        .formatted(line, column, where, found, expected);
  }
}
