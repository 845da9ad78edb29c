// Remembers the ticks and the colours of this handbook on this device, and filters long lists. Everything can be read
// and done without it. What it says stands in the page, in the language of the page.
(function () {
  "use strict";
  var root = document.documentElement;
  var say = document.currentScript.dataset;
  var book = root.dataset.handbook + "/";
  var prefix = book + root.dataset.page + "/";

  // A browser that keeps nothing for files: a tick lasts as long as the page is open.
  function store(key, value) {
    try {
      if (value) {
        localStorage.setItem(key, value);
      } else {
        localStorage.removeItem(key);
      }
    } catch (refused) {
      return;
    }
  }

  function stored(key) {
    try {
      return localStorage.getItem(key);
    } catch (refused) {
      return null;
    }
  }

  function make(tag, parent, words) {
    var made = parent.appendChild(document.createElement(tag));
    made.textContent = words || "";
    return made;
  }

  function aid(words, control) {
    var line = document.createElement("p");
    line.className = "aid";
    make("label", line, words).htmlFor = control.id;
    line.appendChild(control);
    return line;
  }

  function rememberTicks() {
    document.querySelectorAll("input[type=checkbox]").forEach(function (box) {
      box.checked = box.checked || stored(prefix + box.id) === "1";
      box.addEventListener("change", function () {
        store(prefix + box.id, box.checked ? "1" : "");
      });
    });
  }

  function wear(theme) {
    if (theme) {
      root.dataset.theme = theme;
    } else {
      delete root.dataset.theme;
    }
  }

  function offerColours() {
    var choice = document.createElement("select");
    choice.id = "script-colours";
    [["", say.asDevice], ["light", say.light], ["dark", say.dark]].forEach(function (pair) {
      make("option", choice, pair[1]).value = pair[0];
    });
    choice.value = root.dataset.theme || "";
    choice.addEventListener("change", function () {
      wear(choice.value);
      store(book + "colours", choice.value);
    });
    document.querySelector("footer").appendChild(aid(say.colours, choice));
  }

  function offerFilter(list) {
    var field = document.createElement("input");
    field.id = "script-filter";
    field.type = "search";
    field.autocomplete = "off";
    var line = aid(say.filter, field);
    var told = make("span", line);
    told.setAttribute("role", "status");
    var heads = list.querySelectorAll(":scope > dt");
    field.addEventListener("input", function () {
      var word = field.value.trim().toLowerCase();
      var shown = 0;
      heads.forEach(function (head) {
        var text = head.nextElementSibling;
        var fits = (head.textContent + " " + text.textContent).toLowerCase().indexOf(word) >= 0;
        head.hidden = text.hidden = !fits;
        shown += fits ? 1 : 0;
      });
      told.textContent = say.shown.replace("{n}", shown).replace("{all}", heads.length);
    });
    list.parentNode.insertBefore(line, list);
  }

  wear(stored(book + "colours"));
  rememberTicks();
  offerColours();
  if (say.filter) {
    document.querySelectorAll("main > dl").forEach(offerFilter);
  }
}());
