package org.brakerules.model.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.core.util.Separators.Spacing;
import java.io.IOException;
import java.io.Writer;

/** The JSON library with the settings of this project: no extensions, and tight limits. */
final class StrictJson {

  static final int MOST_BYTES = 5_000_000;
  static final int MOST_LEVELS = 32;
  static final int MOST_TEXT_CHARACTERS = 20_000;
  static final int MOST_NAME_CHARACTERS = 200;
  static final int MOST_NUMBER_CHARACTERS = 40;

  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          // A table of names shared between documents could be filled with names made to collide.
          .disable(JsonFactory.Feature.CANONICALIZE_FIELD_NAMES)
          .disable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION)
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxDocumentLength(MOST_BYTES)
                  .maxNestingDepth(MOST_LEVELS)
                  .maxStringLength(MOST_TEXT_CHARACTERS)
                  .maxNameLength(MOST_NAME_CHARACTERS)
                  .maxNumberLength(MOST_NUMBER_CHARACTERS)
                  .build())
          .build();

  private static final DefaultIndenter INDENTER = new DefaultIndenter("  ", "\n");

  private static final DefaultPrettyPrinter PRETTY =
      new DefaultPrettyPrinter(
              Separators.createDefaultInstance()
                  .withObjectFieldValueSpacing(Spacing.AFTER)
                  .withObjectEmptySeparator("")
                  .withArrayEmptySeparator(""))
          .withObjectIndenter(INDENTER)
          .withArrayIndenter(INDENTER);

  private StrictJson() {}

  static JsonParser parser(String document) throws IOException {
    return FACTORY.createParser(document);
  }

  /** Writes over several lines, two spaces a level, each line ended by a single line feed. */
  static JsonGenerator prettyGenerator(Writer out) throws IOException {
    return compactGenerator(out).setPrettyPrinter(PRETTY.createInstance());
  }

  /** Writes on one line without blanks. The writer is left open. */
  static JsonGenerator compactGenerator(Writer out) throws IOException {
    return FACTORY.createGenerator(out).disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
  }
}
