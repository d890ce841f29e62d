package org.brakerules.benchmark.result;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/**
 * Where it was measured.
 *
 * @param processor the processor
 * @param threads how many threads it runs at once
 * @param system the operating system
 * @param java the Java run time
 */
public record Machine(String processor, int threads, String system, String java) {

  private static final Path PROCESSORS = Path.of("/proc/cpuinfo");

  /** The machine this process runs on. */
  public static Machine here() {
    return new Machine(
        nameOfProcessor(),
        Runtime.getRuntime().availableProcessors(),
        System.getProperty("os.name") + " " + System.getProperty("os.arch"),
        System.getProperty("java.vm.name") + " " + System.getProperty("java.runtime.version"));
  }

  private static String nameOfProcessor() {
    try (Stream<String> lines = Files.lines(PROCESSORS)) {
      return lines
          .filter(line -> line.startsWith("model name"))
          .map(line -> line.substring(line.indexOf(':') + 1).strip())
          .findFirst()
          .orElse("unknown");
    } catch (IOException notThisSystem) {
      return "unknown";
    }
  }
}
