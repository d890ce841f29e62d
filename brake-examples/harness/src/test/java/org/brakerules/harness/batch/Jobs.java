package org.brakerules.harness.batch;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Inputs made of a job so small that thousands of them are quickly read. */
final class Jobs {

  private static final String JOB =
      "{\"reference\":\"N %d\",\"date\":\"2026-11-20\",\"ruleSet\":\"us-federal\",\"scope\":\"wheel-on\","
          + "\"units\":[{\"axles\":[{\"axle\":2,\"wheelEnds\":[{\"side\":\"left\","
          + "\"layout\":{\"camshaft\":\"tube\"},\"parts\":[]}]}]}]}";

  private Jobs() {}

  /** The job with this number as its reference. */
  static String job(int number) {
    return JOB.formatted(number);
  }

  /** So many lines, of which every seventh is no job. */
  static String lines(int count) {
    return IntStream.rangeClosed(1, count)
        .mapToObj(number -> number % 7 == 0 ? "no job " + number : job(number))
        .collect(Collectors.joining("\n", "", "\n"));
  }

  static LineChunks chunks(String lines) throws UnreadableInputException {
    byte[] bytes = lines.getBytes(StandardCharsets.UTF_8);
    return new LineChunks(new Input("jobs.jsonl", new ByteArrayInputStream(bytes)));
  }
}
