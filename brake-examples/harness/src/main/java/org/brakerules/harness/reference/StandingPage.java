package org.brakerules.harness.reference;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakerules.Rule;
import org.brakerules.limit.Limit;
import org.brakerules.model.decision.Source;
import org.brakerules.model.decision.Standing;

/** What an auditor will want first: no published text stands behind it, or none that is named. */
final class StandingPage {

  private static final Links LINKS = Links.FROM_THE_TOP;
  private static final Set<Standing> UNPUBLISHED =
      Set.of(Standing.COMMON_PRACTICE, Standing.MEMORY);

  private final Material material;
  private final Set<String> weakSources;
  private final Set<String> manuals;

  StandingPage(Material material) {
    this.material = material;
    this.weakSources = sources(material, "common-practice", "memory");
    this.manuals = sources(material, "government");
  }

  private static Set<String> sources(Material material, String... standings) {
    return material.files().rows("sources.csv").stream()
        .filter(row -> List.of(standings).contains(row.get("standing")))
        .map(row -> row.get("id"))
        .collect(Collectors.toSet());
  }

  Page page() {
    return new Page(
        "standing.md",
        """
        # What rests on common practice or memory alone

        An auditor will want these first: no published text stands behind them. After them stand \
        those that cite a manual without naming a place in it.
        """
            + section("Limits", "", material.limits().stream().filter(this::isWeak).map(this::row))
            + section("Rules", "", material.rules().stream().filter(this::isWeak).map(this::row))
            + section(
                "Inspection points",
                "A point cites no source. It rests on the limits and rules that read it; of these"
                    + " points all of those stand in the lists above.",
                weakPoints())
            + section("Cautions", "", weakCautions())
            + section(
                "Manuals cited as a whole",
                "The manual is named, and no paragraph or page of it.",
                citedAsAWhole()));
  }

  private static String section(String title, String words, Stream<String> lines) {
    List<String> list = lines.map(line -> "- " + line).toList();
    return "\n## "
        + title
        + "\n\n"
        + (words.isEmpty() ? "" : words + "\n\n")
        + (list.isEmpty() ? "None.\n" : String.join("\n", list) + "\n");
  }

  private boolean isWeak(Limit limit) {
    return UNPUBLISHED.contains(limit.source().standing());
  }

  private boolean isWeak(Rule rule) {
    return rule.source().stream().map(Source::standing).allMatch(UNPUBLISHED::contains);
  }

  private String row(Limit limit) {
    return LINKS.limit(limit.id())
        + ", "
        + limit.inWords()
        + (limit.appliesTo().isEmpty() ? "" : " for `" + limit.appliesTo() + "`")
        + ": "
        + limit.source().standing().inWords();
  }

  private String row(Rule rule) {
    String standings =
        rule.source().stream()
            .map(source -> source.standing().inWords())
            .distinct()
            .collect(Collectors.joining("; "));
    return LINKS.rule(rule) + " " + rule.title() + ": " + standings;
  }

  private Stream<String> weakPoints() {
    return material.components().stream()
        .flatMap(
            component ->
                material.pointsOf(component).stream()
                    .map(row -> new PointReaders(component, row, material)))
        .filter(PointReaders::areAny)
        .filter(readers -> readers.rules().stream().allMatch(this::isWeak))
        .filter(readers -> readers.limits().stream().allMatch(this::isWeak))
        .map(readers -> "`" + readers.point().get("id") + "`, read by " + readers.inWords(LINKS));
  }

  private Stream<String> weakCautions() {
    return material.files().rows("cautions.csv").stream()
        .filter(
            row ->
                row.names("source").stream().map(Citation::source).allMatch(weakSources::contains))
        .map(row -> "[" + row.get("id") + "](cautions.md): " + row.get("text"));
  }

  private Stream<String> citedAsAWhole() {
    return material.files().rows("sources.csv").stream()
        .map(row -> row.get("id"))
        .filter(manuals::contains)
        .flatMap(id -> Clause.allOf(id, material).stream())
        .filter(clause -> Citation.isWhole(clause.citation()))
        .map(clause -> LINKS.clause(clause.citation()) + ": " + citing(clause));
  }

  private static String citing(Clause clause) {
    Stream<String> limits = Material.ids(clause.limits()).map(LINKS::limit);
    Stream<String> rules = clause.rules().stream().filter(clause::isCitedBy).map(LINKS::rule);
    Stream<String> cautions = clause.cautions().stream().map(id -> "caution " + id);
    return Stream.of(limits, rules, cautions)
        .flatMap(names -> names)
        .collect(Collectors.joining(", "));
  }
}
