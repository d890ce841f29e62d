package org.brakerules.linter.internal.base;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.brakerules.linter.internal.text.SourceText;
import org.drools.drl.ast.descr.AccumulateDescr;
import org.drools.drl.ast.descr.AndDescr;
import org.drools.drl.ast.descr.BaseDescr;
import org.drools.drl.ast.descr.CollectDescr;
import org.drools.drl.ast.descr.ConditionalBranchDescr;
import org.drools.drl.ast.descr.EntryPointDescr;
import org.drools.drl.ast.descr.EvalDescr;
import org.drools.drl.ast.descr.ExistsDescr;
import org.drools.drl.ast.descr.ExprConstraintDescr;
import org.drools.drl.ast.descr.ForallDescr;
import org.drools.drl.ast.descr.GroupByDescr;
import org.drools.drl.ast.descr.NamedConsequenceDescr;
import org.drools.drl.ast.descr.NotDescr;
import org.drools.drl.ast.descr.OrDescr;
import org.drools.drl.ast.descr.PatternDescr;
import org.drools.drl.ast.descr.PatternSourceDescr;
import org.drools.drl.ast.descr.RuleDescr;

/** Turns the parsed conditions of a rule into patterns; what is no pattern is kept by name. */
final class ConditionReader {

  private final SourceText source;
  private final RuleBlock block;
  private final List<Pattern> patterns = new ArrayList<>();
  private final List<Construct> constructs = new ArrayList<>();

  private ConditionReader(SourceText source, RuleBlock block) {
    this.source = source;
    this.block = block;
  }

  static Conditions read(SourceText source, RuleBlock block, RuleDescr rule) {
    ConditionReader reader = new ConditionReader(source, block);
    for (BaseDescr child : rule.getLhs().getDescrs()) {
      reader.read(child);
    }
    return new Conditions(reader.patterns, reader.constructs);
  }

  private void read(BaseDescr descr) {
    if (descr instanceof PatternDescr pattern) {
      readPattern(pattern, false, offset(pattern));
    } else if (descr instanceof NotDescr not
        && not.getDescrs().size() == 1
        && not.getDescrs().get(0) instanceof PatternDescr pattern) {
      readPattern(pattern, true, offset(not));
    } else {
      construct(nameOf(descr), offset(descr));
    }
  }

  private void readPattern(PatternDescr pattern, boolean negated, int offset) {
    if (pattern.getSource() != null) {
      construct(nameOf(pattern.getSource()), offset);
    } else if (pattern.getObjectType() == null) {
      construct("a path", offset);
    } else if (pattern.isQuery()) {
      construct("a query", offset);
    } else {
      readDecorations(pattern, offset);
      int typeOffset = source.text().indexOf(pattern.getObjectType(), offset);
      patterns.add(
          new Pattern(
              pattern.getObjectType(),
              offset,
              typeOffset < 0 ? offset : typeOffset,
              Optional.ofNullable(pattern.getIdentifier()),
              negated,
              constraints(pattern, offset)));
    }
  }

  private void readDecorations(PatternDescr pattern, int offset) {
    if (!pattern.getBehaviors().isEmpty()) {
      construct("over", offset);
    }
    if (!pattern.getAnnotations().isEmpty()) {
      construct("an annotation on a pattern", offset);
    }
    if (pattern.isUnification()) {
      construct(":=", offset);
    }
  }

  private List<Constraint> constraints(PatternDescr pattern, int offset) {
    List<Constraint> constraints = new ArrayList<>();
    for (BaseDescr child : pattern.getConstraint().getDescrs()) {
      if (child instanceof ExprConstraintDescr expression
          && !expression.getExpression().isBlank()) {
        String text = expression.getExpression();
        int start = child.getStartCharacter();
        boolean placed = source.text().startsWith(text, start);
        constraints.add(ConstraintReader.read(text, placed ? start : offset));
        if (expression.getType() == ExprConstraintDescr.Type.POSITIONAL) {
          construct("a value without a property", placed ? start : offset);
        }
      } else {
        construct(nameOf(child), offset);
      }
    }
    return List.copyOf(constraints);
  }

  private static String nameOf(BaseDescr descr) {
    if (descr instanceof OrDescr) {
      return "or";
    } else if (descr instanceof AndDescr) {
      return "and";
    } else if (descr instanceof NotDescr) {
      return "not over several patterns";
    } else if (descr instanceof EvalDescr) {
      return "eval";
    } else if (descr instanceof ExistsDescr) {
      return "exists";
    } else if (descr instanceof ForallDescr) {
      return "forall";
    } else if (descr instanceof ConditionalBranchDescr) {
      return "if";
    } else if (descr instanceof NamedConsequenceDescr) {
      return "do";
    }
    return "a construct of another kind";
  }

  private static String nameOf(PatternSourceDescr source) {
    if (source instanceof AccumulateDescr) {
      return "accumulate";
    } else if (source instanceof CollectDescr) {
      return "collect";
    } else if (source instanceof GroupByDescr) {
      return "groupby";
    } else if (source instanceof EntryPointDescr) {
      return "entry-point";
    }
    return "from";
  }

  private void construct(String name, int offset) {
    constructs.add(new Construct(name, offset));
  }

  private int offset(BaseDescr descr) {
    return descr.getStartCharacter() < 0 ? block.offsetOf("when") : descr.getStartCharacter();
  }
}
