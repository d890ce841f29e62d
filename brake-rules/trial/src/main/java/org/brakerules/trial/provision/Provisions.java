package org.brakerules.trial.provision;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.brakerules.internal.table.RuleBaseFiles;
import org.brakerules.internal.table.Tables;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.base.RuleBaseReader;
import org.brakerules.trial.internal.written.WrittenRules;

/** Reads what a rule base lays down. */
public final class Provisions {

  private static final String RULES = "org/brakerules/rules";

  private Provisions() {}

  /**
   * Reads a rule base that the linter finds nothing wrong with.
   *
   * @param resources the folder with {@code org/brakerules/rules} in it
   * @return its provisions by kind and id, each id once
   * @throws IOException if there is none or it cannot be read
   */
  public static List<Provision> in(Path resources) throws IOException {
    RuleBase base = RuleBaseReader.read(resources);
    Tables tables = Tables.load(RuleBaseFiles.in(resources.resolve(RULES)));
    List<Provision> provisions = new ArrayList<>();
    base.rules().map(WrittenRules::of).map(RuleProvision::of).forEach(provisions::add);
    provisions.addAll(RowProvisions.limits(base.limits()));
    provisions.addAll(RowProvisions.points(base.points()));
    Stream.concat(LawProvisions.sources(tables), LawProvisions.ruleSets(tables))
        .forEach(provisions::add);
    provisions.sort(Comparator.comparing(Provision::kind).thenComparing(Provision::id));
    return List.copyOf(provisions);
  }
}
