package org.brakerules.internal.rule;

/**
 * One comparison of a property.
 *
 * @param property the property
 * @param equal whether it must equal the value, or differ from it
 * @param value what it is compared with
 */
public record WrittenComparison(String property, boolean equal, WrittenValue value) {

  /** The same comparison the other way round. */
  public WrittenComparison turned() {
    return new WrittenComparison(property, !equal, value);
  }

  /** The same comparison with another value. */
  public WrittenComparison with(WrittenValue other) {
    return new WrittenComparison(property, equal, other);
  }

  @Override
  public String toString() {
    return property + (equal ? " == " : " != ") + value;
  }
}
