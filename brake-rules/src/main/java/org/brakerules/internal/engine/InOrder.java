package org.brakerules.internal.engine;

import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import org.drools.model.EntryPoint;
import org.drools.model.Global;
import org.drools.model.Model;
import org.drools.model.Query;
import org.drools.model.Rule;
import org.drools.model.TypeMetaData;

/** A compiled model with its rules in a chosen order; the build leaves them in no order at all. */
final class InOrder implements Model {

  private final Model model;
  private final List<Rule> rules;

  /** In the order of the rules' names. */
  InOrder(Model model) {
    this(model, Comparator.comparing(Rule::getName));
  }

  InOrder(Model model, Comparator<Rule> order) {
    this.model = model;
    this.rules = model.getRules().stream().sorted(order).toList();
  }

  /** Those of its rules that are chosen, in the order they have. */
  InOrder(Model model, Predicate<Rule> chosen) {
    this.model = model;
    this.rules = model.getRules().stream().filter(chosen).toList();
  }

  @Override
  public String getName() {
    return model.getName();
  }

  @Override
  public String getPackageName() {
    return model.getPackageName();
  }

  @Override
  public List<Rule> getRules() {
    return rules;
  }

  @Override
  @SuppressWarnings("rawtypes") // as the interface declares it
  public List<Global> getGlobals() {
    return model.getGlobals();
  }

  @Override
  public List<Query> getQueries() {
    return model.getQueries();
  }

  @Override
  public List<TypeMetaData> getTypeMetaDatas() {
    return model.getTypeMetaDatas();
  }

  @Override
  public List<EntryPoint> getEntryPoints() {
    return model.getEntryPoints();
  }
}
