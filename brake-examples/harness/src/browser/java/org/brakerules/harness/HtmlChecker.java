package org.brakerules.harness;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.StreamSupport;
import nu.validator.client.EmbeddedValidator;

/** Says where a page is no valid HTML; needs no network. */
final class HtmlChecker {

  private HtmlChecker() {}

  /** Errors and warnings, each with its line. */
  static List<String> mistakes(Path page) throws Exception {
    EmbeddedValidator validator = new EmbeddedValidator();
    validator.setOutputFormat(EmbeddedValidator.OutputFormat.JSON);
    String answer = validator.validate(new ByteArrayInputStream(Files.readAllBytes(page)));
    JsonNode messages = new ObjectMapper().readTree(answer).required("messages");
    return StreamSupport.stream(messages.spliterator(), false)
        .filter(HtmlChecker::isMistake)
        .map(one -> page + ":" + one.path("lastLine") + ": " + one.path("message").asText())
        .distinct()
        .toList();
  }

  /** That a trailing slash does nothing is no mistake: the pages are well-formed XML as well. */
  private static boolean isMistake(JsonNode message) {
    return !message.path("message").asText().startsWith("Trailing slash on void elements");
  }
}
