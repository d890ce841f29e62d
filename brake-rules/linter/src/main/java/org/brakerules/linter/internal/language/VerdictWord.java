package org.brakerules.linter.internal.language;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.decision.Verdict;

/** What a rule can say of a part. */
public enum VerdictWord {
  REPLACE("replace", false),
  CLEAN("clean", false),
  ADJUST("adjust", false),
  HOLD("hold", false),
  LOOK_AT("lookAt", true),
  MEASURE_AGAIN("measureAgain", true);

  private final String word;
  private final boolean takesPoint;

  VerdictWord(String word, boolean takesPoint) {
    this.word = word;
    this.takesPoint = takesPoint;
  }

  /** The word as rules write it. */
  public String word() {
    return word;
  }

  /** Whether it names an inspection point. */
  public boolean takesPoint() {
    return takesPoint;
  }

  /** Whether it settles what becomes of the part, so that one part needs no second one. */
  public boolean settles() {
    return verdict().disposition() != Disposition.UNDECIDED;
  }

  /** What the word says of the part; the later of two verdicts wins. */
  public Verdict verdict() {
    return Verdict.valueOf(name());
  }

  /** The call as rules write it. */
  public String call() {
    return "verdict." + word + "( $part" + (takesPoint ? ", \"component.point\"" : "") + " );";
  }

  /** Finds a verdict by its word. */
  public static Optional<VerdictWord> find(String word) {
    return Arrays.stream(values()).filter(one -> one.word.equals(word)).findFirst();
  }

  /** All words. */
  public static List<String> words() {
    return Arrays.stream(values()).map(VerdictWord::word).toList();
  }
}
