package org.brakerules.calc;

import org.brakerules.model.quantity.Length;
import org.junit.jupiter.params.converter.TypedArgumentConverter;

/** Reads a length in a table of cases. */
public final class LengthText extends TypedArgumentConverter<String, Length> {

  LengthText() {
    super(String.class, Length.class);
  }

  @Override
  protected Length convert(String text) {
    return Length.parse(text);
  }
}
