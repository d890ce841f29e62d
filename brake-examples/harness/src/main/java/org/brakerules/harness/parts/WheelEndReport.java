package org.brakerules.harness.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakerules.harness.report.Page;
import org.brakerules.model.part.Place;
import org.brakerules.parts.Detail;
import org.brakerules.parts.Ground;
import org.brakerules.parts.Handling;
import org.brakerules.parts.PartsLine;
import org.brakerules.parts.WheelEndParts;

/**
 * The parts list of one wheel end.
 *
 * @param page where it is written
 * @param end the wheel end
 * @param common reasons to count that all its lines share; they are told once
 */
record WheelEndReport(Page page, WheelEndParts end, List<String> common) {

  private static final int LABEL = 9;

  static void write(Page page, WheelEndParts end) {
    new WheelEndReport(page, end, common(end)).write();
  }

  private static List<String> common(WheelEndParts end) {
    List<String> common = new ArrayList<>();
    end.lines().stream().limit(1).forEach(line -> common.addAll(line.amount().confirm()));
    end.lines().forEach(line -> common.retainAll(line.amount().confirm()));
    boolean anyBought = end.lines().stream().anyMatch(line -> line.handling() == Handling.ORDER);
    return anyBought && !end.inspected() ? common : List.of();
  }

  private void write() {
    if (end.reline()) {
      page.paragraph(2, "Reline: the minimum set of a reline is on the list.");
    }
    if (!end.holds().isEmpty()) {
      page.paragraph(2, "On hold, stop work first: " + inWords(end.holds()) + ".");
    }
    common.forEach(why -> page.paragraph(2, "Count and confirm every number: " + why + "."));
    inFull(Handling.ORDER, "Order");
    inFull(Handling.SALVAGE, "Save from the worn shoes before these leave in exchange");
    lookedAt();
    inShort(lines(Handling.KEEP), "Goes back");
  }

  private void inFull(Handling handling, String title) {
    List<PartsLine> lines = lines(handling);
    if (!lines.isEmpty()) {
      page.gap();
      page.paragraph(2, title);
      lines.forEach(this::line);
    }
  }

  private void line(PartsLine line) {
    int pieces = line.amount().pieces();
    page.paragraph(4, PartsReport.counted(pieces) + line.item().inWords(pieces));
    List<String> confirm =
        line.amount().confirm().stream().filter(why -> !common.contains(why)).toList();
    if (!confirm.isEmpty()) {
      label("Count", "count and confirm: " + String.join("; ", confirm));
    }
    line.comesWith()
        .ifPresent(item -> label("Comes", "with the " + item.singular() + ", not bought apart"));
    if (!line.match().isEmpty()) {
      label("Match", joined(line.match().stream().map(WheelEndReport::inWords)));
    }
    label("For", inWords(line.places()));
    reasons(line);
  }

  /** What is ordered needs one reason in full; what is saved is worth all of them. */
  private void reasons(PartsLine line) {
    int inFull = line.handling() == Handling.SALVAGE ? line.grounds().size() : 1;
    line.grounds().stream()
        .limit(inFull)
        .forEach(ground -> label("Why", ground.sentence() + " [" + ground.id() + "]"));
    List<String> told = line.grounds().stream().limit(inFull).map(Ground::id).toList();
    String more =
        line.grounds().stream()
            .skip(inFull)
            .map(Ground::id)
            .distinct()
            .filter(id -> !told.contains(id))
            .collect(Collectors.joining(", "));
    if (!more.isEmpty()) {
      label("Also", more);
    }
  }

  private void lookedAt() {
    List<PartsLine> lines = lines(Handling.INSPECT);
    if (end.inspected() || lines.isEmpty()) {
      inShort(lines, "Look at first");
      return;
    }
    page.gap();
    page.paragraph(2, "Look at first");
    lines.stream()
        .filter(WheelEndReport::isInAxleSet)
        .forEach(
            line -> {
              page.paragraph(4, line.item().singular());
              if (!line.match().isEmpty()) {
                label("Match", joined(line.match().stream().map(WheelEndReport::inWords)));
              }
              line.grounds().stream()
                  .filter(ground -> ground.kind() == Ground.Kind.AXLE_SET)
                  .forEach(ground -> label("Why", ground.sentence() + " [" + ground.id() + "]"));
            });
    page.paragraph(4, "every other part, since this wheel end is not in the job");
  }

  private static boolean isInAxleSet(PartsLine line) {
    return line.grounds().stream().anyMatch(ground -> ground.kind() == Ground.Kind.AXLE_SET);
  }

  private void inShort(List<PartsLine> lines, String title) {
    if (!lines.isEmpty()) {
      page.gap();
      page.paragraph(2, title);
      page.paragraph(
          4, joined(lines.stream().flatMap(line -> line.places().stream()).map(Place::inWords)));
    }
  }

  private List<PartsLine> lines(Handling handling) {
    return end.lines().stream().filter(line -> line.handling() == handling).toList();
  }

  private static String inWords(List<Place> places) {
    return joined(places.stream().map(Place::inWords));
  }

  private static String inWords(Detail detail) {
    return detail.name() + " " + detail.value();
  }

  private static String joined(Stream<String> texts) {
    return texts.collect(Collectors.joining("; "));
  }

  private void label(String label, String words) {
    page.labelled(8, label, LABEL, words);
  }
}
