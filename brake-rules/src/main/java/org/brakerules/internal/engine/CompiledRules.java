package org.brakerules.internal.engine;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.brakerules.internal.table.RuleBaseException;
import org.drools.core.impl.RuleBaseFactory;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.KieBaseConfiguration;
import org.kie.api.conf.KieBaseMutabilityOption;

/**
 * Loads the rules as the build compiled them, by the class loader of this class alone. A host
 * application with rules of its own, or with an odd context class loader, cannot get in the way.
 */
final class CompiledRules {

  /** Written by the build: the version of the rule compiler, and the classes it made. */
  private static final String INDEX = "/META-INF/kie/org.brakerules/brake-rules/drools-model";

  private static final String VERSION = "Drools-Model-Version:";

  private CompiledRules() {}

  static List<Model> models() {
    List<Model> models = new ArrayList<>();
    for (String line : index()) {
      if (!line.startsWith(VERSION)) {
        models.add(model(line));
      }
    }
    return models.stream().map(InOrder::new).map(Model.class::cast).toList();
  }

  /** The rule base for the engine; never changed once built, which spares it its locks. */
  static KieBase ruleBase(List<Model> models) {
    return OwnClassLoader.with(() -> built(models));
  }

  private static KieBase built(List<Model> models) {
    KieBaseConfiguration configuration = RuleBaseFactory.newKnowledgeBaseConfiguration();
    configuration.setOption(KieBaseMutabilityOption.DISABLED);
    return KieBaseBuilder.createKieBaseFromModel(models, configuration);
  }

  private static List<String> index() {
    try (InputStream in = CompiledRules.class.getResourceAsStream(INDEX)) {
      if (in == null) {
        throw new RuleBaseException("The compiled rules are missing: " + INDEX);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .map(String::strip)
          .filter(line -> !line.isEmpty())
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Model model(String className) {
    try {
      Class<?> type = Class.forName(className, true, CompiledRules.class.getClassLoader());
      return (Model) type.getDeclaredConstructor().newInstance();
    } catch (ReflectiveOperationException e) {
      throw new RuleBaseException("The compiled rules cannot be loaded: " + className, e);
    }
  }
}
