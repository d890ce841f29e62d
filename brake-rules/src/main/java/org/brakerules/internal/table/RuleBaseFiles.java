package org.brakerules.internal.table;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Where the files of a rule base lie: in this artifact, or in a folder an author works in. */
@FunctionalInterface
public interface RuleBaseFiles {

  /** The folder of the rule base in the class path. */
  String ROOT = "/org/brakerules/rules/";

  /** Opens a file by its name below the folder of the rule base; empty if there is none. */
  Optional<InputStream> open(String file);

  /** The files that travel in this artifact. */
  static RuleBaseFiles ofThisArtifact() {
    return file -> Optional.ofNullable(RuleBaseFiles.class.getResourceAsStream(ROOT + file));
  }

  /** The files of a folder that has a folder for each component. */
  static RuleBaseFiles in(Path folder) {
    return file -> {
      Path path = folder.resolve(file);
      try {
        return Files.exists(path) ? Optional.of(Files.newInputStream(path)) : Optional.empty();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    };
  }
}
