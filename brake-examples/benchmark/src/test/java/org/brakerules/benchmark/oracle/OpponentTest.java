package org.brakerules.benchmark.oracle;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** An opponent who knows what the rule base knows is none. */
@AnalyzeClasses(packages = "org.brakerules.benchmark", importOptions = DoNotIncludeTests.class)
class OpponentTest {

  @ArchTest
  static final ArchRule THE_ORACLE_SHARES_THE_MODEL_AND_NOTHING_ELSE =
      classes()
          .that()
          .resideInAPackage("..benchmark.oracle..")
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage(
              "java..", "org.jspecify..", "org.brakerules.model..", "..benchmark.oracle..");
}
