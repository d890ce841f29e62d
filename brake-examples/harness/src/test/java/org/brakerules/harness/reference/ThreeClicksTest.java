package org.brakerules.harness.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.brakerules.Rule;
import org.brakerules.harness.cases.RuleCase;
import org.brakerules.model.decision.Source;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

/** From the id a report prints it is three clicks to the clause and to the cases. */
class ThreeClicksTest {

  private static final Material MATERIAL = Material.standard();
  private static ParsedBook book = new ParsedBook("<html/>");

  @BeforeAll
  static void openTheBook() {
    book = new ParsedBook(ReferenceBook.standard().html());
  }

  static List<Rule> rules() {
    return MATERIAL.rules();
  }

  @ParameterizedTest
  @MethodSource("rules")
  void every_rule_leads_to_each_of_its_clauses_and_back(Rule rule) {
    Element entry = clickTwice(rule);
    for (Source source : rule.source()) {
      Element clause = click(entry, Citation.heading(source.citation()));
      assertThat(book.linksBelow(clause)).contains("#" + entry.getAttribute("id"));
    }
  }

  @ParameterizedTest
  @MethodSource("rules")
  void every_rule_leads_to_each_of_its_cases_and_back(Rule rule) {
    Element entry = clickTwice(rule);
    List<RuleCase> cases =
        Stream.concat(MATERIAL.firing(rule).stream(), MATERIAL.justSilent(rule).stream()).toList();
    assertThat(MATERIAL.firing(rule)).isNotEmpty();
    for (RuleCase one : cases) {
      Element found = click(entry, one.name());
      assertThat(book.linksBelow(found)).contains("#" + entry.getAttribute("id"));
    }
  }

  @ParameterizedTest
  @MethodSource("rules")
  void every_rule_leads_to_the_limits_it_reads_and_they_lead_on_to_their_clauses(Rule rule) {
    Element entry = clickTwice(rule);
    MATERIAL
        .limitsReadBy(rule)
        .forEach(
            row -> {
              Element limit = click(entry, row.id());
              Element clause = click(limit, Citation.heading(row.source().citation()));
              assertThat(book.linksBelow(clause)).contains("#" + limit.getAttribute("id"));
            });
  }

  @Test
  void every_limit_is_read_by_a_rule() {
    assertThat(Material.ids(MATERIAL.limits())).allMatch(id -> !MATERIAL.readersOf(id).isEmpty());
  }

  /** The first two clicks: the list of rules, and the rule. */
  private static Element clickTwice(Rule rule) {
    Element first = book.elements("h2").get(0);
    assertThat(book.linksBelow(first)).contains("#rules");
    Element list = book.click("#rules").orElseThrow();
    return click(list, Links.heading(rule));
  }

  /** Follows the link that stands below one heading and leads to another of these words. */
  private static Element click(Element from, String heading) {
    String anchor = "/" + Links.anchor(heading);
    return book.linksBelow(from).stream()
        .filter(link -> link.endsWith(anchor))
        .flatMap(link -> book.click(link).stream())
        .filter(target -> target.getTextContent().equals(heading))
        .findFirst()
        .orElseThrow(() -> new AssertionError(from.getTextContent() + " leads to no " + heading));
  }
}
