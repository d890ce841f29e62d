package org.brakerules.trial.coverage;

/**
 * Which case it is.
 *
 * @param component the component it lies beside, such as {@code camshaft-bushing}
 * @param name what it says
 */
public record CaseName(String component, String name) {

  @Override
  public String toString() {
    return component + ": " + name;
  }
}
