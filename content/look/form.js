// The questionnaire as a page: shows the questions that matter, says what is wrong beside them, and makes the answers file.
// Nothing leaves the page but what the reader downloads, and nothing stays unless the reader says that the device is theirs.
(function () {
  "use strict";
  var KEY = "guidebuilder/questionnaire";
  var data = JSON.parse(document.getElementById("questionnaire").textContent);
  var form = document.getElementById("answers");
  var ownDevice = document.getElementById("own-device");
  var byName = {};
  var file = empty();

  data.questions.forEach(function (question) { byName[question.name] = question; });

  function empty() {
    return { top: [data.head], sections: [{ key: "handbook", notes: [], value: { keys: [{ key: "format", notes: [], value: { one: "1", own: false } }] } }], end: [] };
  }

  function at(id) {
    return document.getElementById(id);
  }

  function say(id, words, values) {
    at(id).textContent = Object.keys(values || {}).reduce(function (all, name) { return all.split("{" + name + "}").join(values[name]); }, words);
  }

  function boxes(name) {
    return Array.prototype.slice.call(form.querySelectorAll('[name="' + name + '"]'));
  }

  function free(question) {
    return at("a-" + question.name);
  }

  // ---- What stands in the page ----

  function hasBoxes(question) {
    return question.kind === "choice" || question.kind === "several";
  }

  function written(question) {
    var ticked = boxes(question.name).filter(function (box) { return box.checked; }).map(function (box) { return box.value; });
    if (ticked.indexOf("unknown") >= 0) {
      return { one: "unknown", own: false };
    }
    if (hasBoxes(question)) {
      return ticked.length === 0 ? undefined
        : question.kind === "choice" || (ticked[0] === "none" && ticked.length === 1) ? { one: ticked[0], own: false }
        : { list: ticked };
    }
    var text = free(question).value.trim();
    if (text === "") {
      return undefined;
    }
    if (question.kind === "days" && text !== "none") {
      return { list: text.split(/[\n,;]/).map(function (part) { return part.trim(); }).filter(Boolean) };
    }
    return { one: text, own: question.kind === "text" || question.kind === "number-name" };
  }

  function answers() {
    var all = {};
    data.questions.forEach(function (question) {
      var one = written(question);
      if (one !== undefined) {
        all[question.name] = one;
      }
    });
    return all;
  }

  function show(question, one) {
    boxes(question.name).forEach(function (box) {
      box.checked = one !== undefined && (one.list ? one.list.indexOf(box.value) >= 0 : one.one === box.value && !(one.own && !hasBoxes(question)));
    });
    if (!hasBoxes(question)) {
      free(question).value = one === undefined || (one.one === "unknown" && !one.own) ? "" : one.list ? one.list.join("\n") : one.one;
    }
  }

  // ---- The file that the page makes ----

  function notesOf(name) {
    var parts = name.split(".");
    var section = file.sections.filter(function (s) { return s.key === parts[0] && s.value.keys; })[0];
    var entry = section && section.value.keys.filter(function (e) { return e.key === parts[1]; })[0];
    return entry ? entry.notes : [];
  }

  function fileText(given, standings) {
    var sections = file.sections.filter(function (s) { return !data.isAsked[s.key]; });
    data.sections.forEach(function (section) {
      var keys = data.questions.filter(function (q) {
        return q.name.split(".")[0] === section.key && given[q.name] !== undefined && standings[q.name].standing !== "not-asked";
      }).map(function (q) {
        var one = given[q.name];
        return { key: q.name.split(".")[1], notes: notesOf(q.name), value: one.list ? { list: one.list.map(function (t) { return { notes: [], value: { one: t, own: false } }; }) } : one };
      });
      var before = file.sections.filter(function (s) { return s.key === section.key; })[0];
      if (keys.length > 0) {
        sections.push({ key: section.key, notes: before ? before.notes : [], value: { keys: keys } });
      }
    });
    return questionnaire.write(data, { top: file.top, sections: sections, end: file.end });
  }

  // ---- What follows from it ----

  function wrong(question, standing) {
    var group = at("q-" + question.name), line = at("f-" + question.name);
    var words = standing.fault ? data.words["fault-" + standing.fault.fault] : "";
    line.textContent = words.split("{what}").join(standing.fault ? standing.fault.what || "" : "").split("{example}").join(question.example || "");
    line.hidden = words === "";
    (hasBoxes(question) ? [group] : [free(question)]).forEach(function (e) {
      if (words === "") {
        e.removeAttribute("aria-invalid");
      } else if (!hasBoxes(question)) {
        e.setAttribute("aria-invalid", "true");
      }
    });
  }

  function refresh() {
    var given = answers(), standings = questionnaire.standings(data, given);
    var count = { known: 0, unknown: 0, left: 0 };
    data.questions.forEach(function (question) {
      var standing = standings[question.name];
      at("q-" + question.name).hidden = standing.standing === "not-asked";
      wrong(question, standing);
      if (standing.standing !== "not-asked") {
        count[standing.standing === "known" ? "known" : given[question.name] !== undefined && !standing.fault ? "unknown" : "left"]++;
      }
    });
    data.sections.forEach(function (section) {
      var part = at("section-" + section.key);
      if (part) {
        part.hidden = !data.questions.some(function (q) { return q.name.split(".")[0] === section.key && standings[q.name].standing !== "not-asked"; });
      }
    });
    say("progress", data.words.progress, { known: count.known, unknown: count.unknown, left: count.left });
    at("bar").max = count.known + count.unknown + count.left;
    at("bar").value = count.known + count.unknown;
    return { given: given, standings: standings };
  }

  // ---- Keeping it on the device ----

  function stored() {
    try {
      return localStorage.getItem(KEY);
    } catch (refused) {
      return null;
    }
  }

  function keep(text) {
    try {
      if (text === null) {
        localStorage.removeItem(KEY);
      } else {
        localStorage.setItem(KEY, text);
      }
      say("kept", text === null ? data.words["not-kept"] : data.words.kept);
    } catch (refused) {
      ownDevice.checked = false;
      say("kept", data.words["cannot-keep"]);
    }
  }

  function changed() {
    var now = refresh();
    if (ownDevice.checked) {
      keep(fileText(now.given, now.standings));
    }
  }

  // ---- Loading and downloading ----

  function loaded(text) {
    var read = questionnaire.read(text), given = {}, line = {};
    read.sections.filter(function (s) { return data.isAsked[s.key] && s.value.keys; }).forEach(function (section) {
      section.value.keys.forEach(function (entry) {
        var name = section.key + "." + entry.key;
        if (!byName[name] || entry.value.keys || (entry.value.list && entry.value.list.some(function (i) { return i.value.one === undefined; }))) {
          throw { line: entry.line, name: name };
        }
        line[name] = entry.line;
        given[name] = entry.value.list ? { list: entry.value.list.map(function (i) { return i.value.one; }) } : entry.value;
      });
    });
    var stray = read.sections.filter(function (s) { return !data.labels[s.key]; })[0];
    if (stray) {
      throw { line: stray.line, name: stray.key };
    }
    var standings = questionnaire.standings(data, given);
    Object.keys(given).forEach(function (name) {
      var standing = standings[name];
      if (standing.standing === "not-asked" || (standing.fault && hasBoxes(byName[name]))) {
        throw { line: line[name], name: name };
      }
    });
    return { file: read, given: given };
  }

  function load(text, then) {
    try {
      var now = loaded(text);
      file = now.file;
      data.questions.forEach(function (question) { show(question, now.given[question.name]); });
      changed();
      say("told", data.words.loaded, { n: Object.keys(now.given).length });
      then(true);
    } catch (problem) {
      if (problem.line === undefined) {
        throw problem;
      }
      say("told", problem instanceof questionnaire.NotPlain ? data.words["not-plain"] : data.words["not-here"], { n: problem.line, what: problem.name || "" });
      then(false);
    }
  }

  // A file that gives its handbook an id keeps its own name.
  function fileName() {
    var handbook = file.sections.filter(function (s) { return s.key === "handbook" && s.value.keys; })[0];
    var id = handbook && handbook.value.keys.filter(function (e) { return e.key === "id" && /^[a-z0-9-]{3,40}$/.test(e.value.one); })[0];
    return id ? id.value.one + ".yaml" : data.file;
  }

  function download() {
    var now = refresh();
    var faulty = data.questions.filter(function (q) { return now.standings[q.name].fault; });
    if (faulty.length > 0) {
      say("told", data.words["first-correct"], { n: faulty.length });
      (hasBoxes(faulty[0]) ? boxes(faulty[0].name)[0] : free(faulty[0])).focus();
      return;
    }
    var link = document.createElement("a");
    var address = URL.createObjectURL(new Blob([fileText(now.given, now.standings)], { type: "text/yaml" }));
    link.href = address;
    link.download = fileName();
    link.click();
    setTimeout(function () { URL.revokeObjectURL(address); }, 1000);
    var short = now.standings["home.nation"].standing !== "known" || !Object.keys(now.given).some(function (name) { return name.indexOf("wish.") === 0; });
    say("told", short ? data.words["downloaded-short"] : data.words.downloaded, { what: link.download });
  }

  function clear() {
    form.reset();
    data.questions.forEach(function (question) { show(question, undefined); });
    file = empty();
    ownDevice.checked = false;
    keep(null);
    at("sure").hidden = true;
    at("file").value = "";
    refresh();
    say("told", data.words.cleared);
  }

  // ---- What the reader does ----

  // None and don't know exclude the others, and words exclude don't know.
  form.addEventListener("change", function (happened) {
    var box = happened.target;
    var question = byName[box.name];
    if (question && box.checked && question.kind !== "choice") {
      var alone = box.value === "none" || box.value === "unknown";
      boxes(box.name).forEach(function (other) {
        if (other !== box && (alone || other.value === "none" || other.value === "unknown")) {
          other.checked = false;
        }
      });
      if (!hasBoxes(question)) {
        free(question).value = "";
      }
    }
    changed();
  });

  form.addEventListener("input", function (happened) {
    var question = byName[happened.target.id.slice(2)];
    if (question && !hasBoxes(question) && happened.target === free(question)) {
      boxes(question.name).forEach(function (box) { box.checked = false; });
    }
  });

  form.addEventListener("submit", function (happened) { happened.preventDefault(); });

  ownDevice.addEventListener("change", function () {
    if (ownDevice.checked) {
      changed();
    } else {
      keep(null);
    }
  });

  at("file").addEventListener("change", function () {
    var chosen = at("file").files[0];
    if (chosen) {
      chosen.text().then(function (text) { load(text, function () { at("file").value = ""; }); });
    }
  });

  at("download").addEventListener("click", download);
  at("clear").addEventListener("click", function () {
    at("sure").hidden = false;
    at("clear-yes").focus();
  });
  at("clear-yes").addEventListener("click", function () {
    clear();
    at("clear").focus();
  });
  at("clear-no").addEventListener("click", function () {
    at("sure").hidden = true;
    at("clear").focus();
  });

  at("needs-script").hidden = true;
  at("with-script").hidden = false;
  var before = stored();
  if (before === null) {
    refresh();
    say("kept", data.words["not-kept"]);
  } else {
    ownDevice.checked = true;
    load(before, function (isRead) {
      if (!isRead) {
        // What was kept by another page of this kind stays until the reader clears it or keeps new answers.
        ownDevice.checked = false;
        refresh();
        say("kept", data.words["kept-unreadable"]);
      }
    });
  }
}());
