package org.brakerules.harness.reference;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.brakerules.BrakeRules;

/** The reference for auditors: everything a rule base holds. */
public final class ReferenceBook {

  private static final String GENERATED =
      "<!-- Generated from the rule base; do not edit. See DEVELOPERS.md. -->\n\n";

  private ReferenceBook() {}

  /** Makes every page of a rule base in Markdown, by the file each is written to. */
  public static SortedMap<String, String> pages(BrakeRules base) {
    SortedMap<String, String> files = new TreeMap<>();
    inReadingOrder(base).forEach(page -> files.put(page.file(), GENERATED + page.markdown()));
    return files;
  }

  /** Makes the same pages as one HTML document that needs no other file. */
  public static String html(BrakeRules base) {
    return new HtmlBook(inReadingOrder(base), base.version()).html();
  }

  private static List<Page> inReadingOrder(BrakeRules base) {
    Material material = Material.of(base);
    Changelog changelog = Changelog.ofThisArtifact();
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
            CautionsPage.page());
    Stream<Page> components =
        material.components().stream()
            .map(component -> new ComponentPage(component, material, changelog).page());
    return Stream.concat(first, components).toList();
  }
}
