package org.brakerules.model.json;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** Jobs as a shop would write them. */
final class SampleJobs {

  private SampleJobs() {}

  /** A job that states something of every kind. */
  static String full() {
    try (InputStream in = SampleJobs.class.getResourceAsStream("job.json")) {
      return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The shortest job. */
  static String smallest() {
    return """
    {
      "date": "2026-11-20", "ruleSet": "quebec", "scope": "wheel-on",
      "units": [ { "axles": [ { "axle": 1, "wheelEnds": [ { "side": "right" } ] } ] } ]
    }
    """;
  }

  /** A combination of two units. */
  static String combination() {
    return """
    {
      "date": "2026-11-20", "ruleSet": "us-federal", "scope": "drum-off",
      "makersLimits": [
        { "limit": "drum.diameter.max", "value": "16.62 in", "document": "cast on the drum" },
        { "limit": "drum.diameter.max", "on": "trailer", "value": "422 mm",
          "document": "cast on the drum" }
      ],
      "units": [
        { "unit": "tractor", "axles": [
          { "axle": 2, "wheelEnds": [ { "side": "left" }, { "side": "right" } ] } ] },
        { "unit": "trailer", "axles": [
          { "axle": 1, "kind": "trailer", "wheelEnds": [
            { "side": "left", "parts": [ { "part": "drum", "diameter": { "value": "421 mm" } } ] }
          ] },
          { "axle": 2, "wheelEnds": [ { "side": "left" } ] } ] }
      ]
    }
    """;
  }
}
