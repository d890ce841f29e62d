package org.brakerules.parts;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.brakerules.BrakeRules;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.kit.Kit;
import org.brakerules.model.kit.KitReach;
import org.brakerules.model.kit.KitShelf;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.CamRoller;
import org.brakerules.model.part.Scope;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.Sign;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.reading.Station;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Parts lists as JSON and as comma-separated values. */
class PartsFormsTest {

  private static final WheelEndPath LEFT = WheelEndPath.of(2, Side.LEFT);

  private static final KitShelf SHELF =
      new KitShelf(
          "counter",
          Optional.of(Currency.getInstance("EUR")),
          List.of(
              new Kit(
                  "ROLLER",
                  "=1+1, \"a roller\"",
                  KitReach.PIECE,
                  Map.of("cam-roller", 1),
                  Optional.of(new BigDecimal("7.5")),
                  "")));

  @Test
  void json_has_the_lines_of_the_list_and_the_kits_with_every_decimal_of_the_price()
      throws IOException {
    KitCover cover = BrakeRules.standard().parts(job("H-1"), SHELF);
    JsonNode json = new ObjectMapper().readTree(PartsListWriter.write(cover));

    assertThat(json.at("/wheelEnds/0/lines/0/item").asText()).isEqualTo("cam-roller");
    assertThat(json.at("/wheelEnds/0/lines/0/handling").asText()).isEqualTo("order");
    assertThat(json.at("/wheelEnds/0/lines/0/parts/0").asText())
        .isEqualTo("axle2/left/cam-roller/upper");
    assertThat(json.at("/wheelEnds/0/lines/0/reasons/0/id").asText()).isEqualTo("CAM-ROLLER-010");
    assertThat(json.at("/wheelEnds/1/inspected").asBoolean()).isFalse();
    assertThat(json.at("/kits/axles/0/kits/0/price").asText()).isEqualTo("7.50");
    assertThat(json.at("/kits/currency").asText()).isEqualTo("EUR");
    assertThat(new ObjectMapper().readTree(PartsListWriter.write(cover.parts())).has("kits"))
        .isFalse();
  }

  @Test
  void csv_has_a_row_for_each_line_and_ends_its_rows_as_the_standard_says() throws IOException {
    KitCover cover = BrakeRules.standard().parts(job("H-1"), SHELF);
    String csv = PartsCsv.write(cover);
    List<Map<String, String>> rows = rows(csv);

    assertThat(csv.split("\r\n", -1)).hasSize(rows.size() + 2).noneMatch(row -> row.contains("\n"));
    assertThat(rows.get(0))
        .containsEntry("section", "wheel-end")
        .containsEntry("where", "axle2/left")
        .containsEntry("handling", "order")
        .containsEntry("item", "cam-roller")
        .containsEntry("pieces", "1");
    assertThat(rows)
        .filteredOn(row -> row.get("section").equals("kit"))
        .singleElement()
        .satisfies(
            row ->
                assertThat(row)
                    .containsEntry("kit", "ROLLER")
                    .containsEntry("price", "7.50")
                    .containsEntry("description", "'=1+1, \"a roller\""));
  }

  @ParameterizedTest
  @ValueSource(strings = {"=1+1", "+1", "-1", "@SUM(A1)", " =1+1", "\uFF1D1", "\t1"})
  void no_text_of_the_shop_is_a_formula(String reference) throws IOException {
    assertThat(rows(PartsCsv.write(BrakeRules.standard().parts(job(reference)))))
        .allSatisfy(row -> assertThat(row).containsEntry("reference", "'" + reference));
  }

  @Test
  void other_text_of_the_shop_is_left_as_it_is() throws IOException {
    assertThat(
            rows(PartsCsv.write(BrakeRules.standard().parts(job("Yard, \"gritter\" 12")))).get(0))
        .containsEntry("reference", "Yard, \"gritter\" 12");
  }

  private static BrakeJob job(String reference) {
    return BrakeJob.builder()
        .reference(reference)
        .date(LocalDate.of(2026, 11, 20))
        .ruleSet("us-federal")
        .scope(Scope.SHOES_OFF)
        .wheelEnd(
            LEFT, Layout.UNKNOWN, CamRoller.asFound(LEFT, Station.UPPER).flat(Sign.SEEN).build())
        .build();
  }

  private static List<Map<String, String>> rows(String csv) throws IOException {
    try (MappingIterator<Map<String, String>> rows =
        new CsvMapper()
            .readerForMapOf(String.class)
            .with(CsvSchema.emptySchema().withHeader())
            .readValues(csv)) {
      return rows.readAll();
    }
  }
}
