package org.brakerules.harness.sheet;

/** How the sheet looks on screen and on paper, in black on white. */
final class SheetStyle {

  static final String TEXT =
      """
      :root { color-scheme: light; }
      body { background: white; color: black; font: 1rem/1.4 Arial, Helvetica, sans-serif; margin: 0 auto;
        max-width: 56rem; padding: 1rem; }
      h1 { font-size: 1.5rem; margin: 0 0 .4rem; }
      h2 { border-bottom: 2px solid; font-size: 1.15rem; margin: 1.2rem 0 .4rem; }
      h3 { font-size: 1rem; margin: .7rem 0 .2rem; }
      h2, h3 { break-after: avoid; }
      dl.head { display: flex; flex-wrap: wrap; gap: .2rem 1.5rem; margin: 0; }
      dl.head div { display: flex; gap: .4rem; }
      dt { font-weight: bold; }
      dd { margin: 0; }
      svg { display: block; height: auto; max-width: 100%; }
      .blank { border-bottom: 1px solid; display: inline-block; min-height: 1em; min-width: 6em; }
      .note { margin: .3rem 0; }
      .legend span { margin-right: 1.2rem; }
      ul.parts, .orders, .cautions ol { columns: 2; column-gap: 2rem; }
      ul.parts, .cautions ol { padding: 0; }
      .parts li, .cautions li { margin-left: 1.6em; }
      li { break-inside: avoid; margin-bottom: .25rem; }
      .rule { font-size: .8em; white-space: nowrap; }
      .stop { border: 4px double; padding: 0 .8rem; }
      .work ol { padding-left: 2.8rem; }
      .work span { display: block; }
      .work .blank { display: inline-block; }
      .work li.hold { border-left: 5px solid; padding-left: .5rem; }
      .ends { font-weight: bold; }
      .work .few { min-width: 3em; }
      .passes, .caution, .record { break-before: avoid; }
      .caution { font-style: italic; }
      .work .full { display: inline; font-weight: normal; }
      .work .sign { border-bottom: 1px solid; float: right; height: 1.2em; margin-left: 1em; width: 6em; }
      .pictures { align-items: start; display: flex; flex-wrap: wrap; gap: 1rem; }
      .pictures div { flex: 1 1 40rem; }
      .pictures div + div svg { max-width: 36rem; }
      .pictures p { margin: .2rem 0; }
      @media print {
        @page { margin: 5mm; }
        body { font-size: 6.1pt; line-height: 1; max-width: none; padding: 0; }
        h1 { font-size: 11pt; margin: 0 0 2pt; }
        h2 { border-bottom-width: 1px; font-size: 8.5pt; margin: 2pt 0 1pt; }
        h3 { font-size: 7.5pt; margin: 1.5pt 0 .5pt; }
        body.few { font-size: 7pt; }
        p, .note, .pictures p { margin: 1pt 0; }
        ul, ol { margin: 0; padding-left: 1.4em; }
        li { margin-bottom: 0; }
        ul.parts, .orders, .cautions ol, .steps { columns: 4; column-gap: 7pt; }
        .few ul.parts, .few .orders, .few .cautions ol, .few .steps { columns: 3; }
        .parts li, .cautions li { margin-left: 1.4em; }
        .cautions li { margin-left: 1.8em; }
        .rule { font-size: inherit; white-space: normal; }
        .work ol { padding-left: 2.2em; }
        .work li.hold { border-left-width: 3px; padding-left: 2pt; }
        .work .detail, .work .fitted { display: inline; }
        .work .detail::before { content: ' \\2022  '; }
        .work .full, .work .back { display: none; }
        .work .sign { box-sizing: border-box; height: 1em; margin-left: 3pt; width: 3.5em; }
        .work li { break-inside: auto; display: flow-root list-item; orphans: 3; widows: 2; }
        .blank { min-height: 0; min-width: 3.4em; }
        .work .few { min-width: 2.2em; }
        .head .blank { min-height: 1em; min-width: 9em; }
        .pictures { flex-wrap: nowrap; gap: 6pt; }
        .pictures div { flex: 0 1 42%; }
        .pictures div:first-child { flex-basis: 58%; }
        .pictures div + div svg { max-width: 100%; }
      }
      """;

  private SheetStyle() {}
}
