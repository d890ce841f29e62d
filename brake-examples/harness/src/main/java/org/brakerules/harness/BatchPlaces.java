package org.brakerules.harness;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Where a batch writes to, as named on the command line.
 *
 * @param decided the file of the decisions, or - for standard output
 * @param rejected the file of the rejects
 * @param summary the file of the summary, if it is asked for
 * @param chart the file of the chart, if it is asked for
 */
record BatchPlaces(String decided, Path rejected, Optional<Path> summary, Optional<Path> chart) {

  /**
   * Checks the names.
   *
   * @param rejected the file of the rejects; empty for one beside the decisions
   * @param input the input, which none of them may be
   * @throws UsageMistake if a name is missing, or names two things
   */
  static BatchPlaces of(
      String input, String decided, String rejected, String summary, String chart) {
    if (rejected.isEmpty() && !isNewFile(decided)) {
      throw new UsageMistake(
          "name a file for lines without a decision, --rejects FILE, where the decisions go to no"
              + " file of their own");
    }
    Path rejects = path(rejected.isEmpty() ? decided + ".rejects.jsonl" : rejected);
    BatchPlaces places = new BatchPlaces(decided, rejects, option(summary), option(chart));
    places.refuseTwice(input);
    return places;
  }

  /**
   * Why one of the files cannot be written, to be asked before long work; empty if they all can.
   */
  Optional<String> obstacle() {
    return Stream.of(
            intoFile() ? Stream.of(decidedFile()) : Stream.<Path>empty(),
            Stream.of(rejected),
            summary.stream(),
            chart.stream())
        .flatMap(files -> files)
        .filter(file -> !WholeFile.hasPlace(file))
        .map(BatchPlaces::obstacle)
        .findFirst();
  }

  private static String obstacle(Path file) {
    if (Files.isDirectory(file)) {
      return file + " is a folder, where a file is to be written";
    }
    if (Files.exists(file) && !Files.isRegularFile(file)) {
      return file + " is no ordinary file; name one that can be written as a whole";
    }
    Path folder = Objects.requireNonNullElse(file.toAbsolutePath().getParent(), file);
    return Files.isDirectory(folder)
        ? file + ": permission to write in its folder is denied"
        : file + ": there is no folder " + folder;
  }

  /** Whether the decisions go to a file that can be put in its place as a whole. */
  boolean intoFile() {
    return isNewFile(decided);
  }

  Path decidedFile() {
    return path(decided);
  }

  private static boolean isNewFile(String decided) {
    return !decided.equals(JobFile.STANDARD_INPUT)
        && (!Files.exists(path(decided))
            || Files.isRegularFile(path(decided))
            || Files.isDirectory(path(decided)));
  }

  private void refuseTwice(String input) {
    Map<String, Path> all = new LinkedHashMap<>();
    if (!input.equals(JobFile.STANDARD_INPUT)) {
      all.put("the jobs", path(input));
    }
    if (intoFile()) {
      all.put("--out", decidedFile());
    }
    all.put("--rejects", rejected);
    summary.ifPresent(file -> all.put("--summary", file));
    chart.ifPresent(file -> all.put("--chart", file));
    Map<Path, String> seen = new HashMap<>();
    all.forEach((name, file) -> refuseTwice(name, file, seen));
  }

  private static void refuseTwice(String name, Path file, Map<Path, String> seen) {
    String other = seen.putIfAbsent(file.toAbsolutePath().normalize(), name);
    if (other != null) {
      throw new UsageMistake(file + " is named twice, as " + other + " and as " + name);
    }
  }

  private static Optional<Path> option(String name) {
    return name.isEmpty() ? Optional.empty() : Optional.of(path(name));
  }

  private static Path path(String name) {
    try {
      return Path.of(name);
    } catch (InvalidPathException impossible) {
      throw new UsageMistake("\"" + name + "\" is no file name on this machine");
    }
  }
}
