package org.brakerules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Options of the rule engine that must never be set.
 *
 * <p>{@code ThreadSafeOption.NO} gave 69 to 177 wrong decisions of 80,000 in a trial, although each
 * session had its own thread: sessions of one rule base share more than they show.
 */
class ForbiddenEngineOptionsTest {

  private static final Pattern FORBIDDEN =
      Pattern.compile("ThreadSafeOption|drools\\.threadSafe|ParallelExecutionOption");
  private static final Path MODULE = Path.of("").toAbsolutePath();

  @Test
  void no_source_resource_or_build_file_takes_the_locks_out_of_the_engine() throws IOException {
    List<Path> files = files();
    assertThat(files).hasSizeGreaterThan(50).contains(MODULE.resolve("pom.xml"));
    assertThat(files.stream().filter(ForbiddenEngineOptionsTest::namesOne)).isEmpty();
  }

  @Test
  void the_search_finds_what_it_searches_for() {
    assertThat(FORBIDDEN.matcher("conf.setOption(ThreadSafeOption.NO);").find()).isTrue();
    assertThat(FORBIDDEN.matcher("-Ddrools.threadSafe=false").find()).isTrue();
  }

  private static List<Path> files() throws IOException {
    try (Stream<Path> main = Files.walk(MODULE.resolve("src/main"));
        Stream<Path> poms =
            Stream.of(MODULE.resolve("pom.xml"), MODULE.resolveSibling("pom.xml"))) {
      return Stream.concat(main.filter(Files::isRegularFile), poms).toList();
    }
  }

  private static boolean namesOne(Path file) {
    try {
      return FORBIDDEN.matcher(Files.readString(file, StandardCharsets.UTF_8)).find();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
