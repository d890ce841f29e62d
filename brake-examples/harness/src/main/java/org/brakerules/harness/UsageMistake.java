package org.brakerules.harness;

import java.util.Collection;
import org.brakerules.model.text.NearestName;

/** The command was not called as its help says. The message says what to write instead. */
public final class UsageMistake extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final String message;

  /** Says what is wrong and what to write instead. */
  public UsageMistake(String message) {
    super(message);
    this.message = message;
  }

  /**
   * A name that is not known.
   *
   * @param name the name as it was written
   * @param what what it is not, such as {@code is no component}
   * @param known the names that are known
   * @param all what they are, such as {@code components are}
   */
  static UsageMistake unknown(String name, String what, Collection<String> known, String all) {
    String hint =
        NearestName.of(name, known)
            .map(near -> "did you mean " + near + "?")
            .orElseGet(() -> all + " " + String.join(", ", known));
    return new UsageMistake("\"" + name + "\" " + what + "; " + hint);
  }

  @Override
  public String getMessage() {
    return message;
  }
}
