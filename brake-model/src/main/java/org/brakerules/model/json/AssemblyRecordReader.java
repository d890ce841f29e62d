package org.brakerules.model.json;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import org.brakerules.model.assembly.AssemblyRecord;
import org.brakerules.model.assembly.CheckedPlace;
import org.brakerules.model.assembly.RecordedCheck;
import org.brakerules.model.assembly.RecordedCheck.Result;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Station;

/** Reads records of finished work from JSON, as strictly as jobs are read. */
public final class AssemblyRecordReader {

  private static final Pattern PLACE =
      Pattern.compile("vehicle|(?:[a-z][a-z0-9-]{0,39}/)?axle[1-9][0-9]?/(?:left|right)");
  private static final Pattern CHECK = Pattern.compile("FINAL-[0-9]{3}");
  private static final String ON =
      "the path of a wheel end, such as \"axle2/left\", or \"vehicle\"";
  private static final String ID = "the id of a check, such as \"FINAL-180\"";

  /** No reading of a finished brake is longer; a larger one is a slip of the pen. */
  private static final Property.Measured<Length> READING =
      new Property.Measured<>("reading", Length.class, Optional.of(Length.parse("10 in")));

  private final Problems problems = new Problems();
  private final Values values = new Values(problems);

  private AssemblyRecordReader() {}

  /**
   * Reads a record from a text.
   *
   * @throws InvalidJobException if the text is no record of finished work
   */
  public static AssemblyRecord read(String json) {
    return new AssemblyRecordReader().record(DocumentText.of(DocumentKind.RECORD, json));
  }

  /**
   * Reads a record from a UTF-8 file.
   *
   * @throws InvalidJobException if the file holds no record of finished work
   * @throws UncheckedIOException if the file cannot be read
   */
  public static AssemblyRecord read(Path file) {
    try (InputStream json = Files.newInputStream(file)) {
      return new AssemblyRecordReader().record(DocumentText.read(DocumentKind.RECORD, json));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private AssemblyRecord record(String document) {
    Node root = TreeReader.read(DocumentKind.RECORD, document, problems);
    return Fields.of(root, "a record of finished work: an object in braces", problems)
        .flatMap(fields -> record(root, fields))
        .orElseThrow(problems::asException);
  }

  private Optional<AssemblyRecord> record(Node root, Fields fields) {
    Entries entries =
        new Entries(
            "an array of records, at least one",
            "a record: an object with on, by, date and checks",
            problems);
    List<CheckedPlace> records = entries.each(entries.atLeastOne(fields, "records"), this::place);
    fields.refuseOthers();
    return problems.count() > 0
        ? Optional.empty()
        : problems.build(root, () -> new AssemblyRecord(records));
  }

  private Supplier<CheckedPlace> place(Node node, Fields fields) {
    Optional<String> on = fields.required("on", ON).flatMap(place -> values.text(place, PLACE, ON));
    Optional<String> by = fields.required("by", "who did it").flatMap(values::text);
    Optional<LocalDate> date = fields.required("date", Values.DATE).flatMap(values::date);
    Entries entries =
        new Entries(
            "an array of checks, at least one",
            "a check: an object with check, and result or reading",
            problems);
    List<RecordedCheck> checks = entries.each(entries.atLeastOne(fields, "checks"), this::check);
    return () -> new CheckedPlace(on.orElseThrow(), by.orElseThrow(), date.orElseThrow(), checks);
  }

  private Supplier<RecordedCheck> check(Node node, Fields fields) {
    Optional<String> id =
        fields.required("check", ID).flatMap(check -> values.text(check, CHECK, ID));
    Optional<Result> result =
        fields.optional("result").flatMap(it -> values.choice(it, Names.of(Result.class)));
    Measurement<Length> reading =
        fields
            .optional("reading")
            .map(it -> READING.read(it, values, Station.WHOLE_PART))
            .orElse(READING.unstated());
    return () -> new RecordedCheck(id.orElseThrow(), result, reading);
  }
}
