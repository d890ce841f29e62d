package org.brakerules.harness.reference;

import java.util.List;
import java.util.stream.Collectors;
import org.brakerules.model.decision.RuleBaseVersion;

/** All pages as one HTML document that needs no other file and no server. */
final class HtmlBook {

  private final List<HtmlPage> pages;
  private final RuleBaseVersion version;

  HtmlBook(List<Page> pages, RuleBaseVersion version) {
    BookAnchors anchors = new BookAnchors(pages);
    this.pages = pages.stream().map(page -> new HtmlPage(page, anchors)).toList();
    this.version = version;
  }

  String html() {
    return BookText.read("book.html")
        .replace("<!--style-->", BookText.read("book.css"))
        .replace("<!--script-->", BookText.read("book.js"))
        .replace("<!--version-->", escaped(version.version()))
        .replace("<!--fingerprint-->", escaped(version.fingerprint()))
        .replace("<!--contents-->", contents())
        .replace("<!--pages-->", pages.stream().map(HtmlPage::html).collect(Collectors.joining()));
  }

  private String contents() {
    return pages.stream()
        .map(page -> "<li><a href=\"#" + page.id() + "\">" + escaped(page.title()) + "</a></li>\n")
        .collect(Collectors.joining());
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
