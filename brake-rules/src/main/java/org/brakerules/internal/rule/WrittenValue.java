package org.brakerules.internal.rule;

/** What a property is compared with. */
public sealed interface WrittenValue {

  /**
   * A constant of a closed list.
   *
   * @param constant the constant
   */
  record Constant(Enum<?> constant) implements WrittenValue {
    @Override
    public String toString() {
      return constant.getDeclaringClass().getSimpleName() + "." + constant.name();
    }
  }

  /**
   * A text, such as the id of a limit.
   *
   * @param text the text
   */
  record Text(String text) implements WrittenValue {
    @Override
    public String toString() {
      return '"' + text + '"';
    }
  }

  /**
   * What a variable stands for.
   *
   * @param name the variable
   */
  record Variable(String name) implements WrittenValue {
    @Override
    public String toString() {
      return name;
    }
  }
}
