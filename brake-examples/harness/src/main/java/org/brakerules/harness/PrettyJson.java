package org.brakerules.harness;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.core.util.Separators.Spacing;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectWriter;
import java.io.UncheckedIOException;

/** Writes JSON over several lines, as the decisions are written. */
public final class PrettyJson {

  private static final DefaultIndenter INDENTER = new DefaultIndenter("  ", "\n");

  private static final ObjectWriter WRITER =
      new ObjectMapper()
          .writer(
              new DefaultPrettyPrinter(
                      Separators.createDefaultInstance()
                          .withObjectFieldValueSpacing(Spacing.AFTER)
                          .withArrayEmptySeparator("")
                          .withObjectEmptySeparator(""))
                  .withObjectIndenter(INDENTER)
                  .withArrayIndenter(INDENTER));

  private PrettyJson() {}

  /** The text of a tree, with a line feed at its end. */
  public static String of(JsonNode tree) {
    try {
      return WRITER.writeValueAsString(tree) + "\n";
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException(e);
    }
  }
}
