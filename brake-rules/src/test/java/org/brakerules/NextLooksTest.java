package org.brakerules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.atomic.LongAdder;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.brakerules.internal.table.Tables;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.decision.NextLook;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.Scope;
import org.brakerules.random.Answer;
import org.brakerules.random.Seeds;
import org.junit.jupiter.api.Test;

/** What to look at next: all that is still needed, once, and the most telling first. */
class NextLooksTest {

  private static final int JOBS = 10_000;

  private static final Tables TABLES = Tables.load();

  /** A statement of how a brake or a vehicle is built, whichever part asks for it. */
  private static final Pattern STATEMENT = Pattern.compile("[a-z-]+\\.((?:layout|vehicle)\\..+)");

  @Test
  void every_needed_look_that_can_be_made_is_listed_once_and_every_statement_once_per_wheel_end() {
    LongAdder looks = new LongAdder();
    Seeds.each(
        JOBS,
        seed -> {
          JobDecision answer = Answer.of(seed).decision();
          Set<String> needed = new TreeSet<>();
          for (Decision decision : answer.decisions()) {
            decision.needed().stream()
                .filter(one -> answer.holds().isEmpty() || !isForApplied(one.point()))
                .forEach(one -> needed.add(once(one.part(), one.point())));
          }
          assertThat(
                  answer.next().stream()
                      .map(one -> once(one.part(), one.point()))
                      .sorted()
                      .toList())
              .isEqualTo(List.copyOf(needed));
          looks.add(needed.size());
        });
    assertThat(looks.sum()).isGreaterThan(JOBS);
  }

  @Test
  void what_bears_on_most_parts_comes_first_and_bears_on_undecided_parts_alone() {
    Seeds.each(
        JOBS,
        seed -> {
          JobDecision answer = Answer.of(seed).decision();
          assertThat(answer.next()).isSortedAccordingTo(mostTellingFirst(answer.scope()));
          assertThat(undecided(answer))
              .containsAll(answer.next().stream().flatMap(one -> one.bearsOn().stream()).toList());
          assertThat(answer.next()).allMatch(one -> isInPathOrder(one.bearsOn()));
        });
  }

  /** With the drum off what the brake is applied for comes after everything else. */
  private static Comparator<NextLook> mostTellingFirst(Scope scope) {
    Comparator<NextLook> applied =
        Comparator.comparing(one -> scope.reaches(Scope.DRUM_OFF) && isForApplied(one.point()));
    return applied.thenComparing(one -> -one.bearsOn().size());
  }

  private static boolean isForApplied(String point) {
    return TABLES.points().find(point).orElseThrow().appliesBrake();
  }

  private static Set<Place> undecided(JobDecision answer) {
    List<Place> undecided =
        answer.decisions().stream()
            .filter(one -> one.disposition() == Disposition.UNDECIDED)
            .map(Decision::part)
            .toList();
    return new HashSet<>(undecided);
  }

  private static boolean isInPathOrder(List<Place> places) {
    return places.equals(List.copyOf(new TreeSet<>(places)));
  }

  private static String once(Place part, String point) {
    Matcher statement = STATEMENT.matcher(point);
    return statement.matches() ? part.wheelEnd() + " " + statement.group(1) : part + " " + point;
  }
}
