package org.brakerules.harness.reference;

import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.brakerules.BrakeRules;
import org.brakerules.model.decision.RuleBaseVersion;
import org.brakerules.trial.TrialRules;

/** The reference for auditors: everything a rule base holds. */
public final class ReferenceBook {

  private static final String GENERATED =
      "<!-- Generated from the rule base; do not edit. See DEVELOPERS.md. -->\n\n";

  private final Material material;
  private final RuleBaseVersion version;

  private ReferenceBook(Material material, RuleBaseVersion version) {
    this.material = material;
    this.version = version;
  }

  /** Of the rule base that this program brings. */
  public static ReferenceBook standard() {
    return new ReferenceBook(Material.standard(), BrakeRules.standard().version());
  }

  /**
   * Of a rule base that somebody is working on.
   *
   * @param rules its rules
   * @param resources the folder with {@code org/brakerules/rules} in it
   * @throws BookMistake if a table beside the rules is none
   */
  public static ReferenceBook of(TrialRules rules, Path resources) {
    return new ReferenceBook(Material.of(rules, resources), rules.version());
  }

  /**
   * Makes every page in Markdown, by the file each is written to.
   *
   * @throws BookMistake if a table beside the rules is none
   */
  public SortedMap<String, String> pages() {
    SortedMap<String, String> files = new TreeMap<>();
    inReadingOrder().forEach(page -> files.put(page.file(), GENERATED + page.markdown()));
    return files;
  }

  /**
   * Makes the same pages as one HTML document that needs no other file.
   *
   * @throws BookMistake if a page cannot stand in it
   */
  public String html() {
    return new HtmlBook(inReadingOrder(), version).html();
  }

  private List<Page> inReadingOrder() {
    History history = History.ofThisArtifact();
    Stream<Page> first =
        Stream.of(
            new ContentsPage(material).page(),
            new RulesPage(material).page(),
            new Page("general-rules.md", BookText.read("general-rules.md")),
            new LimitsPage(material).page(),
            new TraceabilityPage(material).page(),
            new ConflictsPage(material).page(),
            new StandingPage(material).page(),
            new SourcesPage(material).page(),
            new DecisionTables(material).page(),
            CautionsPage.of(material.files()));
    Stream<Page> components =
        material.components().stream()
            .map(component -> new ComponentPage(component, material, history).page());
    return Stream.concat(first, components).toList();
  }
}
