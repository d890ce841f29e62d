package org.brakerules.linter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.brakerules.linter.SmallRuleBase.HEADER;
import static org.brakerules.linter.SmallRuleBase.LIMITS;
import static org.brakerules.linter.SmallRuleBase.LIMIT_RULE;
import static org.brakerules.linter.SmallRuleBase.POINTS;
import static org.brakerules.linter.SmallRuleBase.SIGN_RULE;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The page for authors lists every kind of problem, and its examples are what it says they are. */
class LinterPageTest {

  private static final Path PAGE = Path.of("../../docs/authors/linter.md");
  private static final Pattern ROW =
      Pattern.compile("\\| `([a-z-]+)` \\| (.+?) \\| (.+) \\| (.+) \\|");
  private static final String NOTHING = "*nothing*";

  /** Files that hold the pieces of the page. */
  private static final List<String> FILES =
      List.of(
          "camshaft/camshaft.drl",
          "camshaft/camshaft.limits.csv",
          "camshaft/camshaft.points.csv",
          "unread.csv",
          "conflicts.csv",
          "camshaft/camshaft.cases.yaml");

  private static final String MORE_LIMITS =
      """
      camshaft.end-play.min,camshaft,endPlay,at least,0.005 in,spline-end,dial-indicator,,layout.camshaft=tube|split,,,2021-10-13,COMMON-PRACTICE,
      camshaft.end-play.min,camshaft,endPlay,at least,0.006 in,spline-end,dial-indicator,,layout.camshaft=tube|split,,2021-10-14,,COMMON-PRACTICE,
      """;

  private static final String MORE_POINTS =
      "camshaft.rotation,camshaft,rotation,,wheel-on,,on-demand,at-rest,fact,protractor,Turn it.\n";

  private static final String UNREAD =
      """
      id,reason
      tone-ring,decided by another rule base
      hose.leak,decided by another rule base
      """;

  private static final String CONFLICTS =
      """
      id,what,source-a,says-a,source-b,says-b,default-takes,why,concerns
      end-play,End play,COMMON-PRACTICE,0.030 in,,0.060 in,the former,It is the tighter.,camshaft.end-play.max;CAMSHAFT-020
      """;

  private static final String CASES =
      """
      - case: Cracked camshaft is replaced
        fires: [CAMSHAFT-010]
        change:
          camshaft: { crack: seen }
        then:
          camshaft: replace
      - case: Camshaft with end play at the limit
        near: CAMSHAFT-020
      """;

  /** One row of the page. */
  private record Example(String kind, String title, String wrong, String right) {

    boolean isOneChange() {
      return isPiece(wrong) && isPiece(right);
    }

    private static boolean isPiece(String cell) {
      return cell.equals(NOTHING) || cell.matches("`[^`]+`");
    }
  }

  @TempDir Path folder;
  private SmallRuleBase rules;

  @BeforeEach
  void theRuleBaseOfThePage() throws IOException {
    rules = new SmallRuleBase(folder);
    rules.write("camshaft/camshaft.drl", HEADER + SIGN_RULE + LIMIT_RULE + moreRules());
    rules.write("camshaft/camshaft.limits.csv", LIMITS + MORE_LIMITS);
    rules.write("camshaft/camshaft.points.csv", POINTS + MORE_POINTS);
    rules.write("unread.csv", UNREAD);
    rules.write("conflicts.csv", CONFLICTS);
    rules.write("camshaft/camshaft.cases.yaml", CASES);
    rules.writeSoundWheelEnd();
    change("rest/rest.drl", "(?s)rule \"REST-\\d+ Anything about the tone ring.*?end\n", "");
    change(
        "rest/rest.drl", "Hose\\( .*?\\)", "Hose( bulging == Sign.SEEN || chafed == Sign.SEEN )");
    change("rest-hose/rest-hose.points.csv", "rest-hose.leak.*\n", "");
    Files.delete(path("rest-tone-ring/rest-tone-ring.points.csv"));
  }

  @Test
  void the_page_lists_every_kind_in_its_order_with_its_title() throws IOException {
    assertThat(examples().map(one -> one.kind() + ": " + one.title()))
        .containsExactlyElementsOf(
            Arrays.stream(LintKind.values()).map(kind -> kind.id() + ": " + kind.title()).toList());
  }

  @Test
  void only_a_second_file_is_no_change_of_one_piece() throws IOException {
    assertThat(examples().filter(one -> !one.isOneChange()).map(Example::kind))
        .containsExactly("stray-file");
  }

  @Test
  void every_piece_that_is_right_is_sound() {
    assertThat(rules.problems()).isEmpty();
  }

  static Stream<Example> examplesOfOneChange() throws IOException {
    return examples().filter(Example::isOneChange);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("examplesOfOneChange")
  void the_wrong_piece_has_the_problem(Example example) throws IOException {
    String right = piece(example.right());
    String file = fileWith(right);
    String text = Files.readString(path(file));
    rules.write(
        file,
        text.replaceFirst(Pattern.quote(right), Matcher.quoteReplacement(piece(example.wrong()))));
    assertThat(RuleLinter.lint(folder))
        .extracting(problem -> problem.kind().id())
        .contains(example.kind());
  }

  private static Stream<Example> examples() throws IOException {
    return Files.readAllLines(PAGE).stream()
        .map(ROW::matcher)
        .filter(Matcher::matches)
        .map(row -> new Example(row.group(1), row.group(2), row.group(3), row.group(4)));
  }

  private static String piece(String cell) {
    return cell.equals(NOTHING) ? "" : cell.substring(1, cell.length() - 1).replace("\\|", "|");
  }

  private String fileWith(String piece) throws IOException {
    for (String file : FILES) {
      if (Files.readString(path(file)).contains(piece)) {
        return file;
      }
    }
    throw new AssertionError("No file of the rule base of the page holds " + piece);
  }

  private Path path(String file) {
    return folder.resolve("org/brakerules/rules").resolve(file);
  }

  private void change(String file, String pattern, String instead) throws IOException {
    rules.write(file, Files.readString(path(file)).replaceAll(pattern, instead));
  }

  private static String moreRules() {
    String crack = "$part : Camshaft( crack == Sign.SEEN )";
    return rule("030", "$part : Camshaft( turnsFreely == Sign.NOT_SEEN )")
            .replace("replace( $part )", "measureAgain( $part, \"camshaft.rotation\" )")
        + rule("040", crack.replace("SEEN", "SEEN, condition == Condition.NEW"))
        + rule("050", crack.replace("crack", "rust")).replace("verdict.replace", "verdict.clean")
        + rule(
            "060",
            """
            Replaced( partKind == PartKind.DRUM, $wheelEnd : wheelEnd )
              $part : CamRoller( wheelEnd == $wheelEnd, station == Station.UPPER )""");
  }

  private static String rule(String number, String conditions) {
    return SIGN_RULE
        .replace("CAMSHAFT-010", "CAMSHAFT-" + number)
        .replace("$part : Camshaft( crack == Sign.SEEN )", conditions);
  }
}
