package org.brakerules.model.assembly;

import java.util.List;
import java.util.Optional;

/**
 * What was recorded of the finished work.
 *
 * @param records the records of wheel ends, and of the vehicle, one of each at most
 */
public record AssemblyRecord(List<CheckedPlace> records) {

  /** Nothing is recorded yet. */
  public static final AssemblyRecord EMPTY = new AssemblyRecord(List.of());

  /**
   * Keeps its own copy of the records.
   *
   * @throws IllegalArgumentException if two are of the same place
   */
  public AssemblyRecord {
    records = List.copyOf(records);
    if (records.stream().map(CheckedPlace::on).distinct().count() < records.size()) {
      throw new IllegalArgumentException("Two records are of the same place.");
    }
  }

  /** The record of a wheel end or of the vehicle; empty if there is none. */
  public Optional<CheckedPlace> on(String place) {
    return records.stream().filter(record -> record.on().equals(place)).findFirst();
  }
}
