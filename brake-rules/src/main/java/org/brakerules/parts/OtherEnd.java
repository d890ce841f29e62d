package org.brakerules.parts;

import java.util.List;
import java.util.stream.Collectors;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.WheelEndPath;

/**
 * The end of an axle that is not in the job, where the work on the other end reaches it because
 * parts go in axle sets.
 *
 * @param wheelEnd the end that is not in the job
 * @param renewed the kinds of parts that are new there as well, in the order of the model
 * @param compared the kinds of parts that are looked at there, because a new one across the axle
 *     wants them new or like it
 */
public record OtherEnd(WheelEndPath wheelEnd, List<PartKind> renewed, List<PartKind> compared) {

  /** Keeps its own copies of the lists. */
  public OtherEnd {
    renewed = List.copyOf(renewed);
    compared = List.copyOf(compared);
  }

  /** What must be done there, and that the job does not see to it, in a few short sentences. */
  public String inWords() {
    return wheelEnd
        + ", the other end of the axle, is not in this job."
        + (renewed.isEmpty()
            ? ""
            : " New there too: " + names(renewed) + ", and what else the parts list orders there.")
        + (compared.isEmpty()
            ? ""
            : " See there whether it is new too, or like the new one: " + names(compared) + ".")
        + " State that end in the job as well; without its steps and checks the vehicle is not"
        + " released.";
  }

  private static String names(List<PartKind> kinds) {
    return kinds.stream().map(PartKind::inWords).collect(Collectors.joining(", "));
  }
}
