package org.brakerules.harness.reference;

import java.net.URI;
import java.util.List;
import java.util.Map;
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
    String id = byFile.get(file);
    if (id == null) {
      throw new IllegalStateException("The book has no page " + file + ".");
    }
    return id;
  }

  /** The id of a heading; another page may have a heading of the same words. */
  String of(String file, String heading) {
    return of(file) + "/" + Links.anchor(heading);
  }

  /** The link inside the document for a link between two files. */
  String link(String fromFile, String destination) {
    URI target = URI.create(fromFile).resolve(destination);
    String page = destination.startsWith("#") ? fromFile : target.getPath();
    String fragment = target.getFragment();
    return "#" + of(page) + (fragment == null ? "" : "/" + fragment);
  }
}
