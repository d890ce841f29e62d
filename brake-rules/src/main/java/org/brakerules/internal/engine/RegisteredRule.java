package org.brakerules.internal.engine;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Supplier;
import org.brakerules.internal.table.Names;
import org.brakerules.internal.table.RuleBaseException;
import org.brakerules.internal.table.SourceTable;
import org.brakerules.model.decision.Source;
import org.brakerules.model.decision.Verdict;
import org.brakerules.model.job.RuleSet;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.part.PartKind;
import org.jspecify.annotations.Nullable;

/** A rule of the register. Of its line only those cells are read that somebody asks for. */
final class RegisteredRule implements RuleText {

  /** What is asked of a rule again with every job in which it speaks, and so is read once. */
  private record Speech(
      Sentence because,
      Sentence action,
      List<Source> sources,
      Set<AxleKind> axleKinds,
      Map<Class<?>, List<String>> conditions) {}

  private final String line;
  private final SourceTable known;
  private final Supplier<Map<String, String>> files;
  private final String id;
  private final String title;
  private final PartKind subject;
  private final Verdict verdict;
  private volatile @Nullable Speech speech;

  /**
   * The rule of a line.
   *
   * @param known the sources it may cite
   * @param files the text of every rule by its id
   */
  RegisteredRule(String line, SourceTable known, Supplier<Map<String, String>> files) {
    this.line = line;
    this.known = known;
    this.files = files;
    this.id = cell(0);
    this.title = cell(1);
    this.subject = PartKind.byId(cell(2)).orElseThrow(this::isUnreadable);
    this.verdict = Names.find(Verdict.class, cell(3)).orElseThrow(this::isUnreadable);
  }

  @Override
  public String id() {
    return id;
  }

  @Override
  public String title() {
    return title;
  }

  @Override
  public PartKind subject() {
    return subject;
  }

  @Override
  public Verdict verdict() {
    return verdict;
  }

  @Override
  public Set<RuleSet> laws() {
    Set<RuleSet> laws = new HashSet<>();
    list(4).forEach(law -> laws.add(new RuleSet(law)));
    return laws;
  }

  @Override
  public List<String> readsBeside() {
    return list(5);
  }

  @Override
  public Sentence because() {
    return speech().because();
  }

  @Override
  public Sentence action() {
    return speech().action();
  }

  @Override
  public List<Source> sources() {
    return speech().sources();
  }

  private Speech speech() {
    Speech made = speech;
    if (made == null) {
      made =
          new Speech(
              new Sentence(cell(6)),
              new Sentence(cell(7)),
              readSources(),
              readAxleKinds(),
              readConditions());
      speech = made;
    }
    return made;
  }

  private List<Source> readSources() {
    List<Source> sources = new ArrayList<>();
    for (String citation : list(8)) {
      sources.add(known.find(citation).orElseThrow(this::isUnreadable));
    }
    return List.copyOf(sources);
  }

  @Override
  public List<String> reads() {
    return list(9);
  }

  @Override
  public Set<AxleKind> axleKinds() {
    return speech().axleKinds();
  }

  private Set<AxleKind> readAxleKinds() {
    Set<AxleKind> kinds = new HashSet<>();
    for (String name : list(10)) {
      kinds.add(Names.find(AxleKind.class, name).orElseThrow(this::isUnreadable));
    }
    return kinds;
  }

  @Override
  public Map<Class<?>, List<String>> conditions() {
    return speech().conditions();
  }

  private Map<Class<?>, List<String>> readConditions() {
    Map<Class<?>, List<String>> conditions = new LinkedHashMap<>();
    for (String condition : list(11)) {
      int colon = condition.indexOf(':');
      conditions.put(
          fact(condition.substring(0, colon)), parted(condition.substring(colon + 1), ','));
    }
    return conditions;
  }

  private Class<?> fact(String name) {
    try {
      return Class.forName(name);
    } catch (ClassNotFoundException e) {
      throw isUnreadable();
    }
  }

  @Override
  public String text() {
    return Objects.requireNonNull(files.get().get(id));
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof RegisteredRule that && line.equals(that.line);
  }

  @Override
  public int hashCode() {
    return id.hashCode();
  }

  @Override
  public String toString() {
    return id + " " + title;
  }

  private List<String> list(int number) {
    return parted(cell(number), ';');
  }

  private String cell(int number) {
    int from = 0;
    for (int before = 0; before < number; before++) {
      from = line.indexOf('\t', from) + 1;
    }
    int end = line.indexOf('\t', from);
    return end < 0 ? line.substring(from) : line.substring(from, end);
  }

  private static List<String> parted(String list, char by) {
    if (list.isEmpty()) {
      return List.of();
    }
    List<String> entries = new ArrayList<>();
    int from = 0;
    for (int end = list.indexOf(by); end >= 0; end = list.indexOf(by, from)) {
      entries.add(list.substring(from, end));
      from = end + 1;
    }
    entries.add(list.substring(from));
    return entries;
  }

  private RuleBaseException isUnreadable() {
    return new RuleBaseException("The register of rules cannot be read: " + line);
  }
}
