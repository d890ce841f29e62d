package org.brakerules.consumer;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import javax.xml.xpath.XPath;
import javax.xml.xpath.XPathFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.xml.sax.InputSource;

/** What a repository asks of whoever publishes there, and what our users may count on. */
class PublishedFilesTest {

  @ParameterizedTest
  @CsvSource({
    "brake-model, org/brakerules/model/job/BrakeJob",
    "brake-rules, org/brakerules/BrakeRules"
  })
  void classes_come_with_their_sources_and_javadoc(String artifact, String type) throws Exception {
    assertThat(FolderRepository.entries(artifact, ".jar"))
        .contains(type + ".class", "META-INF/LICENSE");
    assertThat(FolderRepository.entries(artifact, "-sources.jar")).contains(type + ".java");
    assertThat(FolderRepository.entries(artifact, "-javadoc.jar")).contains(type + ".html");
  }

  @ParameterizedTest
  @CsvSource({"brake-model, org.brakerules.model", "brake-rules, org.brakerules.rules"})
  void the_module_name_stays(String artifact, String moduleName) throws Exception {
    assertThat(FolderRepository.moduleName(artifact)).isEqualTo(moduleName);
  }

  @ParameterizedTest
  @CsvSource({
    "name",
    "description",
    "url",
    "licenses/license/name",
    "licenses/license/url",
    "developers/developer/name",
    "scm/connection",
    "scm/developerConnection",
    "scm/url"
  })
  void the_poms_say_whose_work_this_is_and_on_what_terms(String element) throws Exception {
    assertThat(inPom("brake-model", element)).isNotBlank();
    assertThat(inPom("brake-rules", element)).isNotBlank();
  }

  @ParameterizedTest
  @ValueSource(strings = {"brake-model", "brake-rules"})
  void a_pom_stands_alone_and_never_changes(String artifact) throws Exception {
    assertThat(inPom(artifact, "artifactId")).isEqualTo(artifact);
    assertThat(FolderRepository.pom(artifact)).doesNotContain("<parent>", "SNAPSHOT", "${");
  }

  private static String inPom(String artifact, String element) throws Exception {
    XPath xpath = XPathFactory.newInstance().newXPath();
    InputSource pom = new InputSource(new StringReader(FolderRepository.pom(artifact)));
    return xpath.evaluate("/*[local-name()='project']" + steps(element), pom);
  }

  private static String steps(String element) {
    return element.replaceAll("(^|/)([A-Za-z]+)", "/*[local-name()='$2']");
  }
}
