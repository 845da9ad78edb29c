// What an answers file says: conditions with three-valued truth, quantities in whole smallest units, days, and the plain
// layout. It knows no page; form.js shows and asks. The same cases are run against this file and against the program.
var questionnaire = (function () {
  "use strict";
  var FAILS = 0, OPEN = 1, HOLDS = 2;
  var NUMBER = /^-?(0|[1-9][0-9]{0,11}|[1-9][0-9]{0,2}(,[0-9]{3}){1,3})(\.[0-9]{1,9})?$/;
  var NUMBER_AT = /[-+]?0[xXoObB][0-9a-fA-F]+|[-+]?[0-9.]+[eE][-+]?[0-9]+|[-+]?\.(?:nan|inf)|[-+]?[0-9.][0-9,._:]*/iy;
  var UNIT_AT = /\s*(?:m?m[23](?![0-9])\s*|[^0-9]*)/y;
  var DAY = /^([0-9]{4})-([0-9]{2})-([0-9]{2})$/;
  var PLAIN = /^[A-Za-z0-9\u00C0-\u024F£€](?:[A-Za-z0-9\u00C0-\u024F£€ .,'()\/+%\u00B2\u00B3Ω&;!?_-]*[^ ])?$/;
  var KEY = /^([a-z0-9]+(?:-[a-z0-9]+)*):(?: (.+))?$/;
  var ESCAPES = { '"': '"', "\\": "\\", n: "\n", r: "\r", t: "\t" };
  var VAT = ["inc vat", "incl vat", "inc. vat", "incl. vat", "including vat", "ex vat", "excl vat", "excl. vat", "excluding vat", "plus vat", "+ vat", "outside vat", "no vat"];

  function own(map, key) {
    return Object.prototype.hasOwnProperty.call(map, key) ? map[key] : undefined;
  }

  // ---- Truth ----

  function judge(condition, standings) {
    if (condition.all) {
      return Math.min.apply(null, [HOLDS].concat(condition.all.map(function (c) { return judge(c, standings); })));
    }
    if (condition.any) {
      return Math.max.apply(null, [FAILS].concat(condition.any.map(function (c) { return judge(c, standings); })));
    }
    if (condition.none) {
      return Math.min.apply(null, [HOLDS].concat(condition.none.map(function (c) { return HOLDS - judge(c, standings); })));
    }
    var given = standings[condition.name];
    return given.standing === "known" ? compare(condition, given.value) : given.standing === "unknown" ? OPEN : FAILS;
  }

  function compare(condition, value) {
    if (condition.is) {
      var chosen = Array.isArray(value) ? (value.length === 0 ? ["none"] : value) : [value];
      return chosen.some(function (id) { return condition.is.indexOf(id) >= 0; }) ? HOLDS : FAILS;
    }
    return above(condition.from, value, 1, condition.fromOpen) && above(condition.to, value, -1, condition.toOpen) ? HOLDS : FAILS;
  }

  function above(limit, value, side, isOpen) {
    if (limit === undefined) {
      return true;
    }
    var sign = typeof limit === "string" ? (value < limit ? -1 : value > limit ? 1 : 0) : against(value, BigInt(limit));
    return sign * side > 0 || (sign === 0 && !isOpen);
  }

  function against(amount, limit) {
    var other = limit * amount.under;
    return amount.over < other ? -1 : amount.over > other ? 1 : 0;
  }

  // ---- Values. An amount is a fraction of whole numbers, in the smallest unit of its dimension. ----

  function fault(id, what) {
    return { fault: id, what: what };
  }

  function decimal(text) {
    var parts = text.replace(/,/g, "").split(".");
    var places = parts.length > 1 ? parts[1].length : 0;
    return { over: BigInt(parts.join("")), under: 10n ** BigInt(places) };
  }

  function money(text, asked) {
    var parts = /^(\S*)\s*([^]*)$/.exec(text.trim());
    var number = parts[1], words = parts[2].trim();
    if (!NUMBER.test(number)) {
      return fault("number", number);
    }
    if (/\./.test(number) && number.length - number.indexOf(".") !== 3) {
      return fault("pence", number);
    }
    if (words !== "" && VAT.indexOf(words.toLowerCase()) < 0) {
      return fault("vat", words);
    }
    var amount = decimal(number);
    return { over: amount.over * BigInt(asked.size), under: amount.under };
  }

  function split(text) {
    var parts = [];
    for (var at = 0; at < text.length;) {
      NUMBER_AT.lastIndex = at;
      var number = NUMBER_AT.exec(text);
      if (!number) {
        return [];
      }
      UNIT_AT.lastIndex = at + number[0].length;
      var unit = UNIT_AT.exec(text)[0];
      parts.push({ number: number[0], unit: unit.trim() });
      at += number[0].length + unit.length;
    }
    return parts;
  }

  function quantity(text, question, units) {
    var asked = own(units, question.unit);
    var isMoney = asked.dimension === "Pounds" || asked.dimension === "Euros";
    var trimmed = text.trim();
    if (/^[£€]/.test(trimmed)) {
      return trimmed[0] === question.unit ? money(trimmed.slice(1), asked) : fault("unit", trimmed[0]);
    }
    var parts = split(trimmed);
    if (parts.length === 0) {
      return fault("number", trimmed);
    }
    if (isMoney && parts.length === 1 && (parts[0].unit === "" || VAT.indexOf(parts[0].unit.toLowerCase()) >= 0)) {
      return money(parts[0].number + " " + parts[0].unit, asked);
    }
    var sum = null, last = null;
    for (var i = 0; i < parts.length; i++) {
      var unit = parts[i].unit === "" && parts.length === 1 ? asked : parts[i].unit === "" ? undefined : own(units, parts[i].unit);
      if (!NUMBER.test(parts[i].number)) {
        return fault("number", parts[i].number);
      }
      if (unit === undefined || unit.dimension !== asked.dimension) {
        return fault("unit", parts[i].unit);
      }
      var amount = decimal(parts[i].number);
      var size = BigInt(unit.size);
      if (last !== null && (last.amount.over % last.amount.under !== 0n || last.amount.over < 0n || amount.over < 0n || amount.over * size >= last.size * amount.under)) {
        return fault("number", trimmed);
      }
      sum = sum === null
        ? { over: amount.over * size, under: amount.under }
        : { over: sum.over * amount.under + amount.over * size * sum.under, under: sum.under * amount.under };
      last = { amount: amount, size: size };
    }
    return sum;
  }

  function inRange(amount, question) {
    return amount.fault ? amount
      : against(amount, BigInt(question.least)) < 0 || (question.most !== undefined && against(amount, BigInt(question.most)) > 0) ? fault("range")
      : amount;
  }

  function day(text) {
    var parts = DAY.exec(text);
    if (!parts) {
      return fault("day", text);
    }
    var year = +parts[1], month = +parts[2], date = +parts[3];
    var lengths = [31, year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
    return year < 1900 || year > 2199 || month < 1 || month > 12 || date < 1 || date > lengths[month - 1] ? fault("day", text) : text;
  }

  function span(text) {
    var ends = text.split(" to ").map(function (end) { return day(end.trim()); });
    var wrong = ends.filter(function (end) { return end.fault; })[0];
    return wrong || (ends.length > 2 || ends[ends.length - 1] < ends[0] ? fault("span", text) : ends);
  }

  // What was written under a question: { one: text, own: true between quotes } or { list: [text, ...] }.
  function valueOf(question, written, units) {
    var isList = written.list !== undefined;
    switch (question.kind) {
      case "choice":
        return !isList && question.options.indexOf(written.one) >= 0 ? written.one : fault("option", written.one);
      case "several":
        return isList ? several(question, written.list) : written.one === "none" ? (question.options.indexOf("none") >= 0 ? ["none"] : []) : fault("option", written.one);
      case "quantity":
        return isList ? fault("number", "") : inRange(quantity(written.one, question, units), question);
      case "day":
        return isList ? fault("day", "") : day(written.one);
      case "days":
        return isList ? days(written.list) : written.one === "none" ? [] : fault("day", written.one);
      case "number-name":
        return isList || /\n/.test(written.one.replace(/\n+$/, "")) ? fault("line", "") : written.one;
      default:
        return isList ? fault("option", "") : written.one;
    }
  }

  function several(question, ids) {
    var wrong = ids.filter(function (id, at) { return question.options.indexOf(id) < 0 || ids.indexOf(id) !== at; });
    return wrong.length > 0 ? fault("option", wrong[0]) : question.options.filter(function (id) { return ids.indexOf(id) >= 0; });
  }

  function days(list) {
    var spans = list.map(span);
    var sum = 0;
    return spans.filter(function (s) { return s.fault; })[0] ||
      spans.map(function (s, at) { sum += lengthOf(s); return sum > 366 ? fault("year", list[at]) : s; }).filter(function (s) { return s.fault; })[0] || spans;
  }

  function lengthOf(span) {
    var ends = [span[0], span[span.length - 1]].map(function (day) { return Date.UTC(+day.slice(0, 4), day.slice(5, 7) - 1, +day.slice(8)); });
    return Math.round((ends[1] - ends[0]) / 86400000) + 1;
  }

  function isUnknown(question, written) {
    return written.one === "unknown" && !(written.own && (question.kind === "text" || question.kind === "number-name"));
  }

  // By question: not asked, unknown (with the fault of a wrong answer, if there is one), or known with its value.
  function standings(data, answers) {
    var found = {};
    data.questions.forEach(function (question) {
      var written = own(answers, question.name);
      if (question.ask && judge(question.ask, found) === FAILS) {
        found[question.name] = { standing: "not-asked" };
      } else if (written === undefined || isUnknown(question, written)) {
        found[question.name] = { standing: "unknown" };
      } else {
        var value = valueOf(question, written, data.units);
        found[question.name] = value.fault ? { standing: "unknown", fault: value } : { standing: "known", value: value };
      }
    });
    return found;
  }

  // ---- The plain layout ----

  function quoted(text) {
    return '"' + text.replace(/[\\"\n\r\t]/g, function (c) {
      return c === "\n" ? "\\n" : c === "\r" ? "\\r" : c === "\t" ? "\\t" : "\\" + c;
    }) + '"';
  }

  function scalar(value) {
    return PLAIN.test(value.one) && value.one !== "null" && !(value.own && value.one === "unknown") ? value.one : quoted(value.one);
  }

  function writeEntry(entry, indent, lines) {
    lines.push.apply(lines, entry.notes.map(function (note) { return indent + "#" + note; }));
    writeValue(entry.key + ":", entry.value, indent, lines);
  }

  function writeValue(head, value, indent, lines) {
    if (value.one !== undefined) {
      lines.push(indent + head + " " + scalar(value));
    } else if (value.keys) {
      lines.push(indent + head);
      value.keys.forEach(function (entry) { writeEntry(entry, indent + "  ", lines); });
    } else {
      lines.push(indent + head);
      value.list.forEach(function (item) { writeItem(item, indent + "  ", lines); });
    }
  }

  function writeItem(item, indent, lines) {
    lines.push.apply(lines, item.notes.map(function (note) { return indent + "#" + note; }));
    if (!item.value.keys) {
      writeValue("-", item.value, indent, lines);
      return;
    }
    var inside = [];
    item.value.keys.forEach(function (entry) { writeEntry(entry, indent + "  ", inside); });
    lines.push(indent + "- " + inside[0].slice(indent.length + 2));
    lines.push.apply(lines, inside.slice(1));
  }

  function without(notes, label) {
    var at = notes.indexOf(label);
    return at < 0 ? notes : notes.slice(0, at).concat(notes.slice(at + 1));
  }

  // The text of a file: its notes, and its sections and questions in the order of the questionnaire with their names above.
  function write(data, file) {
    var lines = [];
    var order = data.sections.map(function (s) { return s.key; });
    var names = data.questions.map(function (q) { return q.name; });
    var sections = file.sections.slice().sort(function (a, b) { return order.indexOf(a.key) - order.indexOf(b.key); });
    without(file.top.concat(sections[0].notes), own(data.labels, sections[0].key)).forEach(function (note) { lines.push("#" + note); });
    sections.forEach(function (section, at) {
      if (lines.length > 0) {
        lines.push("");
      }
      var label = own(data.labels, section.key);
      without(at === 0 ? [] : section.notes, label).concat(label).forEach(function (note) { lines.push("#" + note); });
      if (!section.value.keys) {
        writeValue(section.key + ":", section.value, "", lines);
        return;
      }
      lines.push(section.key + ":");
      var entries = section.value.keys.slice();
      if (names.some(function (name) { return name.indexOf(section.key + ".") === 0; })) {
        entries.sort(function (a, b) { return names.indexOf(section.key + "." + a.key) - names.indexOf(section.key + "." + b.key); });
      }
      entries.forEach(function (entry) {
        var name = own(data.labels, section.key + "." + entry.key);
        writeEntry({ key: entry.key, value: entry.value, notes: name === undefined ? entry.notes : without(entry.notes, name).concat(name) }, "  ", lines);
      });
    });
    if (file.end.length > 0) {
      lines.push("");
      file.end.forEach(function (note) { lines.push("#" + note); });
    }
    return lines.join("\n") + "\n";
  }

  function NotPlain(line) {
    this.line = line;
  }

  function unquote(text, line) {
    if (!/^"(?:[^"\\]|\\["\\nrt])*"$/.test(text)) {
      throw new NotPlain(line);
    }
    return { one: text.slice(1, -1).replace(/\\(.)/g, function (all, c) { return ESCAPES[c]; }), own: true };
  }

  function readScalar(text, line) {
    if (text[0] === '"') {
      return unquote(text, line);
    }
    if (!PLAIN.test(text) || text === "null") {
      throw new NotPlain(line);
    }
    return { one: text, own: false };
  }

  function linesOf(text) {
    return text.replace(/^\uFEFF/, "").split(/\r\n|\n|\r/).map(function (line, at) {
      var words = line.replace(/^ */, "");
      return { number: at + 1, indent: line.length - words.length, words: words.replace(/ +$/, "") };
    }).filter(function (line) { return line.words !== ""; });
  }

  // A file of the plain layout: { top, sections, end }. Throws NotPlain with the number of the first line that is not.
  function read(text) {
    var lines = linesOf(text), at = 0;

    function notes() {
      var found = [];
      while (at < lines.length && lines[at].words[0] === "#") {
        found.push(lines[at++].words.slice(1));
      }
      return found;
    }

    function under(rest, indent, line) {
      if (rest !== undefined) {
        return readScalar(rest, line);
      }
      var next = at;
      while (next < lines.length && lines[next].words[0] === "#") {
        next++;
      }
      if (next >= lines.length || lines[next].indent !== indent + 2) {
        throw new NotPlain(line);
      }
      return lines[next].words[0] === "-" ? { list: items(indent + 2) } : { keys: entries(indent + 2) };
    }

    function entries(indent) {
      var found = [], seen = {}, before = at, above = notes();
      while (at < lines.length && lines[at].indent === indent) {
        var key = KEY.exec(lines[at].words), line = lines[at].number;
        if (!key || own(seen, key[1])) {
          throw new NotPlain(line);
        }
        seen[key[1]] = true;
        at++;
        found.push({ key: key[1], notes: above, line: line, value: under(key[2], indent, line) });
        before = at;
        above = notes();
      }
      at = before;
      refuseDeeper(indent);
      return found;
    }

    function items(indent) {
      var found = [], before = at, above = notes();
      while (at < lines.length && lines[at].indent === indent && lines[at].words[0] === "-") {
        var line = lines[at];
        if (line.words.slice(0, 2) !== "- ") {
          throw new NotPlain(line.number);
        }
        var rest = line.words.slice(2);
        if (KEY.test(rest)) {
          lines[at] = { number: line.number, indent: indent + 2, words: rest };
          found.push({ notes: above, value: { keys: entries(indent + 2) } });
        } else {
          at++;
          found.push({ notes: above, value: readScalar(rest, line.number) });
        }
        before = at;
        above = notes();
      }
      at = before;
      refuseDeeper(indent);
      return found;
    }

    function refuseDeeper(indent) {
      var next = at;
      while (next < lines.length && lines[next].words[0] === "#") {
        next++;
      }
      if (next < lines.length && lines[next].indent > indent) {
        throw new NotPlain(lines[next].number);
      }
    }

    var top = notes();
    var sections = entries(0);
    var end = notes();
    if (sections.length === 0 || at < lines.length) {
      throw new NotPlain(at < lines.length ? lines[at].number : 1);
    }
    return { top: top, sections: sections, end: end };
  }

  return { judge: judge, quantity: quantity, standings: standings, write: write, read: read, NotPlain: NotPlain };
}());
