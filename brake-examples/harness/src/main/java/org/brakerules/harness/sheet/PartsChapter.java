package org.brakerules.harness.sheet;

import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.brakerules.harness.html.Markup;
import org.brakerules.harness.report.NeededInWords;
import org.brakerules.harness.report.Wording;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Needed;
import org.brakerules.model.job.WheelEnd;
import org.brakerules.model.part.Place;
import org.brakerules.work.WorkStep;

/** The picture of the parts, and the list that says the same in words. */
final class PartsChapter {

  private static final int LOOKS_SHOWN = 6;

  private final Markup page;
  private final List<Decision> decisions;
  private final List<Mark> marks;

  /** The numbers of the steps that say what undecided parts need. */
  private final Map<Place, Integer> asked;

  /**
   * Lists parts.
   *
   * @param decisions what becomes of each, in the order of their numbers
   * @param marks how each is marked
   * @param steps the steps of the page, some of which ask for the looks of undecided parts
   */
  PartsChapter(Markup page, List<Decision> decisions, List<Mark> marks, List<WorkStep> steps) {
    this.page = page;
    this.decisions = decisions;
    this.marks = marks;
    this.asked = new HashMap<>();
    steps.forEach(step -> step.undecided().forEach(part -> asked.putIfAbsent(part, step.number())));
  }

  void write() {
    page.open("section").element("h2", "What becomes of each part");
    page.open("ul", "class", "parts");
    alike().forEach(this::parts);
    page.close();
    goesBack();
    page.close();
  }

  /** The rules that stand with the parts. */
  Set<String> rules() {
    return alike().stream().map(alike -> why(alike.get(0)).get(1)).collect(Collectors.toSet());
  }

  void picture(WheelEnd wheelEnd) {
    new PartsPicture(wheelEnd, decisions, marks).draw(page, "parts");
    legend();
  }

  private void legend() {
    page.open("p", "class", "legend");
    for (Mark mark : Mark.values()) {
      if (marks.contains(mark)) {
        page.element("span", mark.shape() + ": " + mark.inWords());
      }
    }
    page.close();
  }

  /** Parts of one kind that fare alike for the same reason, by what they have in common. */
  private Collection<List<Integer>> alike() {
    return IntStream.range(0, decisions.size())
        .boxed()
        .filter(i -> mark(i) != Mark.REUSE)
        .collect(
            Collectors.groupingBy(
                i -> List.of(decisions.get(i).part().kind(), mark(i), why(i), looks(i)),
                LinkedHashMap::new,
                Collectors.toList()))
        .values();
  }

  private Mark mark(int i) {
    return marks.get(i);
  }

  /** The gravest reason, as what to do and the rule that says so; no rule takes a good part out. */
  private List<String> why(int i) {
    if (mark(i) != Mark.REUSE && Mark.of(decisions.get(i)) == Mark.REUSE) {
      return List.of("", "");
    }
    return decisions.get(i).reasons().stream()
        .findFirst()
        .map(reason -> List.of(reason.action(), reason.rule()))
        .orElse(List.of("", ""));
  }

  private void parts(List<Integer> alike) {
    int one = alike.get(0);
    page.open("li").words(numbers(alike) + " " + names(alike) + ": ");
    page.element("strong", mark(one).inWords() + ".");
    page.words((" " + why(one).get(0) + looks(one)).stripTrailing());
    if (!why(one).get(1).isEmpty()) {
      page.words(" ").element("span", why(one).get(1), "class", "rule");
    }
    page.close();
  }

  /** What an undecided part needs, or the step of the page that says it. */
  private String looks(int i) {
    Decision decision = decisions.get(i);
    List<Needed> needed = decision.needed();
    if (mark(i) != Mark.UNDECIDED || needed.isEmpty()) {
      return "";
    }
    Integer step = asked.get(decision.part());
    if (step != null) {
      return " Needed: see step " + step + ".";
    }
    String shown =
        needed.stream()
            .limit(LOOKS_SHOWN)
            .map(one -> NeededInWords.task(one.task(), one.point()) + " " + one.what())
            .collect(Collectors.joining("; "));
    int more = needed.size() - LOOKS_SHOWN;
    return " Needed: " + shown + (more > 0 ? "; and " + more + " more in decide." : ".");
  }

  private static String numbers(List<Integer> alike) {
    return alike.stream().map(i -> Integer.toString(i + 1)).collect(Collectors.joining(", "));
  }

  private String names(List<Integer> alike) {
    return Wording.parts(alike.stream().map(i -> decisions.get(i).part()).toList());
  }

  private void goesBack() {
    String names =
        IntStream.range(0, decisions.size())
            .filter(i -> mark(i) == Mark.REUSE)
            .mapToObj(i -> (i + 1) + " " + Wording.part(decisions.get(i).part()))
            .collect(Collectors.joining("; "));
    if (!names.isEmpty()) {
      page.element("p", "Goes back: " + names + ".", "class", "back");
    }
  }
}
