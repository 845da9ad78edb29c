// Remembers the ticks of this handbook on this device. Everything can be read and done without it.
(function () {
  "use strict";
  var root = document.documentElement;
  var prefix = root.dataset.handbook + "/" + root.dataset.page + "/";

  function store(name, on) {
    try {
      if (on) {
        localStorage.setItem(prefix + name, "1");
      } else {
        localStorage.removeItem(prefix + name);
      }
    } catch (refused) {
      // A browser that keeps nothing for files: the tick lasts as long as the page is open.
    }
  }

  function stored(name) {
    try {
      return localStorage.getItem(prefix + name) === "1";
    } catch (refused) {
      return false;
    }
  }

  document.querySelectorAll("input[type=checkbox]").forEach(function (box) {
    box.checked = box.checked || stored(box.id);
    box.addEventListener("change", function () {
      store(box.id, box.checked);
    });
  });
}());
