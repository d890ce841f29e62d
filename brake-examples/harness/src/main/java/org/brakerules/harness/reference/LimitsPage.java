package org.brakerules.harness.reference;

import java.util.List;
import java.util.stream.Collectors;
import org.brakerules.Rule;
import org.brakerules.limit.Limit;

/** Every limit with all its rows, the rules that read it and the conflicts it settles. */
final class LimitsPage {

  private static final Links LINKS = Links.FROM_THE_TOP;

  private final Material material;

  LimitsPage(Material material) {
    this.material = material;
  }

  Page page() {
    String limits =
        material.components().stream().map(this::component).collect(Collectors.joining());
    return new Page(
        "limits.md",
        """
        # Limits

        Every row of every limit table. A limit has several rows where its figure depends on the \
        configuration, the rule set or the day. The part's own station is the place the part \
        itself has, such as the spline end. A rule set can hold a limit on another side of the same \
        figures; that stands below the rows.
        """
            + limits);
  }

  private String component(String component) {
    List<Limit> limits = material.limitsOf(component);
    return limits.isEmpty()
        ? ""
        : "\n## "
            + component
            + "\n"
            + Material.ids(limits).map(this::limit).collect(Collectors.joining());
  }

  private String comparisons(String id) {
    return material.comparisons(id).stream()
        .map(LimitsPage::comparison)
        .collect(Collectors.joining());
  }

  private static String comparison(Limit held) {
    return "\nUnder `"
        + held.ruleSet().orElseThrow()
        + "` a reading passes "
        + held.comparison().inWords()
        + " the figure of any row of all rule sets: "
        + LINKS.clause(held.source())
        + (held.note().isEmpty() ? "" : ", " + held.note())
        + ".\n";
  }

  private String limit(String id) {
    List<Rule> readers = material.readersOf(id);
    return "\n### "
        + id
        + "\n\n"
        + LimitTable.of(material.written(id), LINKS)
        + comparisons(id)
        + "\nRead by "
        + readers.stream()
            .map(rule -> LINKS.rule(rule) + " " + rule.title())
            .collect(Collectors.joining("; "))
        + ".\n"
        + LINKS.lineOf(material.conflictsOf(id));
  }
}
