package org.brakerules.benchmark.oracle;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The opponent lies beside what measures the rules, and must not look at them. */
@AnalyzeClasses(
    packages = "org.brakerules.benchmark.oracle",
    importOptions = ImportOption.DoNotIncludeTests.class)
class OracleStandsAloneTest {

  @ArchTest
  static final ArchRule ORACLE_KNOWS_THE_MODEL_AND_NOTHING_ELSE =
      classes()
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage(
              "java..",
              "org.jspecify.annotations",
              "org.brakerules.model..",
              "org.brakerules.benchmark.oracle");
}
