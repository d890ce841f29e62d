package org.brakerules.internal.decide;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakerules.internal.engine.WhyNot;
import org.brakerules.internal.engine.WhyNot.Candidate;
import org.brakerules.internal.engine.WhyNot.Met;
import org.brakerules.internal.engine.WhyNot.Tried;
import org.brakerules.internal.fact.BeyondLimit;
import org.brakerules.internal.fact.Brake;
import org.brakerules.internal.table.Names;
import org.brakerules.internal.table.Property;
import org.brakerules.model.decision.Check;
import org.brakerules.model.decision.LimitInForce;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.Part;
import org.brakerules.model.reading.Reading;

/** Says in words which condition kept a rule from firing, with the values of the job. */
final class WhyNotFired {

  private static final Pattern CONSTANT = Pattern.compile("\\b[A-Z]\\w*\\.([A-Z][A-Z_]*)");

  private final List<InspectedPart> parts;

  WhyNotFired(List<InspectedPart> parts) {
    this.parts = parts;
  }

  /** The conditions that failed; empty if the rule fires. */
  Optional<String> inWords(WhyNot whyNot) {
    List<Met> failed = whyNot.failed();
    return failed.isEmpty()
        ? Optional.empty()
        : Optional.of(failed.stream().map(this::inWords).collect(Collectors.joining("; ")));
  }

  private String inWords(Met met) {
    String type = met.factType().getSimpleName();
    if (met.negated()) {
      return "there is a " + type + ", and the rule asks that there be none";
    }
    if (met.factType() == BeyondLimit.class) {
      return beyondLimit(met);
    }
    if (met.nearest().isEmpty()) {
      return "there is no " + type;
    }
    return met.nearest().stream()
        .map(WhyNotFired::conditions)
        .distinct()
        .collect(Collectors.joining("; "));
  }

  private String beyondLimit(Met met) {
    String checks =
        Stream.concat(
                limits(met),
                met.nearest().stream()
                    .filter(WhyNotFired::isOfItsLimit)
                    .map(WhyNotFired::conditions))
            .distinct()
            .collect(Collectors.joining("; "));
    return checks.isEmpty() ? "nothing is beyond the limit the rule names" : checks;
  }

  /** A reading beyond another limit says nothing about the one the rule names. */
  private static boolean isOfItsLimit(Candidate candidate) {
    return candidate.failed().stream().noneMatch(tried -> tried.properties().contains("limit"));
  }

  /** How the readings stand against the limit that the pattern names. */
  private Stream<String> limits(Met met) {
    return met.literals().stream().flatMap(this::checks).map(WhyNotFired::check);
  }

  private Stream<Check> checks(String limit) {
    return parts.stream()
        .flatMap(part -> part.checks().stream())
        .filter(check -> check.limitId().equals(limit));
  }

  private static String check(Check check) {
    String reading = check.reading().map(Reading::written).orElse("not measured");
    String limit = check.limit().map(LimitInForce::inWords).orElse("not known");
    String margin = check.margin().map(by -> " by " + by).orElse("");
    String what =
        Property.of(check.part().kind(), check.property())
            .map(Property::meaning)
            .orElse(check.property());
    return check.part().inWords()
        + ": "
        + what
        + " "
        + reading
        + ", limit "
        + limit
        + ", "
        + Names.of(check.status()).replace('-', ' ')
        + margin;
  }

  private static String conditions(Candidate candidate) {
    return candidate.failed().stream()
        .map(tried -> condition(tried, candidate.fact()))
        .collect(Collectors.joining(", "));
  }

  private static String condition(Tried tried, Object fact) {
    String actual =
        tried.properties().stream()
            .map(name -> actual(name, fact))
            .distinct()
            .collect(Collectors.joining(", "));
    return subject(fact) + ": " + actual + ", the rule wants " + wanted(tried);
  }

  /** The condition with its constants as words: {@code condition == as found}. */
  private static String wanted(Tried tried) {
    return CONSTANT
        .matcher(tried.text())
        .replaceAll(found -> found.group(1).toLowerCase(Locale.ROOT).replace('_', ' '));
  }

  private static String subject(Object fact) {
    if (fact instanceof Part part) {
      return part.place().inWords();
    }
    return fact instanceof BeyondLimit beyond
        ? beyond.check().part().inWords()
        : fact.getClass().getSimpleName();
  }

  private static String actual(String name, Object fact) {
    if (fact instanceof Part part) {
      return switch (name) {
        case "condition" -> "part is " + Names.of(part.condition()).replace('-', ' ');
        case "presence" -> "part is " + Names.of(part.presence());
        case "station" -> "part is at the " + part.station().inWords();
        default ->
            Property.of(part.partKind(), name)
                .map(property -> isNow(property, part))
                .orElse("another " + name);
      };
    }
    if (fact instanceof BeyondLimit beyond && name.equals("condition")) {
      return "part is " + Names.of(beyond.condition()).replace('-', ' ');
    }
    return fact instanceof Brake brake
        ? Property.of(Layout.class, name)
            .map(property -> isNow(property, brake.layout()))
            .orElse("another " + name)
        : "another " + name;
  }

  private static String isNow(Property property, Object holder) {
    return property.meaning()
        + " is "
        + Names.of((Enum<?>) property.valueOf(holder)).replace('-', ' ');
  }
}
