package org.brakerules.linter.internal.language;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.text.NearestName;
import org.jspecify.annotations.Nullable;

/** The paths of parts as cases write them, such as {@code right/camshaft-seal/head-end/2}. */
public final class PartPaths {

  private static final List<String> BELOW_WHEEL_END =
      Arrays.stream(PartKind.values()).flatMap(PartPaths::of).toList();

  /** The wheel end of another part than those of the case, the part, and its number. */
  private static final Pattern PATH =
      Pattern.compile(
          "(right/|(?:[a-z][a-z0-9-]*/)?axle[1-9][0-9]?/(?:left|right)/)?(.*?)(/[1-9][0-9]?)?");

  private PartPaths() {}

  /** Whether it is the path of a part below a wheel end. */
  public static boolean isBelowWheelEnd(String path) {
    Matcher steps = steps(path);
    return steps.group(1) == null && BELOW_WHEEL_END.contains(steps.group(2));
  }

  /** Whether it is the path of a part, of any wheel end. */
  public static boolean isPath(String path) {
    return BELOW_WHEEL_END.contains(steps(path).group(2));
  }

  /** The path that is probably meant. */
  public static Optional<String> nearest(String path) {
    Matcher steps = steps(path);
    return NearestName.of(steps.group(2), BELOW_WHEEL_END)
        .map(near -> orNothing(steps.group(1)) + near + orNothing(steps.group(3)));
  }

  /** The paths of a kind of part; empty if there is no such kind. */
  public static List<String> of(String path) {
    String kind = steps(path).group(2).split("/", 2)[0];
    return PartKind.byId(kind).stream().flatMap(PartPaths::of).toList();
  }

  private static Stream<String> of(PartKind kind) {
    return kind.hasStations()
        ? kind.stations().stream().map(station -> kind.id() + "/" + station.id())
        : Stream.of(kind.id());
  }

  private static Matcher steps(String path) {
    Matcher steps = PATH.matcher(path);
    if (!steps.matches()) {
      throw new IllegalStateException("Every line of text matches.");
    }
    return steps;
  }

  private static String orNothing(@Nullable String step) {
    return step == null ? "" : step;
  }
}
