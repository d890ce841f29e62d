package org.brakerules.trial;

/**
 * A change that makes no difference to any job, so that no case can notice it: a row of the table
 * {@code <component>.equivalent-changes.csv} beside the rules.
 *
 * @param of the rule or the limit
 * @param change what is changed, in the words of {@link Mutant}
 * @param reason why it makes no difference
 */
public record EquivalentChange(String of, String change, String reason) {

  boolean is(Mutant mutant) {
    return of.equals(mutant.of()) && change.equals(mutant.words());
  }

  @Override
  public String toString() {
    return of + ": " + change;
  }
}
