package org.brakerules.harness.reference;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** The book as a browser sees it. It is read as XML, so that nothing in it may be unescaped. */
final class ParsedBook {

  private final Document document;
  private final Map<String, Element> byId = new LinkedHashMap<>();
  private final Map<Element, List<String>> linksBelow = new IdentityHashMap<>();

  ParsedBook(String html) {
    try {
      this.document =
          DocumentBuilderFactory.newInstance()
              .newDocumentBuilder()
              .parse(new InputSource(new StringReader(html)));
    } catch (Exception notWellFormed) {
      throw new AssertionError("The book is not well formed.", notWellFormed);
    }
    elements("*").stream()
        .filter(element -> element.hasAttribute("id"))
        .forEach(element -> byId.putIfAbsent(element.getAttribute("id"), element));
  }

  List<Element> elements(String tag) {
    return list(document.getElementsByTagName(tag));
  }

  List<String> ids() {
    return elements("*").stream()
        .map(element -> element.getAttribute("id"))
        .filter(id -> !id.isEmpty())
        .toList();
  }

  List<String> links() {
    return hrefs(document.getDocumentElement());
  }

  /** Where a link leads, as one click does. */
  Optional<Element> click(String link) {
    return Optional.ofNullable(byId.get(link.substring(1)));
  }

  /** The links below a heading, up to the next heading of its rank or a higher one. */
  List<String> linksBelow(Element heading) {
    return linksBelow.computeIfAbsent(heading, ParsedBook::collectLinksBelow);
  }

  private static List<String> collectLinksBelow(Element heading) {
    List<String> links = new ArrayList<>();
    for (Node next = heading.getNextSibling(); next != null; next = next.getNextSibling()) {
      if (next instanceof Element element) {
        if (rank(element).filter(rank -> rank <= rank(heading).orElseThrow()).isPresent()) {
          return links;
        }
        links.addAll(hrefs(element));
      }
    }
    return links;
  }

  /** The rank of a heading. */
  static Optional<Integer> rank(Element element) {
    return element.getTagName().matches("h[1-6]")
        ? Optional.of(Integer.valueOf(element.getTagName().substring(1)))
        : Optional.empty();
  }

  private static List<String> hrefs(Element element) {
    return list(element.getElementsByTagName("a")).stream()
        .map(link -> link.getAttribute("href"))
        .toList();
  }

  private static List<Element> list(NodeList nodes) {
    return IntStream.range(0, nodes.getLength()).mapToObj(i -> (Element) nodes.item(i)).toList();
  }
}
