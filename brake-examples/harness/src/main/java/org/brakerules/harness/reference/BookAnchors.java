package org.brakerules.harness.reference;

import java.net.URI;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Where the pages and headings of the book stand when all of it is one document. */
final class BookAnchors {

  private static final String CONTENTS = "README";

  private final Map<String, String> byFile;

  BookAnchors(List<Page> pages) {
    this.byFile =
        pages.stream()
            .map(Page::file)
            .collect(Collectors.toMap(Function.identity(), BookAnchors::name));
  }

  private static String name(String file) {
    String name = file.substring(file.lastIndexOf('/') + 1, file.lastIndexOf('.'));
    return name.equals(CONTENTS) ? "contents" : name;
  }

  /** The id of a page. */
  String of(String file) {
    return Objects.requireNonNull(byFile.get(file), file);
  }

  /** The id of a heading; another page may have a heading of the same words. */
  String of(String file, String heading) {
    return of(file) + "/" + Links.anchor(heading);
  }

  /**
   * The link inside the document for a link between two files.
   *
   * @throws BookMistake if it leads to no page
   */
  String link(String fromFile, String destination) {
    URI target = target(fromFile, destination);
    String page = destination.startsWith("#") ? fromFile : target.toString().split("#", 2)[0];
    if (!byFile.containsKey(page)) {
      throw leadsNowhere(fromFile, destination);
    }
    String fragment = target.getFragment();
    return "#" + of(page) + (fragment == null ? "" : "/" + fragment);
  }

  private static URI target(String fromFile, String destination) {
    try {
      return URI.create(fromFile).resolve(destination);
    } catch (IllegalArgumentException noAddress) {
      throw leadsNowhere(fromFile, destination);
    }
  }

  private static BookMistake leadsNowhere(String fromFile, String destination) {
    return new BookMistake(
        "%s links to \"%s\", which is no page of the book; link to one that is, such as limits.md, or take the link out"
            .formatted(fromFile, destination));
  }
}
