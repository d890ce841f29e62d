package org.brakerules.harness.parts;

import java.util.List;
import java.util.stream.Collectors;
import org.brakerules.harness.report.Page;
import org.brakerules.harness.report.Palette;
import org.brakerules.parts.AxleCover;
import org.brakerules.parts.Handling;
import org.brakerules.parts.KitCover;
import org.brakerules.parts.PartsList;
import org.brakerules.parts.TotalLine;
import org.brakerules.parts.WheelEndParts;

/** The parts list of a job for people to order from. */
public final class PartsReport {

  private final Page page = new Page(new Palette(false));

  private PartsReport() {}

  /** The report of a parts list. */
  public static String of(PartsList parts) {
    PartsReport report = new PartsReport();
    report.write(parts);
    return report.page.toString();
  }

  /** The report of a parts list with the kits that cover it. */
  public static String of(KitCover cover) {
    PartsReport report = new PartsReport();
    report.write(cover.parts());
    KitsReport kits = new KitsReport(report.page, cover.shelf());
    for (AxleCover axle : cover.axles()) {
      report.heading("Kits for " + axle.name());
      kits.write(axle);
    }
    kits.total(cover);
    return report.page.toString();
  }

  private void write(PartsList parts) {
    String reference = parts.reference().isEmpty() ? "" : " " + parts.reference();
    page.paragraph(0, "Parts list of brake job" + reference);
    page.labelled(2, "Inspected", 12, parts.date().toString());
    page.labelled(2, "Rule set", 12, parts.ruleSet().id());
    page.labelled(
        2,
        "Note",
        12,
        "Where a number says count and confirm, count at the bench before ordering.");
    for (WheelEndParts end : parts.wheelEnds()) {
      heading(end.wheelEnd() + (end.inspected() ? "" : " (not in the job)"));
      WheelEndReport.write(page, end);
    }
    heading("All wheel ends together");
    if (parts.vehicle().stream().noneMatch(line -> line.handling() == Handling.ORDER)) {
      page.paragraph(2, "Nothing is to be ordered.");
    }
    totals(parts.vehicle(), Handling.ORDER, "Order");
    totals(parts.vehicle(), Handling.SALVAGE, "Save from the worn shoes");
  }

  private void totals(List<TotalLine> all, Handling handling, String title) {
    List<TotalLine> lines = all.stream().filter(line -> line.handling() == handling).toList();
    if (!lines.isEmpty()) {
      page.gap();
      page.paragraph(2, title);
      lines.forEach(line -> page.paragraph(4, inWords(line)));
    }
  }

  private static String inWords(TotalLine line) {
    int pieces = line.amount().pieces();
    return counted(pieces)
        + line.item().inWords(pieces)
        + line.comesWith().map(item -> " (comes with the " + item.singular() + ")").orElse("")
        + (line.amount().isCertain() ? "" : " - count and confirm")
        + " - "
        + line.wheelEnds().stream().map(Object::toString).collect(Collectors.joining(", "));
  }

  /** The number before an item; a question mark where only counting tells. */
  static String counted(int pieces) {
    return pieces == 0 ? "? " : pieces + " ";
  }

  private void heading(String heading) {
    page.gap();
    page.paragraph(0, heading);
    page.paragraph(0, "=".repeat(heading.length()));
  }
}
