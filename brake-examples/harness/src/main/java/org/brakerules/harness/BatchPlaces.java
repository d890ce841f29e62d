package org.brakerules.harness;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.brakerules.harness.batch.Places;

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
    if (input.isEmpty() || decided.isEmpty()) {
      throw new UsageMistake("an empty name is no file; name one for IN and one for --out");
    }
    if (rejected.isEmpty() && !isNewFile(decided)) {
      throw new UsageMistake(
          "name a file for lines without a decision, --rejects FILE, where the decisions go to no"
              + " file of their own but to standard output, a pipe or a device");
    }
    Path rejects =
        rejected.isEmpty() ? path(decided + ".rejects.jsonl") : file("--rejects", rejected);
    BatchPlaces places =
        new BatchPlaces(decided, rejects, option("--summary", summary), option("--chart", chart));
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
    if (Files.isSymbolicLink(file)) {
      return file + " is a link; name the file it leads to, or - for standard output";
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
    Map<Path, String> seen = new HashMap<>();
    if (!input.equals(JobFile.STANDARD_INPUT)) {
      refuseTwice("the jobs", path(input), seen);
    }
    if (intoFile()) {
      refuseTwice("--out", decidedFile(), seen);
    }
    refuseTwice("--rejects", rejected, seen);
    summary.ifPresent(file -> refuseTwice("--summary", file, seen));
    chart.ifPresent(file -> refuseTwice("--chart", file, seen));
    unfinished().forEach(file -> refuseTwice("a file of the unfinished run", file, seen));
  }

  /** What lies beside the outputs until they are finished. */
  private Stream<Path> unfinished() {
    Stream<Path> ofRun =
        intoFile()
            ? new Places(decidedFile(), rejected).unfinished().stream()
            : Stream.of(WholeFile.beside(rejected));
    return Stream.concat(
        ofRun, Stream.of(summary, chart).flatMap(Optional::stream).map(WholeFile::beside));
  }

  private static void refuseTwice(String name, Path file, Map<Path, String> seen) {
    String other = seen.putIfAbsent(real(file), name);
    if (other != null) {
      throw new UsageMistake(file + " is named twice, as " + other + " and as " + name);
    }
  }

  /** One file under one name, whatever links lead to it. */
  private static Path real(Path file) {
    Path whole = file.toAbsolutePath().normalize();
    try {
      return whole.toRealPath();
    } catch (IOException notThereYet) {
      return inRealFolder(whole);
    }
  }

  private static Path inRealFolder(Path file) {
    Path folder = Objects.requireNonNullElse(file.getParent(), file);
    try {
      return folder.toRealPath().resolve(file.getFileName());
    } catch (IOException noFolder) {
      return file;
    }
  }

  private static Optional<Path> option(String option, String name) {
    return name.isEmpty() ? Optional.empty() : Optional.of(file(option, name));
  }

  private static Path file(String option, String name) {
    if (name.equals(JobFile.STANDARD_INPUT)) {
      throw new UsageMistake("only --out can be - for standard output; name a file for " + option);
    }
    return path(name);
  }

  private static Path path(String name) {
    try {
      return Path.of(name);
    } catch (InvalidPathException impossible) {
      throw new UsageMistake("\"" + name + "\" is no file name on this machine");
    }
  }
}
