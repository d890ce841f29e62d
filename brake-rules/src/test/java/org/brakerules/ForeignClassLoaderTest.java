package org.brakerules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.layout.CamshaftLayout;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.Scope;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.WheelEndPath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The rule base inside a host application that gives its threads a class loader of its own. */
class ForeignClassLoaderTest {

  /** Run by a class loader that has loaded nothing before. */
  public static final class FirstDecision implements Callable<Integer> {
    @Override
    public Integer call() {
      BrakeJob job =
          BrakeJob.builder()
              .date(LocalDate.of(2026, 11, 20))
              .ruleSet("us-federal")
              .scope(Scope.CAMSHAFT_OUT)
              .wheelEnd(WheelEndPath.of(2, Side.LEFT), Layout.of(CamshaftLayout.TUBE).build())
              .build();
      return BrakeRules.standard().decide(job).decisions().size();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"none", "one that knows no engine", "one with an engine of its own"})
  void first_decision_under_the_class_loader_of_a_host(String ofHost) throws Exception {
    try (URLClassLoader ofProgram = fresh();
        URLClassLoader another = fresh()) {
      Callable<?> first =
          (Callable<?>)
              ofProgram
                  .loadClass(FirstDecision.class.getName())
                  .getDeclaredConstructor()
                  .newInstance();
      ClassLoader context =
          switch (ofHost) {
            case "none" -> null;
            case "one that knows no engine" -> ClassLoader.getPlatformClassLoader();
            default -> another;
          };

      assertThat(under(context, first)).isEqualTo(new FirstDecision().call());
    }
  }

  @Test
  void thread_of_a_host_keeps_its_class_loader() throws Exception {
    ClassLoader ofHost = ClassLoader.getPlatformClassLoader();

    assertThat(
            under(
                ofHost,
                () -> {
                  new FirstDecision().call();
                  return Thread.currentThread().getContextClassLoader();
                }))
        .isSameAs(ofHost);
  }

  private static Object under(ClassLoader context, Callable<?> work) throws Exception {
    Thread thread = Thread.currentThread();
    ClassLoader own = thread.getContextClassLoader();
    thread.setContextClassLoader(context);
    try {
      return work.call();
    } finally {
      thread.setContextClassLoader(own);
    }
  }

  /** Everything once more, shared with nobody. */
  private static URLClassLoader fresh() throws IOException {
    List<URL> path = new ArrayList<>();
    for (String entry : System.getProperty("java.class.path").split(File.pathSeparator)) {
      path.add(url(entry));
    }
    return new URLClassLoader(path.toArray(new URL[0]), ClassLoader.getPlatformClassLoader());
  }

  private static URL url(String entry) throws MalformedURLException {
    return Path.of(entry).toUri().toURL();
  }
}
