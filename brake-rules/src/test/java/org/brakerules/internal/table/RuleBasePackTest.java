package org.brakerules.internal.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RuleBasePackTest {

  private final RuleBasePack pack = RuleBasePack.ofThisArtifact();

  @Test
  void every_table_is_in_the_pack_as_it_lies_beside_the_rules() {
    RuleBaseFiles lying = RuleBaseFiles.ofThisArtifact();

    assertThat(Fingerprint.files(lying).filter(file -> file.endsWith(".csv")))
        .allSatisfy(
            file -> assertThat(text(pack.open(file))).as(file).isEqualTo(text(lying.open(file))))
        .hasSizeGreaterThan(50);
  }

  @Test
  void the_fingerprint_is_that_of_the_files() {
    assertThat(Fingerprint.ofRuleBase(pack))
        .isEqualTo(Fingerprint.of(RuleBaseFiles.ofThisArtifact()));
  }

  @Test
  void what_it_does_not_hold_is_not_there() {
    assertThat(pack.open("drum/drum.drl")).isEmpty();
    assertThatThrownBy(() -> pack.read("drum/drum.drl"))
        .isInstanceOf(RuleBaseException.class)
        .hasMessageEndingWith("rule-base.pack holds no drum/drum.drl.");
  }

  private static Optional<String> text(Optional<InputStream> opened) {
    return opened.map(
        in -> {
          try (in) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
          } catch (IOException e) {
            throw new UncheckedIOException(e);
          }
        });
  }
}
