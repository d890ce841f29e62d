package org.brakerules.harness.reference;

import java.util.Map;
import java.util.Set;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.node.Node;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.html.HtmlNodeRendererContext;
import org.commonmark.renderer.html.HtmlWriter;

/** A table in a box of its own, so that a wide one scrolls and not the whole document. */
final class WideTable implements NodeRenderer {

  private final HtmlNodeRendererContext context;
  private final HtmlWriter html;

  WideTable(HtmlNodeRendererContext context) {
    this.context = context;
    this.html = context.getWriter();
  }

  @Override
  public Set<Class<? extends Node>> getNodeTypes() {
    return Set.of(TableBlock.class);
  }

  @Override
  public void render(Node table) {
    html.line();
    html.tag("div", Map.of("class", "wide"));
    html.tag("table");
    for (Node child = table.getFirstChild(); child != null; child = child.getNext()) {
      context.render(child);
    }
    html.tag("/table");
    html.tag("/div");
    html.line();
  }
}
