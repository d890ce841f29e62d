package org.brakerules.trial;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.brakerules.internal.rule.WrittenRule;
import org.brakerules.internal.table.CsvTable;
import org.brakerules.internal.table.Row;
import org.brakerules.internal.table.RuleBaseException;
import org.brakerules.internal.table.RuleBaseFiles;
import org.brakerules.internal.table.Tables;
import org.brakerules.trial.internal.change.Names;

/**
 * Changes a rule base on purpose, one small change at a time, and asks its cases whether they
 * notice. A change that no case notices is one that anybody could make unseen.
 */
public final class MutationTrial {

  private final Path resources;
  private final List<WrittenRule> rules;
  private final Tables tables;
  private final List<TrialCase> cases;
  private final Names names;
  private final RuleBaseFiles files;

  private MutationTrial(
      Path resources,
      List<WrittenRule> rules,
      Tables tables,
      Collection<? extends TrialCase> cases) {
    this.resources = resources;
    this.rules = rules;
    this.tables = tables;
    this.cases = List.copyOf(cases);
    this.files = RuleBaseFiles.in(resources.resolve(TrialRules.RULES));
    this.names =
        new Names(
            List.copyOf(tables.limits().ids()),
            tables.points().points().stream().map(point -> point.id()).toList());
  }

  /**
   * Reads a rule base that the linter finds nothing wrong with.
   *
   * @param resources the folder with {@code org/brakerules/rules} in it
   * @param cases its cases, all of which come out as expected
   * @throws IOException if there is none or it cannot be read
   */
  public static MutationTrial of(Path resources, Collection<? extends TrialCase> cases)
      throws IOException {
    Tables tables = Tables.load(RuleBaseFiles.in(resources.resolve(TrialRules.RULES)));
    return new MutationTrial(resources, TrialRules.rules(resources), tables, cases);
  }

  /**
   * Tries every change of the rules and limits of one component.
   *
   * @throws IOException if its table of equivalent changes cannot be read
   */
  public MutationResult of(String component) throws IOException {
    RuleMutations ofRules = new RuleMutations(resources, rules, component, names, cases);
    LimitMutations ofLimits = new LimitMutations(resources, tables, cases);
    List<Mutant> survivors = new ArrayList<>(ofRules.survivors());
    survivors.addAll(ofLimits.survivors(component, ofRules.base()));
    return MutationResult.of(
        component,
        ofRules.tried() + ofLimits.tried(),
        ofLimits.refused(),
        survivors,
        equivalent(component));
  }

  private List<EquivalentChange> equivalent(String component) throws IOException {
    String table = component + "/" + component + ".equivalent-changes.csv";
    try {
      return files.open(table).map(in -> CsvTable.read(table, in)).orElse(List.of()).stream()
          .map(MutationTrial::equivalent)
          .toList();
    } catch (RuleBaseException mistake) {
      throw new IOException(mistake.getMessage(), mistake);
    }
  }

  private static EquivalentChange equivalent(Row row) {
    return new EquivalentChange(row.required("of"), row.required("change"), row.required("reason"));
  }
}
