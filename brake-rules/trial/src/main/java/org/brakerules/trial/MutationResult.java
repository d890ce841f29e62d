package org.brakerules.trial;

import java.util.List;

/**
 * What became of the changes of one component.
 *
 * @param component the component
 * @param tried how many changes were made
 * @param refused how many of them no rule base can be made of, as of a limit without a value
 * @param equivalent how many no case can notice, because they make no difference to any job
 * @param survivors those that no case noticed, in the order of rules and rows
 * @param noLongerEquivalent changes that are listed as equivalent and were noticed, or are no
 *     changes at all
 */
public record MutationResult(
    String component,
    int tried,
    int refused,
    int equivalent,
    List<Mutant> survivors,
    List<EquivalentChange> noLongerEquivalent) {

  /** Keeps its own copies. */
  public MutationResult {
    survivors = List.copyOf(survivors);
    noLongerEquivalent = List.copyOf(noLongerEquivalent);
  }

  /** Tells those that are listed as equivalent from those that somebody should have noticed. */
  static MutationResult of(
      String component, int tried, int refused, List<Mutant> all, List<EquivalentChange> listed) {
    List<Mutant> survivors =
        all.stream().filter(one -> listed.stream().noneMatch(change -> change.is(one))).toList();
    List<EquivalentChange> noLonger =
        listed.stream().filter(change -> all.stream().noneMatch(change::is)).toList();
    return new MutationResult(
        component, tried, refused, all.size() - survivors.size(), survivors, noLonger);
  }

  /** Whether there is nothing left to do. */
  public boolean isClean() {
    return survivors.isEmpty() && noLongerEquivalent.isEmpty();
  }
}
