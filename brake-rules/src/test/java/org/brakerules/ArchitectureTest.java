package org.brakerules;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitCallTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.JavaPackage;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.core.importer.Location;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

/** Who may know whom, read from the compiled classes of the model and the rules. */
@AnalyzeClasses(
    packages = "org.brakerules",
    importOptions = {DoNotIncludeTests.class, ArchitectureTest.NoCompiledRules.class})
class ArchitectureTest {

  private static final String[] DROOLS = {"org.drools..", "org.kie.."};
  private static final String JACKSON = "com.fasterxml.jackson..";

  /** The rule files become classes of the engine's own style; they are no architecture. */
  static final class NoCompiledRules implements ImportOption {
    @Override
    public boolean includes(Location location) {
      return !location.contains("/org/brakerules/rules/");
    }
  }

  @ArchTest
  static final ArchRule only_the_engine_package_knows_the_rule_engine =
      noClasses()
          .that()
          .resideOutsideOfPackage("..internal.engine..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(DROOLS);

  @ArchTest
  static final ArchRule no_public_signature_shows_the_rule_engine =
      classes()
          .that()
          .arePublic()
          .and()
          .resideOutsideOfPackage("..internal.engine..")
          .should(showNothingFrom(resideInAnyPackage(DROOLS)));

  @ArchTest
  static final ArchRule no_public_signature_of_the_engine_package_shows_it_either =
      classes()
          .that()
          .arePublic()
          .and()
          .resideInAPackage("..internal.engine..")
          .should(showNothingFrom(resideInAnyPackage(DROOLS)));

  @ArchTest
  static final ArchRule no_public_signature_shows_the_json_library =
      classes().that().arePublic().should(showNothingFrom(resideInAPackage(JACKSON)));

  @ArchTest
  static final ArchRule the_model_knows_no_rules =
      noClasses()
          .that()
          .resideInAPackage("org.brakerules.model..")
          .should()
          .dependOnClassesThat(
              resideInAPackage("org.brakerules..")
                  .and(DescribedPredicate.not(resideInAPackage("org.brakerules.model.."))));

  @ArchTest
  static final ArchRule the_model_knows_no_rule_engine =
      noClasses()
          .that()
          .resideInAPackage("org.brakerules.model..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(DROOLS);

  @ArchTest
  static final ArchRule tables_know_nothing_of_checks_engine_and_decisions =
      noClasses()
          .that()
          .resideInAPackage("..internal.table..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("..internal.check..", "..internal.engine..", "..internal.decide..");

  @ArchTest
  static final ArchRule checks_know_nothing_of_engine_and_decisions =
      noClasses()
          .that()
          .resideInAPackage("..internal.check..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("..internal.engine..", "..internal.decide..");

  /** A limit compared in floating point fails readings that equal it. */
  @ArchTest
  static final ArchRule nothing_is_decided_in_floating_point =
      classes()
          .that()
          .resideInAnyPackage(
              "org.brakerules.calc",
              "org.brakerules.calc.kit..",
              "org.brakerules.calc.play..",
              "org.brakerules.calc.shim..",
              "org.brakerules.calc.stroke..",
              "org.brakerules.calc.trust..",
              "org.brakerules.calc.wear..",
              "org.brakerules.figure..",
              "org.brakerules.parts..",
              "..internal.parts..",
              "..internal.figure..",
              "org.brakerules.vehicle..",
              "..internal.vehicle..",
              "org.brakerules.finalcheck..",
              "..internal.finalcheck..",
              "org.brakerules.work..",
              "..internal.work..",
              "..internal.check..",
              "..internal.decide..",
              "..internal.fact..",
              "..internal.table..",
              "org.brakerules.limit..",
              "org.brakerules.model.decision..",
              "org.brakerules.model.quantity..",
              "org.brakerules.model.reading..")
          .should(useNoFloatingPoint());

  @ArchTest
  static final ArchRule public_classes_cannot_be_extended =
      classes()
          .that()
          .arePublic()
          .and()
          .resideInAnyPackage(
              "org.brakerules",
              "org.brakerules.compare..",
              "org.brakerules.finalcheck..",
              "org.brakerules.limit..",
              "org.brakerules.model..",
              "org.brakerules.parts..",
              "org.brakerules.record..",
              "org.brakerules.vehicle..",
              "org.brakerules.work..")
          .and()
          .areNotInterfaces()
          .and()
          .areNotEnums()
          .and()
          .haveSimpleNameNotEndingWith("Builder")
          .should()
          .haveModifier(JavaModifier.FINAL);

  @ArchTest
  static void every_package_is_null_marked(JavaClasses all) {
    List<String> unmarked =
        all.stream()
            .map(JavaClass::getPackage)
            .distinct()
            .filter(one -> !one.isAnnotatedWith(NullMarked.class))
            .map(JavaPackage::getName)
            .toList();
    assertThat(unmarked).isEmpty();
  }

  @Test
  void the_search_for_floating_point_finds_it() {
    assertThat(isFloating("double")).isTrue();
    assertThat(isFloating("[F")).isTrue();
    assertThat(isFloating(Double.class.getName())).isTrue();
    assertThat(isFloating("long")).isFalse();
  }

  private static ArchCondition<JavaClass> showNothingFrom(DescribedPredicate<JavaClass> hidden) {
    return new ArchCondition<>("show nothing from " + hidden.getDescription()) {
      @Override
      public void check(JavaClass shown, ConditionEvents events) {
        if (isEnclosedByHidden(shown)) {
          return;
        }
        Stream<JavaCodeUnit> units =
            shown.getCodeUnits().stream().filter(ArchitectureTest::isVisible);
        units
            .flatMap(
                unit ->
                    Stream.of(
                            unit.getAllInvolvedRawTypes().stream(),
                            unit.getExceptionTypes().stream())
                        .flatMap(types -> types))
            .filter(hidden)
            .forEach(type -> violated(events, shown, type.getName()));
        shown.getFields().stream()
            .filter(ArchitectureTest::isVisible)
            .flatMap(field -> field.getAllInvolvedRawTypes().stream())
            .filter(hidden)
            .forEach(type -> violated(events, shown, type.getName()));
        Stream.concat(shown.getAllRawInterfaces().stream(), shown.getAllRawSuperclasses().stream())
            .filter(hidden)
            .forEach(type -> violated(events, shown, type.getName()));
      }
    };
  }

  /** A public class inside one that is not cannot be reached from outside. */
  private static boolean isEnclosedByHidden(JavaClass shown) {
    return shown
        .getEnclosingClass()
        .map(
            outer ->
                !outer.getModifiers().contains(JavaModifier.PUBLIC) || isEnclosedByHidden(outer))
        .orElse(false);
  }

  private static boolean isVisible(JavaMember member) {
    return member.getModifiers().contains(JavaModifier.PUBLIC)
        || member.getModifiers().contains(JavaModifier.PROTECTED);
  }

  private static ArchCondition<JavaClass> useNoFloatingPoint() {
    return new ArchCondition<>("use no floating point") {
      @Override
      public void check(JavaClass judged, ConditionEvents events) {
        for (JavaField field : judged.getFields()) {
          refuse(field.getAllInvolvedRawTypes(), judged, field.getFullName(), events);
        }
        for (JavaCodeUnit unit : judged.getCodeUnits()) {
          refuse(unit.getAllInvolvedRawTypes(), judged, unit.getFullName(), events);
          for (JavaAccess<?> access : unit.getAccessesFromSelf()) {
            if (access.getTarget() instanceof CodeUnitCallTarget called) {
              Set<JavaClass> types = new HashSet<>(called.getRawParameterTypes());
              types.add(called.getRawReturnType());
              types.add(called.getOwner());
              refuse(types, judged, access.getDescription(), events);
            }
          }
        }
      }
    };
  }

  private static void refuse(
      Set<JavaClass> types, JavaClass judged, String where, ConditionEvents events) {
    types.stream()
        .filter(type -> isFloating(type.getName()))
        .forEach(type -> violated(events, judged, type.getName() + " in " + where));
  }

  private static boolean isFloating(String type) {
    return Set.of("double", "float", "[D", "[F", "java.lang.Double", "java.lang.Float")
        .contains(type);
  }

  private static void violated(ConditionEvents events, JavaClass judged, String what) {
    events.add(SimpleConditionEvent.violated(judged, judged.getName() + ": " + what));
  }
}
