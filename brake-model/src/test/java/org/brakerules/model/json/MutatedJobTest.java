package org.brakerules.model.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever is read, it is a job or it is refused with problems on lines of their own. */
class MutatedJobTest {

  private static final int MUTATIONS = 1_000;
  private static final List<String> TOKENS =
      List.of(
          "{",
          "}",
          "[",
          "]",
          ":",
          ",",
          "\"",
          "null",
          "true",
          "-1",
          "1e999999999",
          "1e-999999999",
          "0.1",
          "[]",
          "{}",
          "\"\"",
          "\"seen\"",
          "\"0,5 in\"",
          "\"30 in\"",
          "\"NaN\"",
          "\"\\u0000\"",
          "\"\\ud800\"",
          "\"\\n\"",
          "\uFEFF",
          "\u2028",
          "\"part\":",
          "\"on\": \"axle\",",
          "99999999999");

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void a_job_with_random_bytes_or_tokens_changed_is_read_or_refused(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < MUTATIONS; i++) {
      byte[] document = SampleJobs.full().getBytes(StandardCharsets.UTF_8);
      for (int change = 1 + random.nextInt(3); change > 0; change--) {
        document =
            random.nextBoolean() ? byteChanged(document, random) : tokenChanged(document, random);
      }
      assertReadOrRefused(document, "seed " + seed + ", mutation " + i);
    }
  }

  private static byte[] byteChanged(byte[] document, Random random) {
    byte[] changed = document.clone();
    changed[random.nextInt(changed.length)] = (byte) random.nextInt(256);
    return changed;
  }

  private static byte[] tokenChanged(byte[] document, Random random) {
    String text = new String(document, StandardCharsets.ISO_8859_1);
    List<String> tokens = Arrays.asList(text.split("(?<=[\\s,:\\[\\]{}])|(?=[\\s,:\\[\\]{}])"));
    int at = random.nextInt(tokens.size());
    String replacement =
        switch (random.nextInt(3)) {
          case 0 -> "";
          case 1 -> TOKENS.get(random.nextInt(TOKENS.size()));
          default -> tokens.get(random.nextInt(tokens.size()));
        };
    tokens.set(at, replacement);
    return tokens.stream().collect(Collectors.joining()).getBytes(StandardCharsets.UTF_8);
  }

  private static void assertReadOrRefused(byte[] document, String which) {
    try {
      String written = JobWriter.write(JobReader.read(new ByteArrayInputStream(document)));
      assertThat(JobWriter.write(JobReader.read(written))).as(which).isEqualTo(written);
    } catch (InvalidJobException refused) {
      assertThat(refused.problems()).as(which).isNotEmpty();
      assertThat(refused.getMessage().lines()).as(which).hasSameSizeAs(refused.problems());
      assertThat(refused.getMessage()).as(which).doesNotContain("Exception", "jackson");
    } catch (RuntimeException other) {
      fail(
          which + " ended in " + other + ":\n" + new String(document, StandardCharsets.UTF_8),
          other);
    }
  }
}
