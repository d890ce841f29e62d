package org.brakerules.harness.changes;

import java.util.Comparator;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The version of a release, such as {@code 1.2.3}. */
record Version(int major, int minor, int patch) implements Comparable<Version> {

  private static final Pattern WRITTEN =
      Pattern.compile("(0|[1-9][0-9]{0,5})\\.(0|[1-9][0-9]{0,5})\\.(0|[1-9][0-9]{0,5})");

  /** Reads a version; empty if it is not written as three numbers with dots between. */
  static Optional<Version> read(String text) {
    Matcher written = WRITTEN.matcher(text);
    return written.matches()
        ? Optional.of(
            new Version(
                Integer.parseInt(written.group(1)),
                Integer.parseInt(written.group(2)),
                Integer.parseInt(written.group(3))))
        : Optional.empty();
  }

  /** The least version that is newer. */
  Version next() {
    return new Version(major, minor, patch + 1);
  }

  @Override
  public int compareTo(Version other) {
    return Comparator.comparingInt(Version::major)
        .thenComparingInt(Version::minor)
        .thenComparingInt(Version::patch)
        .compare(this, other);
  }

  @Override
  public String toString() {
    return major + "." + minor + "." + patch;
  }
}
