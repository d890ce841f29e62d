package org.brakerules.harness;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import org.brakerules.harness.JavaProcess.Answer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A program with a module of its own that asks the rules, with every jar on the module path. */
class ModulePathIT {

  /** The jars the rules need at run time; the linter and its parser are not among them. */
  private static final Pattern RUN_TIME =
      Pattern.compile(
          "(brake-model|brake-rules|jackson-(annotations|core|databind|dataformat-csv)"
              + "|kie-(api|internal|memory-compiler)"
              + "|drools-(base|canonical-model|core|kiesession|model-compiler|util|wiring-api"
              + "|wiring-static)|slf4j-(api|nop))-[0-9].*\\.jar");

  private static final String MODULE =
      """
      module shop {
        requires org.brakerules.model;
        requires org.brakerules.rules;
      }
      """;

  private static final String PROGRAM =
      """
      package shop;

      import java.nio.file.Path;
      import org.brakerules.BrakeRules;
      import org.brakerules.model.decision.Decision;
      import org.brakerules.model.json.JobReader;

      public class Shop {
        public static void main(String[] args) {
          BrakeRules rules = BrakeRules.standard();
          for (Decision one : rules.decide(JobReader.read(Path.of(args[0]))).decisions()) {
            System.out.println(one.part() + " " + one.disposition());
          }
          System.out.println(rules.getClass().getModule());
        }
      }
      """;

  @TempDir private Path folder;

  @Test
  void module_of_its_own_gets_decisions() throws Exception {
    Path classes = compile();

    Answer answer =
        new JavaProcess(folder)
            .run(
                "-p",
                modulePath() + File.pathSeparator + classes,
                // Automatic modules do not say which named modules they need.
                "--add-modules",
                "ALL-MODULE-PATH",
                "-m",
                "shop/shop.Shop",
                DemoJob.WORN_CAMSHAFT.file().toAbsolutePath().toString());

    assertThat(answer.err()).isEmpty();
    assertThat(answer.out().lines())
        .contains("axle2/right/camshaft REPLACE", "axle2/right/drum UNDECIDED")
        .endsWith("module org.brakerules.rules");
    assertThat(answer.exitCode()).isZero();
  }

  private Path compile() throws IOException {
    Path module = Files.writeString(folder.resolve("module-info.java"), MODULE);
    Path program =
        Files.writeString(
            Files.createDirectory(folder.resolve("shop")).resolve("Shop.java"), PROGRAM);
    Path classes = Files.createDirectory(folder.resolve("classes"));
    List<String> args =
        List.of(
            "-p", modulePath(), "-d", classes.toString(), module.toString(), program.toString());

    int result =
        ToolProvider.getSystemJavaCompiler().run(null, null, null, args.toArray(String[]::new));

    assertThat(result).isZero();
    return classes;
  }

  private static String modulePath() {
    String classPath =
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    return Stream.of(classPath.split(File.pathSeparator))
        .filter(entry -> RUN_TIME.matcher(Path.of(entry).getFileName().toString()).matches())
        .collect(Collectors.joining(File.pathSeparator));
  }
}
