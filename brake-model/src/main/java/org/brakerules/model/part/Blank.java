package org.brakerules.model.part;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import org.brakerules.model.reading.Measurement;

/** Parts of which nothing is stated but the tag: where every builder starts. */
final class Blank {

  /**
   * How parts of a type are made.
   *
   * @param constructor takes what is stated of one
   * @param unstated what it takes where nothing is, with the class where the tag goes
   */
  private record Form(Constructor<?> constructor, List<Object> unstated) {

    Object[] values(Tag tag) {
      Object[] values = unstated.toArray();
      for (int i = 0; i < values.length; i++) {
        if (values[i] == Tag.class) {
          values[i] = tag;
        }
      }
      return values;
    }
  }

  private static final ClassValue<Form> FORMS =
      new ClassValue<>() {
        @Override
        protected Form computeValue(Class<?> type) {
          Constructor<?> constructor = canonicalConstructor(type);
          return new Form(
              constructor,
              Arrays.stream(constructor.getParameterTypes()).map(Blank::unstated).toList());
        }
      };

  private Blank() {}

  static <P extends Part> P of(Class<P> type, Tag tag) {
    Form form = FORMS.get(type);
    try {
      return type.cast(form.constructor().newInstance(form.values(tag)));
    } catch (ReflectiveOperationException e) {
      throw new IllegalArgumentException("No " + type.getSimpleName() + " for " + tag.place(), e);
    }
  }

  private static Constructor<?> canonicalConstructor(Class<?> type) {
    Class<?>[] components =
        Arrays.stream(type.getRecordComponents())
            .map(RecordComponent::getType)
            .toArray(Class<?>[]::new);
    try {
      return type.getConstructor(components);
    } catch (NoSuchMethodException e) {
      throw new IllegalStateException(type + " is no public record.", e);
    }
  }

  private static Object unstated(Class<?> type) {
    if (type == Tag.class) {
      return type;
    }
    if (type == Measurement.class) {
      return Measurement.notTaken();
    }
    if (type == Sign.class) {
      return Sign.NOT_CHECKED;
    }
    if (type == String.class) {
      return "";
    }
    return Arrays.stream(type.getEnumConstants())
        .filter(constant -> ((Enum<?>) constant).name().equals("UNKNOWN"))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException(type + " has no UNKNOWN."));
  }
}
