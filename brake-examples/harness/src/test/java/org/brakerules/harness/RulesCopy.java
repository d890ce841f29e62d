package org.brakerules.harness;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** The rules of this project in a folder where a test may change them. */
final class RulesCopy {

  private static final Path RULES = Path.of("../../brake-rules/src/main/resources");

  private RulesCopy() {}

  /** Copies them below a folder, and the folder comes back. */
  static Path in(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(RULES.resolve("org/brakerules/rules"))) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path copy = folder.resolve(RULES.relativize(file).toString());
        Files.createDirectories(requireNonNull(copy.getParent()));
        Files.copy(file, copy);
      }
    }
    return folder;
  }
}
