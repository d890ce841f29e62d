package org.brakerules.harness;

import java.io.StringReader;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** Reads the pictures of a page. */
final class Svg {

  private Svg() {}

  /** The pictures of a page, in its order. */
  static List<Element> pictures(String page) throws Exception {
    Element html =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new InputSource(new StringReader(page.substring(page.indexOf("<html")))))
            .getDocumentElement();
    return elements(html, "svg").toList();
  }

  static Stream<Element> elements(Element within, String name) {
    NodeList found = within.getElementsByTagName(name);
    return IntStream.range(0, found.getLength()).mapToObj(i -> (Element) found.item(i));
  }

  static double number(Element element, String attribute) {
    return Double.parseDouble(element.getAttribute(attribute));
  }
}
