// How the frame and the instruments of a box can be worked: a reading of docs/meaning.md 2 to 5 of its
// own, by half-strokes, which the tests compare with the one in Java. A state maps each quantity, by its
// name in docs/result.md, to its value. Nothing here knows of a page.
var Apparatus = function (box) {
  'use strict';
  var TO = '\u003e';
  var STROKES = { N: ['M'], M: ['R', 'N'], R: ['M'] };
  var works = {};
  var entries = {};
  var gated = box.layout.levelCrossings.filter(function (crossing) {
    return workOf(crossing.gateLever).kind === 'gate lock';
  });
  var moved = [];

  function workOf(lever) {
    if (!works['lever ' + lever]) {
      works['lever ' + lever] = box.levers.filter(function (l) { return l.id === lever; })[0].work;
    }
    return works['lever ' + lever];
  }

  function lever(state, id) {
    return state['lever ' + id];
  }

  function changed(state, changes) {
    var next = {};
    Object.keys(state).forEach(function (key) { next[key] = state[key]; });
    Object.keys(changes).forEach(function (key) { next[key] = changes[key]; });
    return next;
  }

  // 3.1 to 3.4: the locking table.

  function ofMovement(entry) {
    return entry.kind === 'starts only with normal' || entry.kind === 'not again before';
  }

  function conditionsMayHold(entry, state) {
    return entry.when.every(function (condition) {
      var place = lever(state, condition.lever);
      return place === condition.position || place === 'M';
    });
  }

  function combination(entry, state) {
    var own = lever(state, entry.lever);
    var others = entry.others.map(function (id) { return lever(state, id); });
    if (entry.kind === 'while normal locks both ways') {
      return own === 'R' ? false : others[0] === 'M';
    } else if (own === 'N') {
      return false;
    } else if (entry.kind === 'released by') {
      return others.indexOf('R') === -1;
    } else if (entry.kind === 'locks') {
      return others[0] !== 'N';
    }
    return others[0] === 'M';
  }

  function forbids(entry, state) {
    if (combination(entry, state) ? conditionsMayHold(entry, state) : false) {
      return true;
    }
    if (entry.holds ? lever(state, entry.lever) !== 'N' : false) {
      return entry.others.concat(entry.when.map(function (c) { return c.lever; }))
        .some(function (id) { return lever(state, id) === 'M'; });
    }
    return false;
  }

  // The numbers of the entries that name a lever.
  function naming(id) {
    if (!entries['lever ' + id]) {
      entries['lever ' + id] = [];
      box.locking.forEach(function (entry, number) {
        if (entry.lever === id || entry.others.indexOf(id) !== -1 ||
            entry.when.some(function (condition) { return condition.lever === id; })) {
          entries['lever ' + id].push(number);
        }
      });
    }
    return entries['lever ' + id];
  }

  function turn(entry) {
    return 'turn of ' + entry.lever + ' after ' + entry.others[0];
  }

  function keepsFromStarting(entry, state) {
    var met = entry.kind === 'not again before' ? state[turn(entry)] === 'come' :
      lever(state, entry.others[0]) === 'N';
    return met ? false : conditionsMayHold(entry, state);
  }

  // Levers.

  function out(work) {
    return work.normal === 'in' ? 'R' : 'N';
  }

  function leverNeeds(move, state, lacks) {
    var work = workOf(move.lever);
    var next = Object.create(state);
    next['lever ' + move.lever] = move.to;
    naming(move.lever).forEach(function (number) {
      var entry = box.locking[number];
      if (!ofMovement(entry)) {
        lacks(!forbids(entry, next), entry.text, number);
      } else if (move.from === 'N' ? entry.lever === move.lever : false) {
        lacks(!keepsFromStarting(entry, state), entry.text, number);
      }
    });
    if (move.from === 'N') {
      releasesOf(move.lever).forEach(function (section) {
        lacks(state['section ' + section.name + ': release'] === 'given',
          'lever ' + move.lever + ' leaves normal only while section ' + section.name +
          ' gives its release');
      });
    }
    if (work.heldWhileOpen ? move.from === 'R' : false) {
      groundFrame(work.groundFrame).points.forEach(function (points) {
        lacks(state['points ' + points] === 'N',
          'the release stays given until points ' + points + ' of the ground frame lie normal');
      });
    }
    if (work.kind === 'gate lock' ? move.from === out(work) : false) {
      lacks(state['gates ' + work.levelCrossing] === 'N',
        'the lock goes in only with the gates of ' + work.levelCrossing + ' across the road');
    }
  }

  function leverMoves(move, state, change) {
    var work = workOf(move.lever);
    change['lever ' + move.lever] = move.to;
    box.locking.forEach(function (entry) {
      if (entry.kind !== 'not again before') {
        return;
      }
      if (entry.lever === move.lever) {
        if (move.from === 'N') {
          change[turn(entry)] = 'pull awaited';
        }
      } else if (entry.others[0] === move.lever) {
        // Standing at R as the other starts counts too: seen as it leaves R.
        if (state[turn(entry)] === 'pull awaited' ? [move.from, move.to].indexOf('R') !== -1 : false) {
          change[turn(entry)] = 'return awaited';
        } else if (state[turn(entry)] === 'return awaited' ? move.to === 'N' : false) {
          change[turn(entry)] = 'come';
        }
      }
    });
    if (move.from === 'N') {
      releasesOf(move.lever).forEach(function (section) {
        change['section ' + section.name + ': release'] = 'locked';
      });
      box.sections.forEach(function (section) {
        if (work.kind === 'signal' ? sectionSignals(section).indexOf(work.signal) !== -1 : false) {
          change['section ' + section.name + ': fresh tokens'] = '0';
        }
      });
    }
  }

  function releasesOf(id) {
    return box.sections.filter(function (section) {
      return section.release ? section.release.levers.indexOf(id) !== -1 : false;
    });
  }

  function groundFrame(id) {
    return box.layout.groundFrames.filter(function (frame) { return frame.id === id; })[0];
  }

  // 1.6: running arms with a route into the section.
  function sectionSignals(section) {
    var running = box.layout.signals
      .filter(function (s) { return s.arm === 'stop' || s.arm === 'calling-on'; })
      .map(function (s) { return s.id; });
    return box.routes
      .filter(function (route) {
        return route.end.section === section.name ? running.indexOf(route.signal) !== -1 : false;
      })
      .map(function (route) { return route.signal; });
  }

  // 4.2: the instruments, a line of its table each: what it needs, what it does.

  function instrument(section) {
    var prefix = 'section ' + section.name + ': ';
    var counted = section.counted;
    var often = section.plungeWhileWithdrawing;

    function add(state, change, what, number) {
      change[prefix + what] = String(Number(state[prefix + what]) + number);
    }

    function reverse(state, change) {
      change[prefix + 'phase'] = state[prefix + 'phase'] === 'in' ? 'out' : 'in';
    }

    function reverseAt(when, state, change) {
      if (section.phaseReverses === when) {
        reverse(state, change);
      }
    }

    function takeOut(e, state, change) {
      add(state, change, 'tokens in ' + e.name, -1);
      add(state, change, 'tokens out', 1);
      if (e.name === section.here) {
        if (section.release) {
          change[prefix + 'release'] = 'given';
        }
        if (counted) {
          add(state, change, 'fresh tokens', 1);
        }
      }
    }

    function putIn(e, state, change) {
      add(state, change, 'tokens in ' + e.name, 1);
      add(state, change, 'tokens out', -1);
      reverse(state, change);
      var lasts = section.release ? section.release.lasts : '';
      if (lasts === 'until put in' || (lasts === 'until put in here' ? e.name === section.here : false)) {
        change[prefix + 'release'] = 'locked';
      }
    }

    function tokenIn(e, state, lacks) {
      lacks(state[prefix + 'tokens in ' + e.name] !== '0', 'there is no ' + section.token + ' in ' + e.name);
    }

    function roomIn(e, state, lacks) {
      lacks(state[prefix + 'tokens in ' + e.name] !== String(section.tokens), e.name + ' has all of them');
    }

    function underWay(e, state, lacks) {
      lacks(state[prefix + 'withdrawal at ' + e.name] === 'yes', 'no withdrawal is under way at ' + e.name);
    }

    return {
      'plunge': {
        there: function (e) { return e.attended; },
        needs: function (e, state, lacks) {
          lacks(state[prefix + 'plunging at ' + e.name] === 'no', 'he plunges already at ' + e.name);
          lacks(often || state[prefix + 'withdrawal at ' + e.name] === 'no',
            'a withdrawal is under way at ' + e.name);
        },
        does: function (e, state, change) { change[prefix + 'plunging at ' + e.name] = 'yes'; }
      },
      'stop plunging': {
        there: function (e) { return e.attended; },
        needs: function (e, state, lacks) {
          lacks(state[prefix + 'plunging at ' + e.name] === 'yes', 'nobody plunges at ' + e.name);
        },
        does: function (e, state, change) { change[prefix + 'plunging at ' + e.name] = 'no'; }
      },
      'start a withdrawal': {
        there: function () { return true; },
        needs: function (e, state, lacks) {
          lacks(state[prefix + 'withdrawal at ' + e.name] === 'no', 'one is under way at ' + e.name);
          lacks(state[prefix + 'phase'] === 'in', 'the instruments are out of phase');
          tokenIn(e, state, lacks);
          e.needsConsentOf.forEach(function (other) {
            lacks(state[prefix + 'plunging at ' + other] === 'yes', other + ' does not plunge');
          });
          lacks(often || state[prefix + 'plunging at ' + e.name] !== 'yes', 'he plunges at ' + e.name);
        },
        does: function (e, state, change) {
          change[prefix + 'withdrawal at ' + e.name] = 'yes';
          reverseAt('at the start', state, change);
        }
      },
      'finish the withdrawal': {
        there: function () { return true; },
        needs: function (e, state, lacks) {
          underWay(e, state, lacks);
          tokenIn(e, state, lacks);
        },
        does: function (e, state, change) {
          change[prefix + 'withdrawal at ' + e.name] = 'no';
          takeOut(e, state, change);
          reverseAt('at the end', state, change);
        }
      },
      'give up the withdrawal': {
        there: function () { return true; },
        needs: underWay,
        does: function (e, state, change) {
          change[prefix + 'withdrawal at ' + e.name] = 'no';
          reverseAt('at the start', state, change);
        }
      },
      'put a fresh token in': {
        there: function () { return counted; },
        needs: function (e, state, lacks) {
          lacks(state[prefix + 'fresh tokens'] !== '0', 'no fresh ' + section.token + ' is out');
          roomIn(e, state, lacks);
        },
        does: function (e, state, change) {
          putIn(e, state, change);
          add(state, change, 'fresh tokens', -1);
        }
      },
      'put another token in': {
        there: function () { return true; },
        needs: function (e, state, lacks) {
          var fresh = counted ? state[prefix + 'fresh tokens'] : '0';
          lacks(state[prefix + 'tokens out'] !== fresh,
            'no ' + (counted ? 'other than a fresh ' : '') + section.token + ' is out');
          roomIn(e, state, lacks);
        },
        does: putIn
      },
      'irregular withdrawal': {
        there: function () { return section.irregularWithdrawal !== 'never'; },
        needs: function (e, state, lacks) {
          lacks(state[prefix + 'irregular withdrawal'] !== 'used', 'the one allowed has been made');
          tokenIn(e, state, lacks);
        },
        does: function (e, state, change) {
          takeOut(e, state, change);
          reverse(state, change);
          if (section.irregularWithdrawal === 'once') {
            change[prefix + 'irregular withdrawal'] = 'used';
          }
        }
      }
    };
  }

  // What can move, of levers, of points of ground frames, of gates: a key, its needs, what it does.

  function strokes(thing, prefix, state, move) {
    return STROKES[state[prefix + thing]].map(function (to) {
      var from = state[prefix + thing];
      return { key: prefix + thing + ' ' + from + TO + to, move: move(from, to) };
    });
  }

  function freely(thing, prefix, needs) {
    moved.push(function (state) {
      return strokes(thing, prefix, state, function (from, to) {
        return {
          needs: needs,
          does: function (before, change) { change[prefix + thing] = to; }
        };
      });
    });
  }

  box.sections.forEach(function (section) {
    section.counted = sectionSignals(section).length !== 0;
  });
  box.levers.filter(function (l) { return l.work.kind !== 'spare'; }).forEach(function (l) {
    moved.push(function (state) {
      return strokes(l.id, 'lever ', state, function (from, to) {
        var move = { lever: l.id, from: from, to: to };
        return {
          needs: function (before, lacks) { leverNeeds(move, before, lacks); },
          does: function (before, change) { leverMoves(move, before, change); }
        };
      });
    });
  });
  box.layout.groundFrames.forEach(function (frame) {
    frame.points.forEach(function (points) {
      freely(points, 'points ', function (state, lacks) {
        lacks(lever(state, frame.releaseLever) === 'R',
          'the points of ground frame ' + frame.id + ' move only with lever ' + frame.releaseLever + ' reversed');
      });
    });
  });
  gated.forEach(function (crossing) {
    freely(crossing.id, 'gates ', function (state, lacks) {
      lacks(lever(state, crossing.gateLever) === out(workOf(crossing.gateLever)),
        'the gates of ' + crossing.id + ' move only with their lock out');
    });
  });
  box.sections.forEach(function (section) {
    var deeds = instrument(section);
    Object.keys(deeds).forEach(function (deed) {
      section.instruments.filter(deeds[deed].there).forEach(function (e) {
        moved.push(function () {
          return [{
            key: 'section ' + section.name + ': ' + deed + ' at ' + e.name,
            move: {
              needs: function (state, lacks) { deeds[deed].needs(e, state, lacks); },
              does: function (state, change) { deeds[deed].does(e, state, change); }
            }
          }];
        });
      });
    });
  });

  // The movements that can be tried in the state, in the order of 7; each has a key, and says what holds
  // it (a list of words and the number of an entry, or -1) and which state it leads to.
  function movements(state) {
    var all = [];
    moved.forEach(function (of) {
      of(state).forEach(function (found) {
        all.push({
          key: found.key,
          holds: function () {
            var holds = [];
            found.move.needs(state, function (met, words, entry) {
              if (!met) {
                holds.push({ words: words, entry: entry === undefined ? -1 : entry });
              }
            });
            return holds;
          },
          after: function () {
            var change = {};
            found.move.does(state, change);
            return changed(state, change);
          }
        });
      });
    });
    return all;
  }

  // 5: one of the beginnings: what is left open there lies normal, or is locked, and the tokens are shared
  // out evenly.
  function beginning() {
    var state = {};
    box.levers.forEach(function (l) { state['lever ' + l.id] = 'N'; });
    box.layout.groundFrames.forEach(function (frame) {
      frame.points.forEach(function (points) { state['points ' + points] = 'N'; });
    });
    gated.forEach(function (crossing) { state['gates ' + crossing.id] = 'N'; });
    box.locking.forEach(function (entry) {
      if (entry.kind === 'not again before') {
        state[turn(entry)] = 'come';
      }
    });
    box.sections.forEach(function (section) {
      var prefix = 'section ' + section.name + ': ';
      var left = section.tokens;
      state[prefix + 'phase'] = 'in';
      section.instruments.forEach(function (e, i) {
        var share = Math.ceil(left / (section.instruments.length - i));
        state[prefix + 'tokens in ' + e.name] = String(share);
        left -= share;
        if (e.attended) {
          state[prefix + 'plunging at ' + e.name] = 'no';
        }
        state[prefix + 'withdrawal at ' + e.name] = 'no';
      });
      state[prefix + 'tokens out'] = '0';
      if (section.release) {
        state[prefix + 'release'] = section.release.begins === 'given' ? 'given' : 'locked';
      }
      if (section.counted) {
        state[prefix + 'fresh tokens'] = '0';
      }
      if (section.irregularWithdrawal === 'once') {
        state[prefix + 'irregular withdrawal'] = 'unused';
      }
    });
    return state;
  }

  return { movements: movements, beginning: beginning };
};
