package org.brakerules.linter.internal.check;

import java.util.Collection;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.Comparison;
import org.brakerules.linter.internal.base.Comparison.ValueKind;
import org.brakerules.linter.internal.base.Pattern;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.text.Token;
import org.brakerules.model.reading.Station;

/** A part is only ever at the stations of its kind, and parts joined by station share one. */
final class StationCheck implements RuleCheck {

  @Override
  public void check(AuthoredRule rule, RuleBase base, Findings findings) {
    Whereabouts whereabouts = new Whereabouts(base);
    Map<String, Set<Station>> named = new HashMap<>();
    for (Pattern pattern : rule.patterns()) {
      whereabouts
          .stations(pattern)
          .ifPresent(stations -> check(rule, pattern, stations, named, findings));
    }
  }

  private static void check(
      AuthoredRule rule,
      Pattern pattern,
      Set<Station> ofKind,
      Map<String, Set<Station>> named,
      Findings findings) {
    Set<Station> possible = EnumSet.copyOf(ofKind);
    possible.retainAll(Whereabouts.demandedStations(pattern));
    for (Comparison one : Whereabouts.demanded(pattern, Whereabouts.STATION).toList()) {
      Set<Station> there = named.get(one.valueText());
      if (one.valueKind() == ValueKind.CONSTANT && possible.isEmpty()) {
        addNowhere(rule, pattern, one, ofKind, findings);
      } else if (there != null && there.stream().noneMatch(possible::contains)) {
        addApart(rule, pattern, one.value().get(0), there, possible, findings);
      }
    }
    pattern.constraints().stream()
        .flatMap(constraint -> constraint.binding().stream())
        .filter(binding -> binding.property().is(Whereabouts.STATION))
        .forEach(binding -> named.put(binding.variable().text(), possible));
  }

  private static void addNowhere(
      AuthoredRule rule,
      Pattern pattern,
      Comparison station,
      Set<Station> ofKind,
      Findings findings) {
    List<String> stations = ofKind.stream().map(one -> "Station." + one.name()).toList();
    findings.add(
        LintKind.NEVER_THERE,
        rule,
        station.value().get(0),
        pattern.type() + " is never at " + station.valueText() + ", so the pattern matches nothing",
        Remedy.known(station.valueText(), stations, Remedy.oneOf(stations)));
  }

  private static void addApart(
      AuthoredRule rule,
      Pattern pattern,
      Token variable,
      Collection<Station> there,
      Collection<Station> here,
      Findings findings) {
    findings.add(
        LintKind.NEVER_THERE,
        rule,
        variable,
        "%s is %s and %s is %s, so the two never meet"
            .formatted(variable.text(), inWords(there), pattern.type(), inWords(here)),
        "leave the station out, or name parts at the same stations");
  }

  private static String inWords(Collection<Station> stations) {
    return stations.stream().map(Station::inWords).collect(Collectors.joining(" or "));
  }
}
