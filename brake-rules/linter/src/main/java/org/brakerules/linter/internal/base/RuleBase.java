package org.brakerules.linter.internal.base;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakerules.linter.internal.cases.AuthoredCase;
import org.brakerules.linter.internal.cases.CaseFile;
import org.brakerules.linter.internal.language.FactType;
import org.brakerules.linter.internal.text.SourceText;
import org.brakerules.model.part.PartKind;

/**
 * The whole rule base as read.
 *
 * @param components its folders, in the order of their names
 * @param sources the table of sources
 * @param ruleSets the table that names the rule sets
 * @param ruleSetFolders their folders, in the order of their names
 * @param cautions the table of cautions
 * @param unread the table of what may stay unread; empty if there is none
 * @param coverageOpen the table of what the cases may leave open; empty if there is none
 * @param conflicts the table of conflicts between sources; empty if there is none
 * @param decisionTables the rows of the trade's decision tables; empty if there are none
 * @param soundWheelEnd the job that every case starts from; empty if there is none
 * @param strayFiles files that a rule compiler would read although they are no component's rules
 */
public record RuleBase(
    List<Component> components,
    Table sources,
    Table ruleSets,
    List<RuleSetFolder> ruleSetFolders,
    Table cautions,
    Optional<Table> unread,
    Optional<Table> coverageOpen,
    Optional<Table> conflicts,
    Optional<Table> decisionTables,
    Optional<SourceText> soundWheelEnd,
    List<String> strayFiles) {

  /** Keeps its own copies. */
  public RuleBase {
    components = List.copyOf(components);
    ruleSetFolders = List.copyOf(ruleSetFolders);
    strayFiles = List.copyOf(strayFiles);
  }

  /** All rule files. */
  public Stream<RuleFile> ruleFiles() {
    return components.stream().map(Component::rules).flatMap(Optional::stream);
  }

  /** All rules. */
  public Stream<AuthoredRule> rules() {
    return ruleFiles().flatMap(file -> file.rules().stream());
  }

  /** All tables. */
  public Stream<Table> tables() {
    return Stream.of(
            Stream.of(sources, ruleSets, cautions),
            ruleSetFolders.stream().flatMap(RuleSetFolder::tables),
            Stream.of(unread, coverageOpen, conflicts, decisionTables).flatMap(Optional::stream),
            of(Component::limits),
            of(Component::points),
            equivalentChanges())
        .flatMap(Function.identity());
  }

  /** All files of cases. */
  public Stream<CaseFile> caseFiles() {
    return of(Component::cases);
  }

  /** All cases that could be read. */
  public Stream<AuthoredCase> cases() {
    return caseFiles().flatMap(file -> file.cases().stream());
  }

  /** All tables of changes that no case can notice. */
  public Stream<Table> equivalentChanges() {
    return of(Component::equivalentChanges);
  }

  /** All rows of all tables of limits, those of the rule sets with the id of theirs. */
  public Stream<Row> limits() {
    return Stream.concat(
        limitsOfRuleSets(), of(Component::limits).flatMap(table -> table.rows().stream()));
  }

  /** The rows of limits that stand in the folders of rule sets, with the id of theirs. */
  public Stream<Row> limitsOfRuleSets() {
    return ruleSetFolders.stream().flatMap(RuleSetFolder::limitRows);
  }

  /** All rows of comparisons of the rule sets. */
  public Stream<Row> comparisons() {
    return ruleSetFolders.stream().flatMap(RuleSetFolder::comparisonRows);
  }

  /** All rows of rules that do not speak under a rule set. */
  public Stream<Row> rulesOff() {
    return ruleSetFolders.stream().flatMap(RuleSetFolder::rulesOffRows);
  }

  /** What each rule set says of a whole vehicle. */
  public Stream<Row> ruleSetRows() {
    return ruleSetFolders.stream().flatMap(folder -> folder.itself().soundRows().stream());
  }

  /** All rows of all tables of inspection points. */
  public Stream<Row> points() {
    return of(Component::points).flatMap(table -> table.rows().stream());
  }

  /** The ids of all sources. */
  public Set<String> sourceIds() {
    return sources.column("id");
  }

  /** What may stay unread, with reasons. */
  public List<Row> unreadRows() {
    return unread.map(Table::rows).orElse(List.of());
  }

  /** The ids of all rules. */
  public Set<String> ruleIds() {
    return rules().map(AuthoredRule::id).collect(Collectors.toUnmodifiableSet());
  }

  /** The ids of all limits. */
  public Set<String> limitIds() {
    return ids(limits());
  }

  /** The ids of all inspection points. */
  public Set<String> pointIds() {
    return ids(points());
  }

  /** Whether a sign says something good of a part when it is seen. */
  public boolean isGoodSign(FactType fact, String property) {
    String part = fact.kind().map(PartKind::id).orElse("");
    return points()
        .filter(row -> row.text("part").equals(part) && row.text("property").equals(property))
        .anyMatch(row -> row.text("finds").equals("good"));
  }

  private <T> Stream<T> of(Function<Component, Optional<T>> file) {
    return components.stream().map(file).flatMap(Optional::stream);
  }

  private static Set<String> ids(Stream<Row> rows) {
    return rows.map(row -> row.text("id")).collect(Collectors.toUnmodifiableSet());
  }
}
