package org.brakerules.harness;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;

/** An option that takes one of a few words was given another; they are told as they are typed. */
final class OptionWords {

  private OptionWords() {}

  /** What to say; empty if something else is wrong. */
  static Optional<UsageMistake> mistake(ParameterException mistake) {
    ArgSpec spec = mistake.getArgSpec();
    if (mistake.getCause() instanceof TypeConversionException
        && spec instanceof OptionSpec option
        && option.type().isEnum()) {
      return Optional.of(mistake(option, mistake.getValue()));
    }
    return Optional.empty();
  }

  private static UsageMistake mistake(OptionSpec option, String written) {
    List<String> words =
        Arrays.stream(option.type().getEnumConstants())
            .map(word -> word.toString().toLowerCase(Locale.ROOT))
            .toList();
    String name = option.longestName();
    return UsageMistake.unknown(written, "is no word for " + name, words, "write one of");
  }
}
