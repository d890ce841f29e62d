package org.brakerules.harness.sheet;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakerules.calc.Working;
import org.brakerules.harness.html.Markup;
import org.brakerules.model.decision.Caution;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.job.WheelEnd;
import org.brakerules.model.layout.CamshaftLayout;
import org.brakerules.model.part.CamshaftSeal;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.parts.WheelEndParts;
import org.brakerules.work.Stop;
import org.brakerules.work.WorkStep;

/**
 * The page of one wheel end, in the order in which it is used at the bench: what becomes of each
 * part, what to order, how the seals and shims go in, the steps with room to sign, and what it all
 * rests on.
 */
final class WheelEndSheet {

  private static final String SHIMS = "end-play.shims";

  /** So few leave room for larger letters on paper. */
  private static final int FEW_STEPS = 25;

  private final SheetMaterial material;
  private final WheelEnd wheelEnd;
  private final List<Decision> decisions;
  private final Markup page = new Markup();

  private WheelEndSheet(SheetMaterial material, WheelEnd wheelEnd) {
    this.material = material;
    this.wheelEnd = wheelEnd;
    this.decisions =
        material.decision().decisions().stream()
            .filter(one -> one.part().wheelEnd().equals(wheelEnd.path()))
            .toList();
  }

  /** The page as a document of its own. */
  static String of(SheetMaterial material, WheelEnd wheelEnd) {
    WheelEndSheet sheet = new WheelEndSheet(material, wheelEnd);
    sheet.write();
    return "<!DOCTYPE html>\n" + sheet.page;
  }

  private WheelEndPath path() {
    return wheelEnd.path();
  }

  private void write() {
    page.open("html", "lang", "en", "xmlns", "http://www.w3.org/1999/xhtml");
    page.open("head")
        .empty("meta", "charset", "utf-8")
        .empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1")
        .element("title", path() + ": work on the brake")
        .element("style", SheetStyle.TEXT)
        .close();
    page.open("body", "class", steps().size() > FEW_STEPS ? "" : "few").open("main");
    head();
    Standstill standstill = new Standstill(material.plan(), path());
    new StopChapter(page, standstill).write(stop());
    otherEnd();
    PartsChapter chapter =
        new PartsChapter(
            page,
            new BenchDecisions(decisions, parts(), shims()).all(),
            new Marks(shims(), parts(), wheelEnd).of(decisions),
            steps());
    pictures(chapter);
    chapter.write();
    parts().ifPresent(parts -> new OrderChapter(page, parts, shimsAtHand(), undecided()).write());
    cautions();
    List<String> told =
        Stream.concat(
                stop().flatMap(stop -> stop.why().stream()),
                decisions.stream().flatMap(WheelEndSheet::asDetail))
            .toList();
    new StepsChapter(page, steps(), material.plan().cautions(), told, standstill.leaves()).write();
    new ProvenanceChapter(page, material, decisions).write(chapter.rules());
    page.closeTo("html");
  }

  /** The gravest reason stands in the list of parts; a step need not repeat it. */
  private static Stream<String> asDetail(Decision decision) {
    return decision.reasons().stream()
        .limit(1)
        .map(why -> decision.part().inWords() + ": " + why.action() + " (" + why.rule() + ")");
  }

  private void head() {
    page.element("h1", "Brake of " + path());
    page.open("dl", "class", "head");
    fact("Job", material.decision().reference());
    fact("Inspected", material.decision().date().toString());
    fact("Rule set", material.decision().ruleSet().toString());
    fact("Rule base", ProvenanceChapter.version(material.decision().ruleBase()));
    blank("Work done by");
    blank("Qualified for brake work by");
    blank("Checked by, on");
    page.close();
    page.element(
        "p",
        "Advice for a qualified brake technician. The maker's manual and the law where the vehicle"
            + " runs decide. Tightening torques are the maker's.",
        "class",
        "note");
  }

  private void fact(String name, String value) {
    if (!value.isEmpty()) {
      page.open("div").element("dt", name).element("dd", value).close();
    }
  }

  private void blank(String name) {
    page.open("div").element("dt", name).element("dd", "", "class", "blank").close();
  }

  private Stream<Stop> stop() {
    return material.plan().stops().stream().filter(stop -> stop.wheelEnd().equals(path()));
  }

  /** Whoever has this page alone must learn from it that the axle is not done with this end. */
  private void otherEnd() {
    material.plan().otherEnds().stream()
        .filter(end -> end.wheelEnd().equals(path().partner()))
        .forEach(end -> page.open("p").element("strong", end.inWords()).close());
  }

  private Set<Place> undecided() {
    return decisions.stream()
        .filter(one -> one.disposition() == Disposition.UNDECIDED)
        .map(Decision::part)
        .collect(Collectors.toSet());
  }

  private void pictures(PartsChapter chapter) {
    page.open("section").element("h2", "The brake, and the right way round");
    page.open("div", "class", "pictures").open("div");
    chapter.picture(wheelEnd);
    page.close().open("div");
    CamshaftLayout layout = wheelEnd.layout().camshaft();
    new CamshaftPicture(layout, new SealDirections(layout, seals())).draw(page, "camshaft");
    shims()
        .filter(ShimAnswer::isOpenOrChanges)
        .ifPresent(shims -> new EndPlayPicture(shims).draw(page, "end-play"));
    page.element("p", CamTurn.inWords(wheelEnd.layout().camshaftHand()), "class", "note");
    page.closeTo("section");
  }

  private List<CamshaftSeal> seals() {
    return wheelEnd.parts().stream()
        .filter(CamshaftSeal.class::isInstance)
        .map(CamshaftSeal.class::cast)
        .toList();
  }

  /** One stack at most: a brake has its shims at the adjuster end. */
  private Optional<Working> shims() {
    return material.figures().wheelEnds().stream()
        .filter(figures -> figures.wheelEnd().equals(path()))
        .flatMap(figures -> figures.figures().stream())
        .map(figure -> figure.working())
        .filter(working -> working.id().equals(SHIMS))
        .findFirst();
  }

  private Optional<String> shimsAtHand() {
    return shims().flatMap(ShimAnswer::putIn);
  }

  private Optional<WheelEndParts> parts() {
    return material.parts().wheelEnds().stream()
        .filter(parts -> parts.wheelEnd().equals(path()))
        .findFirst();
  }

  private List<WorkStep> steps() {
    return material.plan().forWheelEnd(path());
  }

  private void cautions() {
    page.open("section", "class", "cautions")
        .element("h2", "Cautions, called at the steps by their numbers");
    page.open("ol");
    material.plan().cautions().stream()
        .map(Caution::text)
        .forEach(text -> page.element("li", text));
    page.closeTo("section");
  }
}
