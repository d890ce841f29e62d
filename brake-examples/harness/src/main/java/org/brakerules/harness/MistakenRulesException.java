package org.brakerules.harness;

import java.nio.file.Path;

/** Rules that cannot be asked, because the linter finds something wrong with them. */
final class MistakenRulesException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  MistakenRulesException(Path folder, int mistakes) {
    super(
        "%s: the rules have mistakes (%d); see brake lint %s first"
            .formatted(folder, mistakes, folder));
  }
}
