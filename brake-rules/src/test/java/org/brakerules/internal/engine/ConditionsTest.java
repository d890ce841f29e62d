package org.brakerules.internal.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.drools.model.DSL.declarationOf;
import static org.drools.model.DSL.on;
import static org.drools.model.PatternDSL.pattern;

import java.util.List;
import org.brakerules.model.part.Camshaft;
import org.brakerules.model.part.Part;
import org.drools.model.PatternDSL;
import org.drools.model.Rule;
import org.drools.model.Variable;
import org.drools.model.impl.ModelImpl;
import org.junit.jupiter.api.Test;

/** What the sieve cannot read it must not read wrongly: a fact kept back is a rule kept silent. */
class ConditionsTest {

  private static final Variable<Camshaft> CAMSHAFT = declarationOf(Camshaft.class, "$part");
  private static final Variable<Part> ANY_PART = declarationOf(Part.class, "$part");

  @Test
  void conditions_side_by_side_are_read_one_by_one() {
    Rule both =
        rule(pattern(CAMSHAFT).expr("one", part -> true).expr("other", part -> false), CAMSHAFT);

    assertThat(Conditions.of(both).get(0).constraints()).hasSize(2);
    assertThat(sieve(both)).isNotNull();
  }

  @Test
  void alternatives_that_the_compiler_keeps_apart_are_refused() {
    Rule either =
        rule(
            pattern(CAMSHAFT).or().expr("one", part -> true).expr("other", part -> false).endOr(),
            CAMSHAFT);

    assertThatThrownBy(() -> sieve(either))
        .hasMessage("The rule language has no alternatives in a pattern.");
  }

  @Test
  void a_pattern_over_more_than_one_type_of_fact_is_refused() {
    Rule wide = rule(pattern(ANY_PART).expr("one", part -> true), ANY_PART);

    assertThatThrownBy(() -> sieve(wide))
        .hasMessage("A pattern must name the type of its facts, and none is exactly a Part.");
  }

  private static <P extends Part> Rule rule(
      PatternDSL.PatternDef<P> pattern, Variable<P> variable) {
    return PatternDSL.rule("TEST-010 A rule").build(pattern, on(variable).execute(part -> {}));
  }

  private static FactSieve sieve(Rule rule) {
    ModelImpl model = new ModelImpl("test");
    model.addRule(rule);
    return FactSieve.of(List.of(model), one -> false);
  }
}
