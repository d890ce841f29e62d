"use strict";
(() => {
  const MOST = 50;
  const field = document.getElementById("search");
  const found = document.getElementById("found");
  const hits = document.getElementById("hits");
  let entries = [];

  // An entry is a heading with all that stands below it, up to the next heading.
  const read = () => {
    for (const section of document.querySelectorAll("main section")) {
      const page = section.querySelector("h2").textContent;
      for (const node of section.children) {
        if (/^H[2-6]$/.test(node.tagName)) {
          entries.push({ page, id: node.id, title: node.textContent, text: "" });
        }
        entries[entries.length - 1].text += " " + node.textContent.toLowerCase();
      }
    }
  };

  // A title that holds every word is what was looked for; a text that does may be.
  const rank = (entry, words) => {
    const title = entry.title.toLowerCase();
    if (title.startsWith(words.join(" "))) return 0;
    return words.every(word => title.includes(word)) ? 1 : 2;
  };

  const shown = entry => {
    const item = document.createElement("li");
    const link = document.createElement("a");
    const page = document.createElement("span");
    link.href = "#" + entry.id;
    link.textContent = entry.title;
    page.textContent = entry.page;
    link.append(page);
    item.append(link);
    return item;
  };

  const search = () => {
    if (entries.length === 0) read();
    const words = field.value.toLowerCase().split(/\s+/).filter(Boolean);
    const all = words.length === 0 ? [] : entries
      .filter(entry => words.every(word => entry.text.includes(word)))
      .sort((one, other) => rank(one, words) - rank(other, words));
    hits.replaceChildren(...all.slice(0, MOST).map(shown));
    const places = all.length === 1 ? "1 place" : all.length + " places";
    const more = all.length > MOST ? ", the first " + MOST + " shown" : "";
    found.textContent = words.length === 0 ? "" : places + more;
  };

  field.addEventListener("input", search);
  field.form.addEventListener("submit", event => {
    event.preventDefault();
    const first = hits.querySelector("a");
    if (first) first.click();
  });
})();
