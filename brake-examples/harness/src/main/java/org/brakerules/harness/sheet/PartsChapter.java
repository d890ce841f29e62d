package org.brakerules.harness.sheet;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.brakerules.harness.html.Markup;
import org.brakerules.harness.report.Wording;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.job.WheelEnd;

/** The picture of the parts, and the list that says the same in words. */
final class PartsChapter {

  private final Markup page;
  private final List<Decision> decisions;
  private final List<Mark> marks;

  PartsChapter(Markup page, List<Decision> decisions, List<Mark> marks) {
    this.page = page;
    this.decisions = decisions;
    this.marks = marks;
  }

  void write() {
    page.open("section").element("h2", "What becomes of each part");
    page.open("ul", "class", "parts");
    alike().forEach(this::parts);
    page.close();
    goesBack();
    page.close();
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
                i -> List.of(decisions.get(i).part().kind(), mark(i), why(i)),
                LinkedHashMap::new,
                Collectors.toList()))
        .values();
  }

  private Mark mark(int i) {
    return marks.get(i);
  }

  /** The gravest reason, as what to do and the rule that says so; no rule takes a good part out. */
  private List<String> why(int i) {
    if (mark(i) != Mark.of(decisions.get(i))) {
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
    if (!why(one).get(1).isEmpty()) {
      page.words(" " + why(one).get(0) + " ").element("span", why(one).get(1), "class", "rule");
    }
    page.close();
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
