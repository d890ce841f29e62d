package org.brakerules.trial.coverage;

import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakerules.model.decision.RuleBaseVersion;

/**
 * What the cases of a rule base show of it.
 *
 * @param version which rule base it is
 * @param cases how many cases were run
 * @param made how many jobs the program made for rows of limits
 * @param rules the rules, in the order of their ids
 * @param limits the rows of limits, in the order of their tables
 * @param sources the sources, in the order of their table
 * @param points the inspection points, in the order of their tables
 * @param listed the rows of {@code coverage-open.csv}, and the open points of {@code unread.csv}
 */
public record Coverage(
    RuleBaseVersion version,
    int cases,
    int made,
    List<RuleCoverage> rules,
    List<LimitCoverage> limits,
    List<SourceCoverage> sources,
    List<PointCoverage> points,
    List<ListedItem> listed) {

  /** Keeps its own copies of the lists. */
  public Coverage {
    rules = List.copyOf(rules);
    limits = List.copyOf(limits);
    sources = List.copyOf(sources);
    points = List.copyOf(points);
    listed = List.copyOf(listed);
  }

  /** What belongs to some components alone, and of the sources what theirs rests on. */
  public Coverage of(List<String> components) {
    List<RuleCoverage> ownRules =
        rules.stream().filter(in(components, RuleCoverage::component)).toList();
    List<LimitCoverage> ownLimits =
        limits.stream().filter(in(components, LimitCoverage::component)).toList();
    Set<String> own =
        Stream.concat(
                ownRules.stream().map(RuleCoverage::id), ownLimits.stream().map(LimitCoverage::id))
            .collect(Collectors.toSet());
    return new Coverage(
        version,
        cases,
        made,
        ownRules,
        ownLimits,
        sources.stream().flatMap(source -> source.under(own).stream()).toList(),
        points.stream().filter(in(components, PointCoverage::component)).toList(),
        listed);
  }

  private static <T> Predicate<T> in(List<String> components, Function<T, String> component) {
    return one -> components.contains(component.apply(one));
  }

  /** Everything that is open, listed or not. */
  public List<OpenItem> allOpen() {
    return OpenItems.of(this);
  }

  /** What is open and not listed. */
  public List<OpenItem> open() {
    return allOpen().stream()
        .filter(item -> listed.stream().noneMatch(row -> row.isFor(item)))
        .toList();
  }

  /** What is listed and indeed open. */
  public List<ListedItem> mayStayOpen() {
    List<OpenItem> all = allOpen();
    return listed.stream().filter(row -> all.stream().anyMatch(row::isFor)).toList();
  }

  /** What is listed though nothing of the kind is open; told of the whole rule base only. */
  public List<ListedItem> notNeeded() {
    List<OpenItem> all = allOpen();
    return listed.stream().filter(row -> all.stream().noneMatch(row::isFor)).toList();
  }

  /** The rows of limits that no case has a part for, and that jobs made by the program show. */
  public List<String> shownByMadeAlone() {
    return limits.stream()
        .filter(limit -> limit.applies().isEmpty())
        .filter(limit -> limit.sides().stream().anyMatch(SideCoverage::isShown))
        .map(LimitCoverage::id)
        .toList();
  }
}
