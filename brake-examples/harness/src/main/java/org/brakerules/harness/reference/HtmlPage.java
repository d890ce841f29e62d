package org.brakerules.harness.reference;

import java.util.List;
import org.commonmark.Extension;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.Heading;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.AttributeProvider;
import org.commonmark.renderer.html.HtmlRenderer;

/** One page as a section of the HTML document. */
final class HtmlPage {

  private static final List<Extension> TABLES = List.of(TablesExtension.create());
  private static final Parser PARSER = Parser.builder().extensions(TABLES).build();
  private static final int DEEPEST = 6;

  private final Page page;
  private final BookAnchors anchors;
  private final Node root;
  private final String title;

  HtmlPage(Page page, BookAnchors anchors) {
    this.page = page;
    this.anchors = anchors;
    this.root = PARSER.parse(page.markdown());
    if (!(root.getFirstChild() instanceof Heading first) || first.getLevel() != 1) {
      throw new BookMistake(
          page.file()
              + " does not begin with its title; write it on the first line, behind \"# \"");
    }
    this.title = words(first);
    root.accept(new IntoTheBook());
  }

  String id() {
    return anchors.of(page.file());
  }

  String title() {
    return title;
  }

  String html() {
    HtmlRenderer renderer =
        HtmlRenderer.builder()
            .escapeHtml(true)
            .nodeRendererFactory(WideTable::new)
            .extensions(TABLES)
            .attributeProviderFactory(context -> attributes())
            .build();
    return "<section aria-labelledby=\"" + id() + "\">\n" + renderer.render(root) + "</section>\n";
  }

  private AttributeProvider attributes() {
    return (node, tag, attributes) -> {
      if (node instanceof Heading heading) {
        attributes.put("id", id(heading));
      } else if (node instanceof TableCell cell && cell.isHeader()) {
        attributes.put("scope", "col");
      }
    };
  }

  private String id(Heading heading) {
    return heading.getPrevious() == null ? id() : anchors.of(page.file(), words(heading));
  }

  private static String words(Heading heading) {
    StringBuilder words = new StringBuilder();
    heading.accept(
        new AbstractVisitor() {
          @Override
          public void visit(Text text) {
            words.append(text.getLiteral());
          }

          @Override
          public void visit(Code code) {
            words.append(code.getLiteral());
          }
        });
    return words.toString();
  }

  /** Makes a page part of a larger document: its title is one heading of many. */
  private final class IntoTheBook extends AbstractVisitor {

    @Override
    public void visit(Heading heading) {
      heading.setLevel(Math.min(DEEPEST, heading.getLevel() + 1));
      visitChildren(heading);
    }

    @Override
    public void visit(Link link) {
      link.setDestination(anchors.link(page.file(), link.getDestination()));
      visitChildren(link);
    }
  }
}
