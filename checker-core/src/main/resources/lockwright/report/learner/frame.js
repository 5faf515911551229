(function () {
  'use strict';
  var box = JSON.parse(document.getElementById('data').textContent);
  var apparatus = new Apparatus(box);
  var says = document.getElementById('says');
  var done = document.getElementById('done');
  var undo = document.getElementById('undo');
  var partWay = document.getElementById('part-way');
  var collars = document.getElementById('collars');
  var variants = Array.from(document.querySelectorAll('.variant')).map(function (shape) {
    return { shape: shape, when: JSON.parse(shape.getAttribute('data-when')) };
  });
  var PLACES = { N: 'normal', M: 'part-way', R: 'reversed' };
  var GATES = { N: 'across the road', M: 'part-way', R: 'across the line' };
  var conditions = box.controls ? box.controls.conditions : [];
  var buttons = [];
  var past = [];
  var now = { state: apparatus.beginning(), said: '', came: {} };

  function element(name, within, words) {
    var made = document.createElement(name);
    made.textContent = words;
    within.appendChild(made);
    return made;
  }

  function place(thing, at) {
    return (thing.indexOf('gates ') === 0 ? GATES : PLACES)[at];
  }

  function why(holds) {
    return holds.map(function (hold) {
      var entry = box.locking[hold.entry];
      return entry ? "'" + entry.text + "' (" + entry.at + ')' : hold.words;
    }).join('; ');
  }

  function found(state, key) {
    return apparatus.movements(state).filter(function (m) { return m.key === key; })[0];
  }

  function refused(button, words) {
    says.textContent = '\u2718 ' + words;
    says.className = 'refused';
    buttons.forEach(function (other) { other.button.classList.toggle('held', other.button === button); });
    bring(button);
  }

  function went(next, words) {
    past.push(now);
    next.said = words;
    now = next;
    show();
  }

  // Where a row of levers is wider than the page, the one that is worked stays in view.
  function bring(button) {
    button.scrollIntoView({ block: 'nearest', inline: 'nearest' });
  }

  // A whole stroke is two halves, the first of which may be free and the second held.
  function work(button, thing, name) {
    var from = now.state[thing];
    var to = from === 'N' ? 'R' : 'N';
    var halves = [from + '\u003eM', 'M\u003e' + to];
    if (from === 'M') {
      to = partWay.checked ? now.came[thing] : now.came[thing] === 'N' ? 'R' : 'N';
      halves = ['M\u003e' + to];
    } else if (partWay.checked) {
      to = 'M';
      halves = halves.slice(0, 1);
    }
    var state = now.state;
    var reached = from;
    var holds = [];
    halves.forEach(function (half) {
      if (holds.length) {
        return;
      }
      var movement = found(state, thing + ' ' + half);
      holds = movement.holds(state);
      if (!holds.length) {
        state = movement.after(state);
        reached = half.slice(-1);
      }
    });
    if (reached === from) {
      refused(button, name + ' will not move: ' + why(holds) + '.');
      return;
    }
    var came = Object.assign({}, now.came);
    if (from !== 'M') {
      came[thing] = from;
    }
    went({ state: state, came: came }, name + ' ' + place(thing, reached) +
      (holds.length ? ', and no further: ' + why(holds) : ''));
  }

  function does(button, key) {
    var movement = found(now.state, key);
    var holds = movement.holds(now.state);
    if (holds.length) {
      refused(button, key + ': not free: ' + why(holds) + '.');
    } else {
      went({ state: movement.after(now.state), came: now.came }, key);
    }
  }

  // A collar reminds: it holds its lever, and is no movement, so that nothing undoes it but a press.
  function collar(button, name) {
    var on = button.classList.toggle('collared');
    show();
    says.textContent = on ? 'A collar is on: ' + name + ' does not move.' : 'The collar is off: ' + name + '.';
    says.className = 'moved';
  }

  function worked(button, thing, name, words) {
    buttons.push({ button: button, thing: thing, words: words, name: name });
    button.addEventListener('click', function () {
      if (words ? collars.checked : false) {
        collar(button, name);
      } else if (button.classList.contains('collared')) {
        refused(button, name + ' will not move: a collar is on it.');
      } else {
        work(button, thing, name);
      }
    });
  }

  // Where the diagram is wider than the page: what has moved in it comes into view.
  function look(moved) {
    if (!moved) {
      return;
    }
    var frame = moved.closest('.picture-frame');
    var view = frame.getBoundingClientRect();
    var at = moved.getBoundingClientRect();
    if (Math.sign(Math.min(at.left - view.left, view.right - at.right)) === -1) {
      frame.scrollLeft += (at.left + at.right - view.left - view.right) / 2;
    }
  }

  function show() {
    var moved = variants.filter(function (v) {
      var before = v.shape.classList.contains('now');
      return v.shape.classList.toggle('now', Object.keys(v.when).every(function (thing) {
        return v.when[thing].indexOf(now.state[thing]) !== -1;
      })) ? !before : false;
    }).map(function (v) { return v.shape; });
    if (past.length) {
      look(moved.filter(function (shape) { return shape.closest('.picture-frame'); })[0]);
    }
    buttons.forEach(function (b) {
      b.button.classList.remove('held');
      if (b.thing) {
        var at = place(b.thing, now.state[b.thing]);
        b.button.setAttribute('aria-label', b.name + (b.words ? ', ' + b.words : '') + ': ' + at +
          (b.button.classList.contains('collared') ? ', a collar on it' : ''));
        if (!b.words) {
          b.button.textContent = b.name + ': ' + at;
        }
      }
    });
    says.textContent = past.length ? '\u2714 ' + now.said + '.' : 'All levers are normal. Work one.';
    says.className = 'moved';
    undo.disabled = !past.length;
    done.textContent = '';
    past.slice(1).concat(past.length ? [now] : []).forEach(function (moment) {
      element('li', done, moment.said);
    });
    box.sections.forEach(function (section, i) { told(section, document.getElementById('section-' + i)); });
    if (conditions.length) {
      document.getElementById('outside').textContent = '';
      conditions.forEach(function (condition) {
        element('li', document.getElementById('outside'), condition.name + ' (' + condition.kind + ', ' +
          condition.of.join(', ') + '): ' + (now.state['condition ' + condition.name] === 'met' ? 'met' : 'not met'));
      });
    }
  }

  // What the instruments hold and do, in words.
  function told(section, list) {
    function value(what) {
      return now.state['section ' + section.name + ': ' + what];
    }
    list.textContent = '';
    section.instruments.forEach(function (e) {
      element('li', list, e.name + ': ' + value('tokens in ' + e.name) + ' in it' +
        (value('plunging at ' + e.name) === 'yes' ? ', plunging' : '') +
        (value('withdrawal at ' + e.name) === 'yes' ? ', withdrawing' : ''));
    });
    element('li', list, 'out of all instruments: ' + value('tokens out') +
      (section.counted ? ', of which fresh: ' + value('fresh tokens') : ''));
    element('li', list, 'the instruments are ' + value('phase') + (value('phase') === 'in' ? '' : ' of') + ' phase');
    if (section.release) {
      element('li', list, 'release of ' + section.release.levers.join(', ') + ': ' + value('release'));
    }
    section.groundFrames.forEach(function (lock) {
      var kind = value('lock of ' + lock.groundFrame);
      element('li', list, 'lock of ground frame ' + lock.groundFrame + ': ' +
        (kind === 'empty' ? 'empty' : 'a ' + section.token + ' in it'));
    });
  }

  function grouped(heading, things, list) {
    if (things.length) {
      element('h3', document.getElementById('others'), heading);
      if (list) {
        element('ul', document.getElementById('others'), '').id = list;
      }
      var row = element('div', document.getElementById('others'), '');
      row.className = 'events';
      things.forEach(function (make) { make(row); });
    }
  }

  function button(row, words) {
    var made = element('button', row, words);
    made.type = 'button';
    return made;
  }

  box.levers.forEach(function (lever, i) {
    var own = document.getElementById('lever-' + i);
    if (!own.disabled) {
      worked(own, 'lever ' + lever.id, 'Lever ' + lever.id, own.getAttribute('data-label'));
    }
  });
  var moving = { points: [], gates: [] };
  Object.keys(now.state).forEach(function (thing) {
    var kind = thing.split(' ')[0];
    if (moving[kind]) {
      moving[kind].push(function (row) {
        worked(button(row, thing), thing, thing, '');
      });
    }
  });
  grouped('Points that move by themselves', moving.points);
  grouped('Gates', moving.gates);
  grouped('Rods', box.layout.points.filter(function (points) { return points.rodMayBreak; }).map(function (points) {
    return function (row) {
      var made = button(row, 'the rod of ' + points.id + ' breaks');
      buttons.push({ button: made });
      made.addEventListener('click', function () {
        does(made, 'rod of ' + points.id + ' breaks at ' + now.state['lever ' + points.lever]);
      });
    };
  }));
  box.sections.forEach(function (section, i) {
    var prefix = 'section ' + section.name + ': ';
    var all = apparatus.movements(now.state).filter(function (m) { return m.key.indexOf(prefix) === 0; });
    grouped('Section ' + section.name, all.map(function (movement) {
      return function (row) {
        var made = button(row, movement.key.slice(prefix.length));
        buttons.push({ button: made });
        made.addEventListener('click', function () { does(made, movement.key); });
      };
    }), 'section-' + i);
  });

  grouped('From outside', conditions.reduce(function (all, condition) {
    return all.concat(['becomes met', 'ceases to be met'].map(function (way) {
      return function (row) {
        var made = button(row, condition.name + ' ' + way);
        buttons.push({ button: made });
        made.addEventListener('click', function () { does(made, 'condition ' + condition.name + ': ' + way); });
      };
    }));
  }, []), 'outside');

  undo.addEventListener('click', function () {
    now = past.pop();
    show();
    if (undo.disabled) {
      document.getElementById('levers').querySelector('button:enabled').focus();
    }
  });
  document.getElementById('again').addEventListener('click', function () {
    past = [];
    now = { state: apparatus.beginning(), said: '', came: {} };
    buttons.forEach(function (b) { b.button.classList.remove('collared'); });
    show();
  });
  document.getElementById('levers').addEventListener('keydown', function (e) {
    var by = { ArrowLeft: -1, ArrowRight: 1 }[e.key];
    if (!by || e.altKey || e.ctrlKey || e.metaKey || e.shiftKey) {
      return;
    }
    var all = Array.from(document.querySelectorAll('#levers button:enabled'));
    var next = all[all.indexOf(document.activeElement) + by];
    if (next) {
      e.preventDefault();
      next.focus();
    }
  });

  document.documentElement.classList.add('works');
  show();
})();
