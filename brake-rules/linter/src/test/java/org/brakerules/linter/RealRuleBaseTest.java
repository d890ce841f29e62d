package org.brakerules.linter;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The rule base that ships. */
class RealRuleBaseTest {

  @Test
  void the_rule_base_has_no_problems() {
    assertThat(RuleLinter.lint(Path.of("../src/main/resources"))).isEmpty();
  }
}
