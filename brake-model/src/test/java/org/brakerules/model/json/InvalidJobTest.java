package org.brakerules.model.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a technician reads when a job is written wrong: one thing in a good job is changed. */
class InvalidJobTest {

  private static final String WHEEL_END = "/units/0/axles/0/wheelEnds/0";

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          "0.012"          | "0.012" (the unit is missing)      | "0.012 in" or "0.012 mm"
          0.012            | 0.012 (the unit is missing)        | a text: "0.012 in" or "0.012 mm"
          1e999999999      | 1e999999999 (powers of ten are not read) | a text: the number in full, such as "0.030 in"
          "1e999999999 in" | "1e999999999 in" (powers of ten are not read) | the number in full, such as "0.030 in"
          -1               | -1 (the unit is missing)           | a value that is not negative; write what the instrument showed
          "-0.012 in"      | "-0.012 in"                        | a value that is not negative; write what the instrument showed
          "0,012 in"       | "0,012 in" (it has a decimal comma) | "0.012 in"
          "NaN in"         | "NaN in" (it is not a number)      | a length with the unit in or mm, such as "0.030 in", or say that the measurement was not taken
          "12 in"          | "12 in" (more than any brake has)  | at most 1 in; check the decimal point and the unit
          "1.00001 in"     | "1.00001 in" (more than any brake has) | at most 1 in; check the decimal point and the unit
          "85 psi"         | "85 psi" (psi is a unit of pressure) | a length with the unit in or mm, such as "0.030 in"
          "0.012 inch"     | "0.012 inch" (the unit "inch" is not known) | "0.012 in"
          "0.012 xx"       | "0.012 xx" (the unit "xx" is not known) | a length with the unit in or mm, such as "0.030 in"
          ""               | ""                                 | a length with the unit in or mm, such as "0.030 in"
          true             | true                               | a text: a length with the unit in or mm, such as "0.030 in"
          {}               | an object                          | a text: a length with the unit in or mm, such as "0.030 in"
          null             | null                               | the reading with its unit
          """)
  void a_measured_value_is_written_wrong(String value, String found, String expected) {
    String job = changed("\"value\": \"0.012 in\"", "\"value\": " + value);

    assertThat(problemsOf(job))
        .containsExactly(
            new Problem(WHEEL_END + "/parts/0/endPlay/value", 43, 30, found, expected));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          "date": "2026-11-20",              | ``                                 | 1  | 1  | ``                    | no "date"                          | a date from 1900 to 2199, such as "2026-11-20"
          "date": "2026-11-20"               | "date": null                       | 3  | 11 | /date                 | null                               | a date from 1900 to 2199, such as "2026-11-20"
          "date": "2026-11-20"               | "date": "20.11.2026"               | 3  | 11 | /date                 | "20.11.2026"                       | a date from 1900 to 2199, such as "2026-11-20"
          "date": "2026-11-20"               | "date": "2026-02-30"               | 3  | 11 | /date                 | "2026-02-30"                       | a day that the calendar has
          "date": "2026-11-20"               | "date": 20261120                   | 3  | 11 | /date                 | 20261120                           | a date from 1900 to 2199, such as "2026-11-20"
          "date": "2026-11-20"               | "date": "0026-11-20"               | 3  | 11 | /date                 | "0026-11-20"                       | a date from 1900 to 2199, such as "2026-11-20"
          "builtOn": "2019-05-01"            | "builtOn": "2019-05"               | 18 | 18 | /units/0/builtOn      | "2019-05"                          | a date from 1900 to 2199, such as "2026-11-20"
          "builtOn": "2019-05-01"            | "builtOn": "2026-11-21"            | 18 | 18 | /units/0/builtOn      | a day after the inspection, "2026-11-21" | the day the unit was built, 2026-11-20 at the latest
          "ruleSet": "us-federal"            | "ruleSet": "US federal"            | 4  | 14 | /ruleSet              | "US federal"                       | the rule set in lower-case letters, digits and hyphens, such as "us-federal"
          "scope": "camshaft-out"            | "scope": "camshaft_out"            | 5  | 12 | /scope                | "camshaft_out"                     | "camshaft-out", the nearest known name
          "scope": "camshaft-out"            | "scope": "everything"              | 5  | 12 | /scope                | "everything"                       | "wheel-on", "drum-off", "shoes-off" or "camshaft-out"
          "reference": "H-4417"              | "reference": " "                   | 2  | 16 | /reference            | " "                                | one line of text, 1 to 200 characters
          "reference": "H-4417"              | "reference": 4417                  | 2  | 16 | /reference            | 4417                               | one line of text, 1 to 200 characters
          "reference": "H-4417"              | "reference": "H\\n4417"            | 2  | 16 | /reference            | "H\\u{a}4417"                      | one line of text, 1 to 200 characters
          "reference": "H-4417"              | "refrence": "H-4417"               | 2  | 3  | /refrence             | an unknown field                   | "reference", the nearest known field
          "reference": "H-4417"              | "colour": "red"                    | 2  | 3  | /colour               | an unknown field                   | one of the fields "reference", "date", "ruleSet", "scope", "acceptance", "shimsAtHand", "sizes", "earlierLinings", "makersLimits" or "units"
          "scope": "camshaft-out"            | "scope": "camshaft-out", "acceptance": "gaurded" | 5  | 42 | /acceptance | "gaurded" | "guarded", the nearest known name
          "scope": "camshaft-out"            | "scope": "camshaft-out", "shimsAtHand": [{ "thickness": "0.030", "count": 4, "condition": "new" }] | 5  | 59 | /shimsAtHand/0/thickness | "0.030" (the unit is missing) | "0.030 in" or "0.030 mm"
          "scope": "camshaft-out"            | "scope": "camshaft-out", "shimsAtHand": [{ "thickness": "0.6 in", "count": 4, "condition": "new" }] | 5  | 59 | /shimsAtHand/0/thickness | "0.6 in" (more than any brake has) | at most 0.5 in; check the decimal point and the unit
          "scope": "camshaft-out"            | "scope": "camshaft-out", "shimsAtHand": [{ "thickness": "0 in", "count": 4, "condition": "new" }] | 5  | 59 | /shimsAtHand/0/thickness | a shim of 0 in | a thickness above zero
          "scope": "camshaft-out"            | "scope": "camshaft-out", "shimsAtHand": [{ "thickness": "0.030 in", "count": 0, "condition": "new" }] | 5  | 80 | /shimsAtHand/0/count | 0 | a whole number from 1 to 99, without quotes
          "scope": "camshaft-out"            | "scope": "camshaft-out", "earlierLinings": [{ "on": "tractor/axle2/left/lining/upper", "date": "2026-03-02", "thickness": "0.6 in", "odometer": "401200", "odometerNow": "452000 km" }] | 5  | 147 | /earlierLinings/0/odometer | "401200" | an odometer, such as "401200 km" or "250000 mi"
          "scope": "camshaft-out"            | "scope": "camshaft-out", "earlierLinings": [{ "on": "tractor/axle2/left/lining/upper", "date": "2026-03-02", "thickness": "0.6 in", "odometer": "452000 km", "odometerNow": "401200 km" }] | 5  | 47 | /earlierLinings/0 | an object that is refused: An odometer does not go from 452000 km to 401200 km. | values that fit together
          "date": "2026-11-20"               | "date": "2026-11-20", "date": "2026-11-21" | 3  | 25 | /date                 | the field again, first at line 3, column 3 | each field once
          "axle": 2                          | "axle": 100                        | 21 | 19 | /units/0/axles/0/axle | 100                                | a whole number from 1 to 99, without quotes
          "axle": 2                          | "axle": -2                         | 21 | 19 | /units/0/axles/0/axle | -2                                 | a whole number from 1 to 99, without quotes
          "axle": 2                          | "axle": 2e0                        | 21 | 19 | /units/0/axles/0/axle | 2e0                                | a whole number from 1 to 99, without quotes
          "unit": "tractor"                  | "unit": "Tractor"                  | 17 | 15 | /units/0/unit         | "Tractor"                          | the name of the unit in lower-case letters, digits and hyphens, such as "tractor"
          "unit": "tractor"                  | "unit": ""                         | 17 | 15 | /units/0/unit         | ""                                 | the name of the unit in lower-case letters, digits and hyphens, such as "tractor"
          "value": "0.025 in"                | "value": "0.025 furlong"           | 10 | 16 | /makersLimits/0/value | "0.025 furlong" (the unit "furlong" is not known) | a quantity with the unit in, mm, lbf, N, kN, lbf.in, lbf.ft, N.m, psi, kPa, bar, deg, turn or %, such as "0.030 in"
          "document": "Axle manual",         | ``                                 | 7  | 5  | /makersLimits/0       | no "document"                      | where it is written, such as "cast on the drum"
          "limit": "camshaft-bushing.radial-play.max" | "limit": "radial play"             | 8  | 16 | /makersLimits/0/limit | "radial play"                      | the id of the limit it replaces, such as "camshaft-bushing.radial-play.max"
          "on": "tractor/axle2/left"         | "on": "tractor/axle3"              | 9  | 13 | /makersLimits/0/on    | "tractor/axle3"                    | the path of a wheel end or part of this job, or its beginning; its wheel ends are "tractor/axle2/left"
          "on": "tractor/axle2/left"         | "on": "tractor/axle2/left/crank"   | 9  | 13 | /makersLimits/0/on    | "tractor/axle2/left/crank"         | the path of a wheel end or part of this job, or its beginning; its wheel ends are "tractor/axle2/left"
          """)
  void a_field_of_the_job_is_written_wrong(
      String written,
      String change,
      int line,
      int column,
      String pointer,
      String found,
      String expected) {
    assertThat(problemsOf(changed(written, change)))
        .containsExactly(new Problem(pointer, line, column, found, expected));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          "value": "0.012 in",          | ``                                 | 42 | 30 | /parts/0/endPlay                   | no "value"                         | the reading with its unit
          "uncertainty": "0.001 in"     | "uncertainty": "0.001"             | 46 | 36 | /parts/0/endPlay/uncertainty       | "0.001" (the unit is missing)      | "0.001 in" or "0.001 mm"
          "reservoirPressure": "85 psi" | "reservoirPressure": "850 psi"     | 47 | 42 | /parts/0/endPlay/reservoirPressure | "850 psi" (more than any brake has) | at most 300 psi; check the decimal point and the unit
          "reservoirPressure": "85 psi" | "reservoirPressure": "85 in"       | 47 | 42 | /parts/0/endPlay/reservoirPressure | "85 in" (in is a unit of length)   | a pressure with the unit psi, kPa or bar, such as "90 psi"
          "ratedStroke": "2 1/2 in"     | "ratedStroke": "2 1/3 in"          | 33 | 34 | /layout/chamber/ratedStroke        | "2 1/3 in" (fractions over 3 are not kept) | a fraction over 2, 4, 8, 16, 32 or 64, or a decimal
          "ratedStroke": "2 1/2 in"     | "ratedStroke": "25 in"             | 33 | 34 | /layout/chamber/ratedStroke        | "25 in" (more than any brake has)  | at most 10 in; check the decimal point and the unit
          "at": "spline-end"            | "at": "splined-end"                | 44 | 27 | /parts/0/endPlay/at                | "splined-end"                      | "spline-end", the nearest known name
          "method": "dial-indicator",   | "method": "dial indicater",        | 45 | 31 | /parts/0/endPlay/method            | "dial indicater"                   | "dial-indicator", the nearest known name
          "crack": "not-seen"           | "crack": false                     | 41 | 28 | /parts/0/crack                     | false                              | "seen", "not-seen" or "not-checked"
          "crack": "not-seen"           | "crack": "no"                      | 41 | 28 | /parts/0/crack                     | "no"                               | "seen", "not-seen" or "not-checked"
          "crack": "not-seen"           | "cracks": "not-seen"               | 41 | 19 | /parts/0/cracks                    | an unknown field                   | "crack", the nearest known field
          "part": "camshaft",           | "part": "cam-shaft",               | 40 | 27 | /parts/0/part                      | "cam-shaft"                        | "camshaft", the nearest known name
          "part": "camshaft",           | "station": "tube",                 | 39 | 17 | /parts/0                           | no "part"                          | the kind of part, such as "camshaft"
          "part": "camshaft",           | "part": "camshaft", "station": "head-end", | 40 | 50 | /parts/0/station                   | "head-end"                         | no station, since a wheel end has one camshaft
          "station": "head-end",        | ``                                 | 51 | 17 | /parts/1                           | no "station"                       | its station: "head-end" or "spline-end"
          "station": "upper"            | "station": "head-end"              | 75 | 30 | /parts/3/station                   | "head-end"                         | "upper" or "lower"
          "number": 2                   | "number": 0                        | 68 | 29 | /parts/2/number                    | 0                                  | a whole number from 1 to 20, without quotes
          "number": 2                   | "number": 2.0                      | 68 | 29 | /parts/2/number                    | 2.0                                | a whole number from 1 to 20, without quotes
          "number": 2                   | "number": "2"                      | 68 | 29 | /parts/2/number                    | "2"                                | a whole number from 1 to 20, without quotes
          "presence": "missing"         | "presence": "gone"                 | 76 | 31 | /parts/3/presence                  | "gone"                             | "fitted", "missing" or "not-fitted"
          "side": "left"                | "side": "nearside"                 | 25 | 23 | /side                              | "nearside"                         | "left" or "right"
          "family": "clamp"             | "family": "clampp"                 | 30 | 29 | /layout/chamber/family             | "clampp"                           | "clamp", the nearest known name
          "type": "30"                  | "type": 30                         | 31 | 27 | /layout/chamber/type               | 30                                 | one line of text, 1 to 200 characters
          """)
  void a_field_of_a_wheel_end_is_written_wrong(
      String written,
      String change,
      int line,
      int column,
      String below,
      String found,
      String expected) {
    assertThat(problemsOf(changed(written, change)))
        .containsExactly(new Problem(WHEEL_END + below, line, column, found, expected));
  }

  @Test
  void the_same_part_twice_is_refused_at_the_second() {
    String job =
        job(
            """
            { "axle": 2, "wheelEnds": [ { "side": "left", "parts": [
              { "part": "camshaft" },
              { "part": "shim", "station": "head-end" },
              { "part": "shim", "station": "head-end", "number": 2 },
              { "part": "camshaft", "condition": "new" },
              { "part": "shim", "number": 2, "station": "head-end" } ] } ] }\
            """);

    assertThat(messagesOf(job))
        .containsExactly(
            "line 6, column 3, /units/0/axles/0/wheelEnds/0/parts/3: found a second camshaft, the"
                + " first is at line 3, column 3, expected one camshaft of a wheel end: the one"
                + " that is to go back, as found or new",
            "line 7, column 3, /units/0/axles/0/wheelEnds/0/parts/4: found a second"
                + " shim/head-end/2, the first is at line 5, column 3, expected each part once;"
                + " number parts of one kind and station 1, 2, 3");
  }

  @Test
  void a_second_part_of_what_a_wheel_end_has_once_is_refused_at_its_number() {
    String job =
        job(
            """
            { "axle": 2, "wheelEnds": [ { "side": "left", "parts": [
              { "part": "drum", "number": 1 },
              { "part": "drum", "number": 2, "condition": "new" },
              { "part": "return-spring", "number": 2 } ] } ] }\
            """);

    assertThat(messagesOf(job))
        .containsExactly(
            "line 4, column 31, /units/0/axles/0/wheelEnds/0/parts/1/number: found 2, expected one"
                + " drum of a wheel end: the one that is to go back, as found or new");
  }

  @Test
  void the_same_wheel_end_or_axle_twice_is_refused_at_the_second() {
    String job =
        job(
            """
            { "axle": 2, "wheelEnds": [ { "side": "left" },
              { "side": "left" } ] },
              { "axle": 2, "wheelEnds": [ { "side": "right" } ] }\
            """);

    assertThat(messagesOf(job))
        .containsExactly(
            "line 3, column 3, /units/0/axles/0/wheelEnds/1: found a second left wheel end, the"
                + " first is at line 2, column 29, expected each side of an axle once",
            "line 4, column 3, /units/0/axles/1: found a second axle 2, the first is at line 2,"
                + " column 1, expected both wheel ends of an axle in one place");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          "unit": "trailer"             | "unit": "tractor" | 11 | 5  | /units/1      | a second unit tractor, the first is at line 9, column 5 | another name for each unit
          "unit": "trailer",            | ``                | 11 | 5  | /units/1      | no "unit"      | the name of the unit in lower-case letters, digits and hyphens, such as "tractor", since there is more than one
          "on": "trailer",              | ``                | 5 | 5  | /makersLimits/1 | a second drum.diameter.max, the first is at line 4, column 5 | one limit of this id for the same parts
          { "side": "left" } ] } ] }    | ] } ] }           | 15 | 33 | /units/1/axles/1/wheelEnds | an empty array | an array of one or two wheel ends
          , "wheelEnds": [ { "side": "left" } ] } ] } | } ] } | 15 | 7 | /units/1/axles/1 | no "wheelEnds" | an array of one or two wheel ends
          """)
  void a_combination_is_written_wrong(
      String written,
      String change,
      int line,
      int column,
      String pointer,
      String found,
      String expected) {
    assertThat(SampleJobs.combination()).contains(written);

    assertThat(problemsOf(SampleJobs.combination().replace(written, change)))
        .containsExactly(new Problem(pointer, line, column, found, expected));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          "units": []                             | /units | an empty array | an array of at least one unit
          "units": {}                             | /units | an object      | an array of at least one unit
          "units": null                           | /units | null           | an array of at least one unit
          "units": [ 5 ]                          | /units/0 | 5            | a unit: an object with its axles
          "units": [ {} ]                         | /units/0 | no "axles"   | an array of at least one axle
          "units": [ { "axles": [] } ]            | /units/0/axles | an empty array | an array of at least one axle
          "units": [ { "axles": [ null ] } ]      | /units/0/axles/0 | null | an axle: an object with its number and wheel ends
          "units": [ { "axles": [ { "wheelEnds": [ { "side": "left" } ] } ] } ] | /units/0/axles/0 | no "axle" | the number of the axle, counted from the front of its unit
          "units": [ { "axles": [ { "axle": 1 } ] } ] | /units/0/axles/0 | no "wheelEnds" | an array of one or two wheel ends
          """)
  void a_job_without_wheel_end_is_refused(
      String units, String pointer, String found, String expected) {
    String job =
        "{ \"date\": \"2026-11-20\", \"ruleSet\": \"quebec\", \"scope\": \"wheel-on\", "
            + units
            + " }";

    assertThat(problemsOf(job))
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.pointer()).isEqualTo(pointer);
              assertThat(problem.found()).isEqualTo(found);
              assertThat(problem.expected()).isEqualTo(expected);
            });
  }

  @Test
  void more_units_than_any_road_train_has_are_refused() {
    String units =
        IntStream.rangeClosed(1, 21)
            .mapToObj(
                n ->
                    "{ \"unit\": \"dolly-%d\", \"axles\": [ { \"axle\": 1, \"wheelEnds\": [ { \"side\":"
                            .formatted(n)
                        + " \"left\" } ] } ] }")
            .collect(Collectors.joining(", "));
    String job =
        "{ \"date\": \"2026-11-20\", \"ruleSet\": \"quebec\", \"scope\": \"wheel-on\", \"units\": ["
            + units
            + "] }";

    assertThat(problemsOf(job))
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.pointer()).isEqualTo("/units/20");
              assertThat(problem.expected()).isEqualTo("at most 20");
            });
  }

  @Test
  void an_unknown_kind_of_part_is_one_problem_and_the_known_kinds_are_named() {
    String job = changed("\"part\": \"camshaft\",", "\"part\": \"propeller\",");

    assertThat(problemsOf(job))
        .singleElement()
        .satisfies(
            problem ->
                assertThat(problem.expected())
                    .startsWith("\"camshaft\", \"camshaft-bushing\", ")
                    .endsWith("\"wheel-speed-sensor\" or \"tone-ring\""));
  }

  @Test
  void an_empty_list_of_readings_is_not_taken_for_no_reading() {
    String job = changed("\"endPlay\": {", "\"endPlay\": [], \"rotation\": {");

    assertThat(messagesOf(job))
        .contains(
            "line 42, column 30, /units/0/axles/0/wheelEnds/0/parts/0/endPlay: found an empty"
                + " array, expected at least one reading; leave the field out if it was not"
                + " measured");
  }

  @Test
  void all_problems_are_told_from_the_first_line_to_the_last() {
    String job =
        SampleJobs.full()
            .replace("\"scope\"", "\"Scope\"")
            .replace("0.025 in", "0.025")
            .replace("0.012 in", "0,012 in")
            .replace("toward-adjuster", "toward-ajuster");

    assertThat(catchThrowableOfType(InvalidJobException.class, () -> JobReader.read(job)))
        .hasMessage(
            """
            line 1, column 1: found no "scope", expected how far apart the brakes are: "wheel-on", \
            "drum-off", "shoes-off" or "camshaft-out"
            line 5, column 3, /Scope: found an unknown field, expected "scope", the nearest known \
            field
            line 10, column 16, /makersLimits/0/value: found "0.025" (the unit is missing), \
            expected "0.025 in", "0.025 mm", "0.025 lbf", "0.025 N", "0.025 kN", "0.025 lbf.in", \
            "0.025 lbf.ft", "0.025 N.m", "0.025 psi", "0.025 kPa", "0.025 bar", "0.025 deg", \
            "0.025 turn" or "0.025 %"
            line 43, column 30, /units/0/axles/0/wheelEnds/0/parts/0/endPlay/value: found \
            "0,012 in" (it has a decimal comma), expected "0.012 in"
            line 71, column 26, /units/0/axles/0/wheelEnds/0/parts/2/lip: found "toward-ajuster", \
            expected "toward-adjuster", the nearest known name\
            """);
  }

  @Test
  void after_a_thousand_problems_reading_stops() {
    String job = "{" + "\"x\": 1,".repeat(5_000) + "\"y\": 2}";

    assertThat(problemsOf(job)).hasSize(1_000);
  }

  /** A job whose axles begin on its second line. */
  private static String job(String axles) {
    return "{ \"date\": \"2026-11-20\", \"ruleSet\": \"quebec\", \"scope\": \"drum-off\","
        + " \"units\": [ { \"axles\": [\n"
        + axles
        + " ] } ] }";
  }

  private static List<String> messagesOf(String job) {
    return problemsOf(job).stream().map(Problem::message).toList();
  }

  private static String changed(String written, String change) {
    String job = SampleJobs.full();
    assertThat(job).contains(written);
    int at = job.indexOf(written);
    return job.substring(0, at) + change + job.substring(at + written.length());
  }

  private static List<Problem> problemsOf(String job) {
    return catchThrowableOfType(InvalidJobException.class, () -> JobReader.read(job)).problems();
  }
}
