package org.brakerules.internal.engine;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.brakerules.internal.RuleBase;
import org.brakerules.internal.table.Fingerprint;
import org.brakerules.internal.table.RuleBaseFiles;
import org.brakerules.internal.table.Tables;
import org.drools.model.Model;
import org.drools.model.impl.ModelImpl;
import org.kie.api.KieBase;
import org.kie.api.conf.KieBaseMutabilityOption;
import org.kie.api.io.ResourceType;
import org.kie.internal.utils.KieHelper;

/**
 * The same rule files in other ways. It lies in the package of the engine, whose doors are shut to
 * everybody else.
 */
public final class OtherWays {

  private static final Tables TABLES = Tables.load();

  private OtherWays() {}

  /** The way of this project: compiled by the build, sessions kept. */
  public static RuleBase keptSessions() {
    return ruleBase(RuleEngine.load(TABLES));
  }

  /** A new session for every job, told of every fact. */
  public static RuleBase newSessions() {
    KieBase compiled = CompiledRules.ruleBase(CompiledRules.models());
    return ruleBase(
        RuleEngine.load(TABLES).in(new SessionPool(compiled, FactSieve.Sifted::all, false)));
  }

  /** The text of the rules compiled when the program starts; sessions kept, told of every fact. */
  public static RuleBase compiledAtStart() {
    return ruleBase(RuleEngine.load(TABLES).in(new SessionPool(compile(), FactSieve.Sifted::all)));
  }

  /** Some of the rules, and nothing around them. */
  public static RuleEngine only(Set<String> ids) {
    ModelImpl some = new ModelImpl("org.brakerules.rules");
    Model all = CompiledRules.models().get(0);
    all.getGlobals().forEach(some::addGlobal);
    all.getRules().stream().filter(rule -> ids.contains(Variant.id(rule))).forEach(some::addRule);
    return RuleEngine.of(List.of(some), TABLES, RuleBaseFiles.ofThisArtifact());
  }

  /** What these rules say of some parts. */
  public static Set<Said> fire(RuleEngine engine, List<?> parts) {
    Set<Said> said = new HashSet<>();
    for (Finding finding : engine.fire(parts)) {
      said.add(new Said(finding.rule().id(), finding.verdict(), finding.part().place()));
    }
    return said;
  }

  private static RuleBase ruleBase(RuleEngine engine) {
    return new RuleBase(TABLES, engine, Fingerprint.ofRuleBase());
  }

  private static KieBase compile() {
    KieHelper texts = new KieHelper();
    for (String component : Tables.components()) {
      Tables.open(Tables.file(component, "drl"))
          .ifPresent(file -> texts.addContent(read(file), ResourceType.DRL));
    }
    return texts.build(KieBaseMutabilityOption.DISABLED);
  }

  private static String read(InputStream opened) {
    try (InputStream in = opened) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
