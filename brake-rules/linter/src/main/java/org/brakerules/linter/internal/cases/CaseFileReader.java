package org.brakerules.linter.internal.cases;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.brakerules.linter.internal.base.Mistake;
import org.brakerules.linter.internal.text.Spot;

/** Reads a file of cases; those above a slip are read although the file is none as a whole. */
public final class CaseFileReader {

  private static final YAMLFactory FACTORY = new YAMLFactory();
  private static final String FIRST_CASE =
      "begin each case with \"- case:\" and what it shows, its other keys on the lines below";

  private final String file;
  private final List<AuthoredCase> cases = new ArrayList<>();
  private final List<Mistake> mistakes = new ArrayList<>();

  private CaseFileReader(String file) {
    this.file = file;
  }

  /**
   * Reads a file of cases.
   *
   * @param file the file, relative to the resources
   * @param text what it holds
   * @throws IOException never, for the text is there
   */
  public static CaseFile read(String file, String text) throws IOException {
    CaseFileReader reader = new CaseFileReader(file);
    reader.read(text);
    return new CaseFile(file, reader.cases, reader.mistakes);
  }

  private void read(String text) throws IOException {
    try (YAMLParser parser = FACTORY.createParser(text)) {
      JsonToken first = parser.nextToken();
      if (first == JsonToken.START_ARRAY) {
        readCases(parser);
      } else if (first == null || first == JsonToken.VALUE_NULL) {
        mistake(new Spot(file, 1, 1), "the file holds no case", FIRST_CASE);
      } else {
        mistake(MarkedTree.spot(file, parser), "the file is no list of cases", FIRST_CASE);
      }
    } catch (JsonProcessingException slip) {
      mistakes.add(YamlSlip.in(file, text, slip));
    }
  }

  private void readCases(YAMLParser parser) throws IOException {
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      MarkedTree tree = new MarkedTree(file, parser, mistakes);
      Spot spot = MarkedTree.spot(file, parser);
      AuthoredCase read = new AuthoredCase(tree.read(""), tree.spots());
      if (read.written().isObject()) {
        cases.add(read);
      } else {
        mistake(spot, "an entry that is no case", FIRST_CASE);
      }
    }
    if (cases.isEmpty() && mistakes.isEmpty()) {
      mistake(new Spot(file, 1, 1), "the file holds no case", FIRST_CASE);
    }
    if (parser.nextToken() != null) {
      mistake(
          MarkedTree.spot(file, parser),
          "a second list of cases, which nobody reads",
          "take the line with --- out");
    }
  }

  private void mistake(Spot spot, String message, String remedy) {
    mistakes.add(new Mistake(spot, message, remedy));
  }
}
