package org.brakerules.internal.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.brakerules.internal.table.RuleBaseException;
import org.brakerules.internal.table.RuleBaseFiles;
import org.brakerules.internal.table.Tables;
import org.brakerules.model.decision.Verdict;
import org.brakerules.model.part.PartKind;
import org.junit.jupiter.api.Test;

class RuleRegisterTest {

  private final Tables tables = Tables.load();

  @Test
  void the_register_tells_of_every_rule_what_the_compiled_rule_says() {
    Collection<RuleText> compiled =
        RuleTexts.of(CompiledRules.models(), tables, RuleBaseFiles.ofThisArtifact()).values();
    List<RuleText> registered = RuleEngine.load(tables).rules();

    assertThat(registered.stream().<List<Object>>map(RuleRegisterTest::all).toList())
        .isEqualTo(compiled.stream().<List<Object>>map(RuleRegisterTest::all).toList());
  }

  @Test
  void names_lead_to_the_rules() {
    Map<String, RuleText> rules =
        RuleRegister.read(RuleRegister.write(List.of(rule("Worn."))), tables.sources());

    assertThat(rules).containsOnlyKeys("DRUM-900 Worn drum");
    assertThat(rules.get("DRUM-900 Worn drum").because().text()).isEqualTo("Worn.");
  }

  @Test
  void rules_are_the_same_if_they_say_the_same() {
    String lines = RuleRegister.write(List.of(rule("Worn.")));

    assertThat(RuleRegister.read(lines, tables.sources()))
        .isEqualTo(RuleRegister.read(lines, tables.sources()))
        .isNotEqualTo(
            RuleRegister.read(RuleRegister.write(List.of(rule("Bent."))), tables.sources()));
  }

  @Test
  void a_text_that_would_part_a_line_is_refused() {
    assertThatThrownBy(() -> RuleRegister.write(List.of(rule("Worn\tout."))))
        .isInstanceOf(RuleBaseException.class)
        .hasMessage("Rule DRUM-900 has a tab or a line end in a text.");
    assertThatThrownBy(() -> RuleRegister.write(List.of(rule("Worn\nout."))))
        .isInstanceOf(RuleBaseException.class);
  }

  @Test
  void a_line_that_is_none_is_refused_with_its_text() {
    assertThatThrownBy(
            () -> RuleRegister.read("DRUM-900\tWorn\tbumper\treplace\n", tables.sources()))
        .isInstanceOf(RuleBaseException.class)
        .hasMessageStartingWith("The register of rules cannot be read: DRUM-900");
  }

  private static List<Object> all(RuleText rule) {
    List<Object> all = new ArrayList<>();
    all.add(rule.id());
    all.add(rule.title());
    all.add(rule.because());
    all.add(rule.action());
    all.add(rule.sources());
    all.add(rule.laws());
    all.add(rule.subject());
    all.add(rule.verdict());
    all.add(rule.reads());
    all.add(rule.readsBeside());
    all.add(rule.axleKinds());
    all.add(rule.text());
    all.add(rule.conditions());
    return all;
  }

  private static RuleText rule(String because) {
    return new ReadRule(
        "DRUM-900",
        "Worn drum",
        new Sentence(because),
        new Sentence(""),
        List.of(),
        Set.of(),
        PartKind.DRUM,
        Verdict.REPLACE,
        List.of(),
        List.of(),
        Set.of(),
        "",
        Map.of());
  }
}
