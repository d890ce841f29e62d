package org.brakerules.work;

import java.util.List;
import java.util.Optional;
import org.brakerules.model.decision.Caution;
import org.brakerules.model.decision.Source;
import org.brakerules.model.part.Place;

/**
 * One step of the work.
 *
 * @param number its number in the plan, from 1
 * @param id the id of the step, such as {@code TEARDOWN-120}; a plan has it once for each wheel
 *     end, axle or vehicle it is done to
 * @param phase the phase it belongs to
 * @param level what it is done to
 * @param on the path of the wheel end or axle; empty if it is the vehicle
 * @param ifFitted under which condition it is done at all, where the layout does not say; empty if
 *     it is done in any case
 * @param text what to do
 * @param hold whether nobody goes on until it passes
 * @param passesWhen when it passes; empty if it is no hold point
 * @param parts the parts it puts in
 * @param undecided the undecided parts that must be decided here; empty at most steps
 * @param details what it is about in this job, in a line each
 * @param greases the surfaces it greases
 * @param keepsDry the surfaces it keeps dry
 * @param air what it does with the air of the brakes
 * @param cautions the cautions for it
 * @param records what to write down
 * @param after the numbers of the steps that come before it
 * @param because what put it into the plan, never empty
 * @param source where it comes from
 */
public record WorkStep(
    int number,
    String id,
    WorkPhase phase,
    WorkLevel level,
    String on,
    Optional<String> ifFitted,
    String text,
    boolean hold,
    String passesWhen,
    List<FittedPart> parts,
    List<Place> undecided,
    List<String> details,
    List<Surface> greases,
    List<Surface> keepsDry,
    Air air,
    List<Caution> cautions,
    List<Recording> records,
    List<Integer> after,
    List<Because> because,
    List<Source> source) {

  /** What a step does with the air of the brakes. */
  public enum Air {
    /** It does not matter. */
    ANY,
    /** Air comes to the brakes. */
    UP,
    /** The brakes are drained, and stay so until air comes to them again. */
    OFF
  }

  /** Keeps its own copies of the lists. */
  public WorkStep {
    parts = List.copyOf(parts);
    undecided = List.copyOf(undecided);
    details = List.copyOf(details);
    greases = List.copyOf(greases);
    keepsDry = List.copyOf(keepsDry);
    cautions = List.copyOf(cautions);
    records = List.copyOf(records);
    after = List.copyOf(after);
    because = List.copyOf(because);
    source = List.copyOf(source);
  }

  /** Whether parts that are undecided must be decided here before the work goes on. */
  public boolean decides() {
    return !undecided.isEmpty();
  }
}
