package org.brakerules.internal.work;

import java.util.List;
import org.brakerules.internal.table.Selector;
import org.brakerules.model.decision.Caution;
import org.brakerules.model.decision.Source;
import org.brakerules.model.part.PartKind;
import org.brakerules.work.Surface;
import org.brakerules.work.WorkLevel;
import org.brakerules.work.WorkPhase;
import org.brakerules.work.WorkStep.Air;

/**
 * One row of the table of steps.
 *
 * @param id the id, such as {@code TEARDOWN-120}
 * @param rank its place in the table, which settles what the needs leave open
 * @param level what it is done to
 * @param phase the phase its id begins with
 * @param text what to do
 * @param hold whether nobody goes on until it passes
 * @param passesWhen when it passes; empty if it is no hold point
 * @param needs the steps it comes after
 * @param appliesTo the brakes, or parts, it is for, as the table writes it
 * @param selector the brakes, or parts, it is for
 * @param asksOfPart whether the selector asks for something of a part
 * @param unstated what is done where the selector asks for what is not stated
 * @param triggers what puts it there, beside parts
 * @param forParts the parts, and what of them, that put it there
 * @param unless the parts, and what of them, that keep it out of a plan
 * @param fits the kinds of parts it puts in; one that is replaced puts it there
 * @param callsFor the steps it puts there
 * @param greases the surfaces it greases
 * @param keepsDry the surfaces it keeps dry
 * @param disturbs the kinds of parts it disturbs that are fit for one use only
 * @param cautions the cautions for it
 * @param records what to write down
 * @param answers the inspection points that can be answered once it is done
 * @param tells what it tells of the job
 * @param air what it does with the air of the brakes
 * @param stopsFor the ids of the rules whose hold stops work here
 * @param source where it comes from
 */
record StepRow(
    String id,
    int rank,
    WorkLevel level,
    WorkPhase phase,
    String text,
    boolean hold,
    String passesWhen,
    List<String> needs,
    String appliesTo,
    Selector selector,
    boolean asksOfPart,
    Unstated unstated,
    List<Trigger> triggers,
    List<PartCondition> forParts,
    List<PartCondition> unless,
    List<PartKind> fits,
    List<String> callsFor,
    List<Surface> greases,
    List<Surface> keepsDry,
    List<PartKind> disturbs,
    List<Caution> cautions,
    List<RecordCell> records,
    List<String> answers,
    List<Tells> tells,
    Air air,
    List<String> stopsFor,
    List<Source> source) {

  /** The name of any rule that no other row stops for. */
  static final String OTHERWISE = "otherwise";

  /** What is done where a selector asks for what the job does not state. */
  enum Unstated {
    /** The step is there, under the condition that it applies. */
    ASK,
    /** The step is not there: another one is for what is not stated. */
    LEAVE_OUT,
    /** The step is there only then. */
    ONLY
  }

  /** What a step can tell of a job. */
  enum Tells {
    TEST_PRESSURE,
    /** Which axles the plan raises. */
    RAISED,
    SHIMS,
    SEALS,
    HOLDS,
    FURTHER,
    LOOKS,
    LATE_LOOKS
  }

  /**
   * Something to write down.
   *
   * @param what what it is
   * @param readings how many readings it is
   * @param limits the limits it meets
   * @param makersFigure whether its figure is the maker's, whatever the limits
   */
  record RecordCell(String what, int readings, List<LimitCell> limits, boolean makersFigure) {

    RecordCell {
      limits = List.copyOf(limits);
    }
  }

  /**
   * A limit that something written down meets.
   *
   * @param id its id
   * @param otherwise what a reading on its wrong side means; empty if that needs no word
   */
  record LimitCell(String id, String otherwise) {}

  boolean isTriggeredBy(Trigger.Kind kind) {
    return triggers.stream().anyMatch(trigger -> trigger.is(kind));
  }

  boolean tells(Tells one) {
    return tells.contains(one);
  }
}
