package org.brakerules.harness.html;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/** HTML that is well-formed XML as well, written from the top down. */
public final class Markup {

  private final StringBuilder text = new StringBuilder();
  private final Deque<String> open = new ArrayDeque<>();

  /** Opens an element; the attributes are names and values in turn. */
  public Markup open(String element, String... attributes) {
    begin(element, attributes);
    text.append('>');
    open.push(element);
    return this;
  }

  /** An element that never has anything in it. */
  public Markup empty(String element, String... attributes) {
    begin(element, attributes);
    text.append("/>\n");
    return this;
  }

  private void begin(String element, String... attributes) {
    text.append('<').append(element);
    for (int i = 0; i < attributes.length; i += 2) {
      text.append(' ').append(attributes[i]).append("=\"");
      text.append(escaped(attributes[i + 1])).append('"');
    }
  }

  /** Closes the element that was opened last. */
  public Markup close() {
    text.append("</").append(open.pop()).append(">\n");
    return this;
  }

  /** Closes what is still open inside an element, and the element. */
  public Markup closeTo(String element) {
    while (!Objects.requireNonNull(open.peek()).equals(element)) {
      close();
    }
    return close();
  }

  public Markup words(String words) {
    text.append(escaped(words));
    return this;
  }

  /** An element with nothing but words in it. */
  public Markup element(String element, String words, String... attributes) {
    return open(element, attributes).words(words).close();
  }

  /** The beginning of a table that scrolls by itself where the page is narrow. */
  public Markup table(String caption, List<String> columns) {
    open("div", "class", "wide").open("table").element("caption", caption);
    open("thead").open("tr");
    columns.forEach(column -> element("th", column, "scope", "col"));
    return closeTo("thead").open("tbody");
  }

  public Markup endTable() {
    return closeTo("div");
  }

  /** A name that can be linked to, made of any words. */
  public static String anchor(String kind, String words) {
    return kind + "-" + words.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9.]+", "-");
  }

  private static String escaped(String words) {
    return words
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
