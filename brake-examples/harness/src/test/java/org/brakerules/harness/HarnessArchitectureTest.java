package org.brakerules.harness;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The command line is a user of the library like any other. */
@AnalyzeClasses(packages = "org.brakerules", importOptions = DoNotIncludeTests.class)
class HarnessArchitectureTest {

  @ArchTest
  static final ArchRule nothing_but_the_trial_reaches_into_the_rules =
      noClasses()
          .that()
          .resideOutsideOfPackages(
              "org.brakerules",
              "org.brakerules.internal..",
              "..calc..",
              "org.brakerules.figure..",
              "org.brakerules.finalcheck..",
              "org.brakerules.parts..",
              "org.brakerules.record..",
              "org.brakerules.vehicle..",
              "org.brakerules.work..")
          .and()
          .resideOutsideOfPackages("org.brakerules.trial..", "org.brakerules.linter..")
          .and()
          .resideOutsideOfPackages("org.brakerules.rules..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.brakerules.internal..")
          .because("a user of the library has its public types only (ADR 0021)");

  @ArchTest
  static final ArchRule nothing_but_the_trial_reaches_into_the_linter =
      noClasses()
          .that()
          .resideOutsideOfPackages("org.brakerules.trial..", "org.brakerules.linter..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.brakerules.linter.internal..")
          .because("what an author sees of the linter is its problems");
}
