package org.brakerules.harness.sheet;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import org.brakerules.BrakeRules;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.WheelEnd;

/** The sheets of a job. */
public final class Sheets {

  private Sheets() {}

  /**
   * One page of HTML for each wheel end, by the name of its file, such as {@code
   * tractor-axle2-left.html}, in path order.
   */
  public static Map<String, String> of(BrakeRules rules, BrakeJob job) {
    SheetMaterial material = SheetMaterial.of(rules, job);
    Map<String, String> sheets = new LinkedHashMap<>();
    job.wheelEnds()
        .sorted(Comparator.comparing(WheelEnd::path))
        .forEach(
            end ->
                sheets.put(
                    end.path().toString().replace('/', '-') + ".html",
                    WheelEndSheet.of(material, end)));
    return sheets;
  }
}
