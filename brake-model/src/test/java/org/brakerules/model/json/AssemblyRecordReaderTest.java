package org.brakerules.model.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.time.LocalDate;
import java.util.Optional;
import org.brakerules.model.assembly.AssemblyRecord;
import org.brakerules.model.assembly.CheckedPlace;
import org.brakerules.model.assembly.RecordedCheck;
import org.brakerules.model.assembly.RecordedCheck.Result;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Station;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Records of finished work are read as strictly as jobs. */
class AssemblyRecordReaderTest {

  private static final String START =
      "{\"records\":[{\"on\":\"axle2/left\",\"by\":\"R. Hale\",\"date\":\"2026-11-26\",\"checks\":[";
  private static final String END = "]}]}";

  @Test
  void a_record_has_results_and_readings() {
    AssemblyRecord record =
        AssemblyRecordReader.read(
            START
                + "{\"check\":\"FINAL-010\",\"result\":\"failed\"},"
                + "{\"check\":\"FINAL-040\",\"reading\":{\"value\":\"0.015 in\","
                + "\"at\":\"spline-end\",\"method\":\"dial-indicator\"}}"
                + END);
    CheckedPlace place = record.on("axle2/left").orElseThrow();
    assertThat(place.by()).isEqualTo("R. Hale");
    assertThat(place.date()).isEqualTo(LocalDate.of(2026, 11, 26));
    assertThat(place.checks())
        .containsExactly(
            new RecordedCheck("FINAL-010", Optional.of(Result.FAILED), Measurement.notTaken()),
            new RecordedCheck(
                "FINAL-040",
                Optional.empty(),
                Measurement.of(
                    Length.parse("0.015 in"), Station.SPLINE_END, Method.DIAL_INDICATOR)));
    assertThat(record.on("vehicle")).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\'',
      textBlock =
          """
          {"check":"FINAL-010"}                         | the check FINAL-010 has no result and no reading; state one of them.
          {"check":"FINAL-10","result":"passed"}        | found "FINAL-10", expected the id of a check, such as "FINAL-180"
          {"check":"FINAL-010","result":"pass"}         | found "pass", expected "passed" or "failed"
          {"check":"FINAL-010","outcome":"passed"}      | found an unknown field, expected one of the fields "check", "result" or "reading"
          {"check":"FINAL-040","reading":{"value":"40 in"}} | found "40 in"
          {"check":"FINAL-010","result":"passed"},{"check":"FINAL-010","result":"failed"} | A check of axle2/left is there twice.
          """)
  void what_is_wrong_with_a_check_is_told_with_its_place(String check, String message) {
    InvalidJobException refused =
        catchThrowableOfType(
            InvalidJobException.class, () -> AssemblyRecordReader.read(START + check + END));
    assertThat(refused.problems().get(0).message())
        .startsWith("line 1, column ")
        .containsIgnoringCase(message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\'',
      textBlock =
          """
          {}             | found no "records", expected an array of records, at least one
          {"records":[]} | found an empty array, expected an array of records, at least one
          []             | found an empty array, expected a record of finished work: an object in braces
          {"records":[{"on":"left"}]} | found "left", expected the path of a wheel end, such as "axle2/left", or "vehicle"
          """)
  void what_is_no_record_is_refused(String document, String message) {
    InvalidJobException refused =
        catchThrowableOfType(InvalidJobException.class, () -> AssemblyRecordReader.read(document));
    assertThat(refused.problems()).anyMatch(problem -> problem.message().endsWith(message));
  }
}
