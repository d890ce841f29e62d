package org.brakerules.model.text;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the known name that a misspelt one probably means, for messages. */
public final class NearestName {

  private NearestName() {}

  /**
   * The known name with the fewest slips from the written one: a letter too many, too few, wrong,
   * or two neighbours swapped. Upper and lower case, dashes, underscores and blanks do not count.
   *
   * @return the nearest name, the first in the alphabet of equally near ones; empty if more than a
   *     third of the written letters would have to be slips
   */
  public static Optional<String> of(String written, Collection<String> known) {
    String plain = plain(written);
    int mostSlips = plain.length() / 3;
    return known.stream()
        .map(name -> new Candidate(name, slips(plain, plain(name), mostSlips)))
        .filter(candidate -> !plain.isEmpty() && candidate.slips <= mostSlips)
        .min(Comparator.comparingInt(Candidate::slips).thenComparing(Candidate::name))
        .map(Candidate::name);
  }

  private record Candidate(String name, int slips) {}

  private static String plain(String name) {
    return name.toLowerCase(Locale.ROOT).replaceAll("[-_\\s]", "");
  }

  /** Damerau-Levenshtein distance (optimal string alignment), or more than the most slips. */
  private static int slips(String a, String b, int mostSlips) {
    // Spares the table for hopeless cases, so a very long text costs nothing.
    if (Math.abs(a.length() - b.length()) > mostSlips) {
      return mostSlips + 1;
    }
    int[][] distance = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        distance[i][j] = Math.min(i, j) == 0 ? Math.max(i, j) : cheapest(distance, a, b, i, j);
      }
    }
    return distance[a.length()][b.length()];
  }

  private static int cheapest(int[][] distance, String a, String b, int i, int j) {
    char last = a.charAt(i - 1);
    char otherLast = b.charAt(j - 1);
    int insertedOrLeftOut = Math.min(distance[i - 1][j], distance[i][j - 1]) + 1;
    int kept = distance[i - 1][j - 1] + (last == otherLast ? 0 : 1);
    int best = Math.min(insertedOrLeftOut, kept);
    boolean swapped = i > 1 && j > 1 && last == b.charAt(j - 2) && a.charAt(i - 2) == otherLast;
    return swapped ? Math.min(best, distance[i - 2][j - 2] + 1) : best;
  }
}
