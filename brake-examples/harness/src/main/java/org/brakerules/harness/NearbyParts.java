package org.brakerules.harness;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.brakerules.model.text.NearestName;

/**
 * The parts that somebody means who writes a piece of their path, such as {@code camshaft} for
 * {@code axle2/left/camshaft}, or misspells it.
 *
 * @param paths the paths of all parts
 */
record NearbyParts(List<String> paths) {

  /** What to say of a path that is none. */
  UsageMistake unknown(String written) {
    List<String> meant = meant(written);
    return meant.isEmpty()
        ? UsageMistake.unknown(written, "is no part of this job", paths, "known are")
        : new UsageMistake(
            "\"%s\" is no part of this job; did you mean %s?"
                .formatted(written, String.join(" or ", meant)));
  }

  private List<String> meant(String written) {
    List<String> with = with(written);
    if (!with.isEmpty() || NearestName.of(written, paths).isPresent()) {
      return with;
    }
    List<String> pieces = paths.stream().flatMap(path -> pieces(path, written)).distinct().toList();
    return NearestName.of(written, pieces).map(this::with).orElse(List.of());
  }

  /** The paths that have a piece in them, made of whole steps. */
  private List<String> with(String piece) {
    return paths.stream().filter(path -> ("/" + path + "/").contains("/" + piece + "/")).toList();
  }

  /** The pieces of a path that have as many steps as another one. */
  private static Stream<String> pieces(String path, String like) {
    List<String> steps = Arrays.asList(path.split("/", -1));
    int length = like.split("/", -1).length;
    return IntStream.rangeClosed(0, steps.size() - length)
        .mapToObj(start -> String.join("/", steps.subList(start, start + length)));
  }
}
