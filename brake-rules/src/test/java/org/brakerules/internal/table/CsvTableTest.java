package org.brakerules.internal.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class CsvTableTest {

  @Test
  void cells_are_read_by_their_columns_without_blanks_around_them() {
    assertThat(read("id, value\na , 1 mm\n\n\"b, c\",\n"))
        .extracting(Row::cells)
        .containsExactly(Map.of("id", "a", "value", "1 mm"), Map.of("id", "b, c", "value", ""));
  }

  @Test
  void a_missing_cell_is_told_with_its_line() {
    Row row = read("id,value\na,1 mm\nb\n").get(1);

    assertThat(row.line()).isEqualTo(3);
    assertThatThrownBy(() -> row.text("value"))
        .hasMessage("invented.csv line 3: there is no column \"value\"; add it to the header.");
  }

  @Test
  void a_cell_too_many_and_an_open_quote_are_mistakes_of_the_table() {
    assertThatThrownBy(() -> read("id,value\na,1 mm,more\n"))
        .isInstanceOf(RuleBaseException.class)
        .hasMessageStartingWith("invented.csv cannot be read: Too many entries");
    assertThatThrownBy(() -> read("id,value\na,\"1 mm\n"))
        .isInstanceOf(RuleBaseException.class)
        .hasMessageStartingWith("invented.csv cannot be read: ");
  }

  @Test
  void a_table_of_a_header_alone_has_no_rows() {
    assertThat(read("id,value\n")).isEmpty();
  }

  private static List<Row> read(String text) {
    return CsvTable.read(
        "invented.csv", new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
  }
}
