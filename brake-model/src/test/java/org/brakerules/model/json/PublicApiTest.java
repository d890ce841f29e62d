package org.brakerules.model.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Executable;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** No type of the JSON library shows. */
class PublicApiTest {

  @ParameterizedTest
  @ValueSource(
      classes = {
        AssemblyRecordReader.class,
        DecisionWriter.class,
        InvalidJobException.class,
        InvalidShelfException.class,
        JobReader.class,
        JobWriter.class,
        JsonSchemas.class,
        KitShelfReader.class,
        Problem.class
      })
  void public_signatures_have_no_type_of_the_json_library(Class<?> type) {
    assertThat(
            Stream.of(type.getMethods(), type.getConstructors())
                .flatMap(Arrays::<Executable>stream)
                .filter(member -> Modifier.isPublic(member.getModifiers()))
                .map(Executable::toGenericString))
        .isNotEmpty()
        .noneMatch(signature -> signature.contains("fasterxml"));
  }
}
