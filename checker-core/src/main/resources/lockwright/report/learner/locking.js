// How the frame and the instruments of a box can be worked: a reading of docs/meaning.md 2 to 5 of its
// own, by half-strokes, which the tests compare with the one in Java. A state maps each quantity, by its
// name in docs/result.md, to its value. Nothing here knows of a page.
var Apparatus = function (box) {
  'use strict';
  var TO = '\u003e';
  var STROKES = { N: ['M'], M: ['R', 'N'], R: ['M'] };
  var entries = {};
  var gated = box.layout.levelCrossings.filter(function (crossing) {
    return workOf(crossing.gateLever).kind === 'gate lock';
  });
  var moved = [];
  var controls = box.controls ? box.controls : { conditions: [], leverLocks: [], armControls: [] };
  var answering = box.layout.points.filter(function (points) { return points.workedElectrically; });
  var byHand = box.layout.points.filter(function (points) { return points.workedByHand; });
  var mayBreak = box.layout.points.filter(function (points) { return points.rodMayBreak; });

  function workOf(id) {
    return box.levers.filter(function (l) { return l.id === id; })[0].work;
  }

  function moves(work) {
    return work.kind === 'spare' ? false : work.kind !== 'out of use';
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

  // Each entry with the quantities that it speaks of.
  var rules = box.locking.map(function (entry) {
    return {
      kind: entry.kind,
      turn: turn(entry),
      holds: entry.holds,
      own: 'lever ' + entry.lever,
      others: entry.others.map(function (id) { return 'lever ' + id; }),
      when: entry.when.map(function (c) { return { at: 'lever ' + c.lever, position: c.position }; })
    };
  });

  function conditionsMayHold(rule, state) {
    return rule.when.every(function (condition) {
      var place = state[condition.at];
      return place === condition.position || place === 'M';
    });
  }

  function combination(rule, state) {
    var own = state[rule.own];
    var other = state[rule.others[0]];
    if (rule.kind === 'while normal locks both ways') {
      return own === 'R' ? false : other === 'M';
    } else if (own === 'N') {
      return false;
    } else if (rule.kind === 'released by') {
      return rule.others.every(function (at) { return state[at] !== 'R'; });
    } else if (rule.kind === 'locks') {
      return other !== 'N';
    }
    return other === 'M';
  }

  function forbids(rule, state) {
    if (combination(rule, state) ? conditionsMayHold(rule, state) : false) {
      return true;
    }
    if (rule.holds ? state[rule.own] !== 'N' : false) {
      return rule.others.some(function (at) { return state[at] === 'M'; }) ||
        rule.when.some(function (condition) { return state[condition.at] === 'M'; });
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

  function keepsFromStarting(rule, state) {
    var met = rule.kind === 'not again before' ? state[rule.turn] === 'come' : state[rule.others[0]] === 'N';
    return met ? false : conditionsMayHold(rule, state);
  }

  // 2.9: what lever locks and arm controls need, in the words of the files.

  function proved(need, state) {
    var arm = new RegExp('^arm (.+) (at danger|off)$').exec(need);
    if (!arm) {
      return state['condition ' + need] === 'met';
    }
    return arm[2] === 'off' ? at(arm[1], state) === 'R' : at(arm[1], state) === 'N';
  }

  function controlOf(signal) {
    return controls.armControls.filter(function (control) { return control.signal === signal; })[0];
  }

  // N for an arm that is on, M for one taken as off, R for one off: as its levers, unless its control holds
  // it. Of slotted levers all count, of others the one that is furthest over, of those that go off into a section.
  function at(signal, state, section) {
    var levers = box.levers.filter(function (l) {
      return l.work.signal !== signal ? false : section ? goesOffInto(section, l.work) : true;
    });
    var slotted = levers.some(function (l) { return l.work.slotted; });
    var stand = levers.map(function (l) { return state['lever ' + l.id]; });
    var control = controlOf(signal);
    var lets = control ? control.needs.every(function (need) { return proved(need, state); }) : true;
    return lets ? (slotted ? ['N', 'M', 'R'] : ['R', 'M', 'N']).filter(function (place) {
      return stand.indexOf(place) !== -1;
    })[0] : 'N';
  }

  function lockOfLever(id, from) {
    var lock = controls.leverLocks.filter(function (l) { return l.lever === id; })[0];
    return lock ? { N: lock.leavingNormal, M: [], R: lock.leavingReversed }[from] : [];
  }

  // 4.3, for arms with a control: they go off by whatever movement.
  function wentOff(state, next) {
    box.sections.forEach(function (section) {
      var some = sectionSignals(section).some(function (signal) {
        return controlOf(signal) ?
          (at(signal, state, section) === 'N' ? at(signal, next, section) !== 'N' : false) : false;
      });
      if (some) {
        next['section ' + section.name + ': fresh tokens'] = '0';
        section.groundFrames.forEach(function (lock) {
          if (next[lockOf(section, lock.groundFrame)] === 'fresh') {
            next[lockOf(section, lock.groundFrame)] = 'other';
          }
        });
      }
    });
    return next;
  }

  // A movement: a key as in docs/result.md, what it needs, what it does. What is needed and lacking is told
  // in words, and, if it is an entry of the table, with its number.
  function movement(key, needs, does) {
    return {
      key: key,
      holds: function (state) {
        var holds = [];
        needs(state, function (words, entry) {
          holds.push({ words: words, entry: entry === undefined ? -1 : entry });
        });
        return holds;
      },
      after: function (state) {
        var change = {};
        does(state, change);
        return wentOff(state, changed(state, change));
      }
    };
  }

  // What stands at N, M or R, and the half-strokes that begin there.
  function standing(thing, make) {
    var from = {};
    Object.keys(STROKES).forEach(function (at) {
      from[at] = STROKES[at].map(function (to) {
        return make(thing + ' ' + at + TO + to, at, to);
      });
    });
    moved.push(function (state) { return from[state[thing]]; });
  }

  // Levers.

  function out(work) {
    return work.normal === 'in' ? 'R' : 'N';
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

  // 2.7 and 4.3: a lever that is for some routes of the arm goes off into the section for those.
  function goesOffInto(section, work) {
    return sectionSignals(section).indexOf(work.signal) === -1 ? false : !work.for || box.routes.some(function (route) {
      return route.signal === work.signal ? (route.end.section === section.name ? isFor(work, route) : false) : false;
    });
  }

  function lockOf(section, id) {
    return 'section ' + section.name + ': lock of ' + id;
  }

  // How many tokens are out and in no lock: fresh ones, and others.
  function atLarge(section, state) {
    var prefix = 'section ' + section.name + ': ';
    var fresh = section.counted ? Number(state[prefix + 'fresh tokens']) : 0;
    var left = { fresh: fresh, other: Number(state[prefix + 'tokens out']) - fresh };
    section.groundFrames.forEach(function (lock) {
      var kind = state[lockOf(section, lock.groundFrame)];
      if (kind !== 'empty') {
        left[kind] -= 1;
      }
    });
    return left;
  }

  // 2.8: how points lie, whether a bolt of them is in, and what their detector does to the wire of an arm.

  function pointsOf(id) {
    return box.layout.points.filter(function (points) { return points.id === id; })[0];
  }

  // 2.3: of sprung points nothing is asked.
  function lies(passed, state) {
    if (passed.sprung) {
      return true;
    }
    var own = pointsOf(passed.points);
    var byLever = own.workedElectrically ? false : own.lever;
    var stands = byLever ? state['lever ' + own.lever] : state['points ' + own.id];
    var rod = state['rod of ' + own.id];
    if (rod ? rod !== 'whole' : false) {
      stands = rod.slice(-1);
    }
    return stands === (passed.lie === 'normal' ? 'N' : 'R');
  }

  function boltWanting(id, state) {
    var own = pointsOf(id);
    if (!own.boltLever) {
      return false;
    }
    var stands = state['lever ' + own.boltLever];
    var work = workOf(own.boltLever);
    return work.kind === 'points' ? stands === 'M' : stands !== (work.normal === 'in' ? 'N' : 'R');
  }

  function isFor(work, route) {
    return !work.for || route.tracks.some(function (track) { return work.for.indexOf(track) !== -1; });
  }

  function detectorClears(id, work, state) {
    return box.routes.some(function (route) {
      if (route.signal !== work.signal || !isFor(work, route)) {
        return false;
      }
      var here = route.points.filter(function (passed) { return passed.points === id; })[0];
      if (here) {
        return lies(here, state) ? !boltWanting(id, state) : false;
      }
      return route.points.every(function (passed) { return lies(passed, state); });
    });
  }

  // 2.3: points worked by hand that the plunger of this bolt enters with the stroke.
  function entered(work, to) {
    return work.kind !== 'bolt' ? [] : to !== (work.normal === 'in' ? 'N' : 'R') ? [] :
      work.points.filter(function (id) { return pointsOf(id).workedByHand; });
  }

  // A list of conditions that have to be met besides the table: a quantity, its value, why.
  function besides(id, work, from, to) {
    var needs = [];
    answering.forEach(function (points) {
      if (points.lever === id ? from === 'M' : false) {
        needs.push(['points ' + points.id, to,
          'the lever is checked until points ' + points.id + ' have answered that they lie so']);
      }
    });
    var way = id.match(/^(.*)-(pull|push)$/);
    if (from === 'N' ? way : false) {
      needs.push(['lever ' + way[1] + (way[2] === 'pull' ? '-push' : '-pull'), 'N',
        'lever ' + way[1] + ' leaves the middle one way at a time']);
    }
    if (from === 'N') {
      releasesOf(id).forEach(function (section) {
        needs.push(['section ' + section.name + ': release', 'given', 'lever ' + id +
          ' leaves normal only while section ' + section.name + ' gives its release']);
      });
    }
    if (work.heldWhileOpen ? from === 'R' : false) {
      groundFrame(work.groundFrame).points.forEach(function (points) {
        needs.push(['points ' + points, 'N',
          'the release stays given until points ' + points + ' of the ground frame lie normal']);
      });
    }
    if (work.kind === 'gate lock' ? from === out(work) : false) {
      needs.push(['gates ' + work.levelCrossing, 'N',
        'the lock goes in only with the gates of ' + work.levelCrossing + ' across the road']);
    }
    return needs;
  }

  function ofLever(id, work, detected) {
    var own = 'lever ' + id;
    var combinations = naming(id).filter(function (number) { return !ofMovement(rules[number]); });
    var starts = naming(id).filter(function (number) {
      return ofMovement(rules[number]) ? rules[number].own === own : false;
    });
    var waits = rules.filter(function (rule) { return rule.kind === 'not again before' ? rule.own === own : false; });
    var awaited = rules.filter(function (rule) {
      return rule.kind === 'not again before' ? rule.others[0] === own : false;
    });
    standing(own, function (key, from, to) {
      var more = besides(id, work, from, to);
      var electric = lockOfLever(id, from);
      return movement(key, function (state, lacks) {
        var next = Object.create(state);
        next[own] = to;
        combinations.forEach(function (number) {
          if (forbids(rules[number], next)) {
            lacks(box.locking[number].text, number);
          }
        });
        (from === 'N' ? starts : []).forEach(function (number) {
          if (keepsFromStarting(rules[number], state)) {
            lacks(box.locking[number].text, number);
          }
        });
        (from === 'N' ? detected : []).forEach(function (points) {
          if (!detectorClears(points, work, state)) {
            lacks('the detector at points ' + points + ' bars the wire: they, or their bolt, do not lie for the arm');
          }
        });
        entered(work, to).forEach(function (points) {
          if (state['points ' + points] === 'M') {
            lacks('the bolt does not enter points ' + points + ', which lie neither way');
          }
        });
        more.forEach(function (need) {
          if (state[need[0]] !== need[1]) {
            lacks(need[2]);
          }
        });
        electric.forEach(function (need) {
          if (!proved(need, state)) {
            lacks('lever ' + id + ' leaves ' + (from === 'N' ? 'normal' : 'reverse') + ' only with ' + need);
          }
        });
      }, function (state, change) {
        change[own] = to;
        awaited.forEach(function (rule) {
          // Standing at R as the other starts counts too: seen as it leaves R.
          if (state[rule.turn] === 'pull awaited' ? to === 'R' || from === 'R' : false) {
            change[rule.turn] = 'return awaited';
          } else if (state[rule.turn] === 'return awaited' ? to === 'N' : false) {
            change[rule.turn] = 'come';
          }
        });
        if (from === 'N') {
          leavesNormal(id, work, state, change);
          controls.conditions.forEach(function (condition) {
            if (condition.forOnePull ? electric.indexOf(condition.name) !== -1 : false) {
              change['condition ' + condition.name] = 'unmet';
            }
          });
          waits.forEach(function (rule) { change[rule.turn] = 'pull awaited'; });
        }
      });
    });
  }

  // 3.3 and 4.3.
  function leavesNormal(id, work, state, change) {
    releasesOf(id).forEach(function (section) {
      change['section ' + section.name + ': release'] = 'locked';
    });
    box.sections.forEach(function (section) {
      var goes = work.kind === 'signal' ? !controlOf(work.signal) : false;
      if (goes ? goesOffInto(section, work) : false) {
        change['section ' + section.name + ': fresh tokens'] = '0';
        section.groundFrames.forEach(function (lock) {
          var inLock = lockOf(section, lock.groundFrame);
          if (state[inLock] === 'fresh') {
            change[inLock] = 'other';
          }
        });
      }
    });
  }

  // 2.3 and 2.4: what moves by itself while a lever stands at one end, or a token is in a lock.
  function freely(thing, given, words) {
    standing(thing, function (key, from, to) {
      return movement(key, function (state, lacks) {
        if (!given(state)) {
          lacks(words);
        }
      }, function (state, change) { change[thing] = to; });
    });
  }

  // 4.2: the instruments, a line of its table each.

  function ofSection(section) {
    var prefix = 'section ' + section.name + ': ';
    var token = section.token;
    var often = section.plungeWhileWithdrawing;
    var PHASE = prefix + 'phase';
    var OUT = prefix + 'tokens out';
    var FRESH = prefix + 'fresh tokens';
    var RELEASE = prefix + 'release';
    var ONCE = prefix + 'irregular withdrawal';

    function add(state, change, what, number) {
      change[what] = String(Number(state[what]) + number);
    }

    function reverse(state, change) {
      change[PHASE] = state[PHASE] === 'in' ? 'out' : 'in';
    }

    function reverseAt(when, state, change) {
      if (section.phaseReverses === when) {
        reverse(state, change);
      }
    }

    section.instruments.forEach(function (e) {
      var at = e.name;
      var IN = prefix + 'tokens in ' + at;
      var PLUNGES = prefix + 'plunging at ' + at;
      var UNDER_WAY = prefix + 'withdrawal at ' + at;
      var consents = e.needsConsentOf.map(function (other) {
        return { plunges: prefix + 'plunging at ' + other, words: other + ' does not plunge' };
      });
      var here = at === section.here;

      function takeOut(state, change) {
        add(state, change, IN, -1);
        add(state, change, OUT, 1);
        if (here ? section.release : false) {
          change[RELEASE] = 'given';
        }
        if (here ? section.counted : false) {
          add(state, change, FRESH, 1);
        }
      }

      function putIn(state, change) {
        var lasts = section.release ? section.release.lasts : '';
        add(state, change, IN, 1);
        add(state, change, OUT, -1);
        reverse(state, change);
        if (lasts === 'until put in' || (lasts === 'until put in here' ? here : false)) {
          change[RELEASE] = 'locked';
        }
      }

      function event(deed, needs, does) {
        var made = [movement(prefix + deed + ' at ' + at, needs, does)];
        moved.push(function () { return made; });
      }

      function unless(met, lacks, words) {
        if (!met) {
          lacks(words);
        }
      }

      function room(state, lacks) {
        unless(state[IN] !== String(section.tokens), lacks, 'every ' + token + ' is in ' + at);
      }

      function some(state, lacks) {
        unless(state[IN] !== '0', lacks, 'there is no ' + token + ' in ' + at);
      }

      function underWay(state, lacks) {
        unless(state[UNDER_WAY] === 'yes', lacks, 'no withdrawal is under way at ' + at);
      }

      if (e.attended) {
        event('plunge', function (state, lacks) {
          unless(state[PLUNGES] === 'no', lacks, 'he plunges already at ' + at);
          unless(often || state[UNDER_WAY] === 'no', lacks, 'a withdrawal is under way at ' + at);
        }, function (state, change) { change[PLUNGES] = 'yes'; });
        event('stop plunging', function (state, lacks) {
          unless(state[PLUNGES] === 'yes', lacks, 'nobody plunges at ' + at);
        }, function (state, change) { change[PLUNGES] = 'no'; });
      }
      event('start a withdrawal', function (state, lacks) {
        unless(state[UNDER_WAY] === 'no', lacks, 'a withdrawal is under way at ' + at);
        unless(state[PHASE] === 'in', lacks, 'the instruments are out of phase');
        some(state, lacks);
        consents.forEach(function (c) { unless(state[c.plunges] === 'yes', lacks, c.words); });
        unless(often || state[PLUNGES] !== 'yes', lacks, 'he plunges at ' + at);
      }, function (state, change) {
        change[UNDER_WAY] = 'yes';
        reverseAt('at the start', state, change);
      });
      event('finish the withdrawal', function (state, lacks) {
        underWay(state, lacks);
        some(state, lacks);
      }, function (state, change) {
        change[UNDER_WAY] = 'no';
        takeOut(state, change);
        reverseAt('at the end', state, change);
      });
      event('give up the withdrawal', underWay, function (state, change) {
        change[UNDER_WAY] = 'no';
        reverseAt('at the start', state, change);
      });
      if (section.counted) {
        event('put a fresh token in', function (state, lacks) {
          unless(atLarge(section, state).fresh !== 0, lacks, 'no fresh ' + token + ' is out and in no lock');
          room(state, lacks);
        }, function (state, change) {
          putIn(state, change);
          add(state, change, FRESH, -1);
        });
      }
      event('put another token in', function (state, lacks) {
        unless(atLarge(section, state).other !== 0, lacks,
          'no ' + token + ' is out and in no lock' + (section.counted ? ' but fresh ones' : ''));
        room(state, lacks);
      }, putIn);
      if (section.irregularWithdrawal !== 'never') {
        event('irregular withdrawal', function (state, lacks) {
          unless(state[ONCE] !== 'used', lacks, 'the one that is allowed has been made');
          some(state, lacks);
        }, function (state, change) {
          takeOut(state, change);
          reverse(state, change);
          if (section.irregularWithdrawal === 'once') {
            change[ONCE] = 'used';
          }
        });
      }
    });
  }

  // 4.4: the lock of a ground frame.
  function ofLock(section, lock) {
    var prefix = 'section ' + section.name + ': ';
    var token = section.token;
    var LOCK = lockOf(section, lock.groundFrame);

    function event(deed, needs, becomes) {
      var made = [movement(prefix + deed + ' of ' + lock.groundFrame, needs, function (state, change) {
        change[LOCK] = becomes;
      })];
      moved.push(function () { return made; });
    }

    function putIn(deed, kind) {
      event(deed, function (state, lacks) {
        if (state[LOCK] !== 'empty') {
          lacks('a ' + token + ' is in the lock of ' + lock.groundFrame + ' already');
        }
        if (!(atLarge(section, state)[kind] !== 0)) {
          lacks('no such ' + token + ' is out and in no lock');
        }
      }, kind);
    }

    if (section.counted) {
      putIn('put a fresh token in the lock', 'fresh');
    }
    putIn('put another token in the lock', 'other');
    event('take the token out of the lock', function (state, lacks) {
      if (state[LOCK] === 'empty') {
        lacks('nothing is in the lock of ' + lock.groundFrame);
      }
      if (lock.heldWhileOpen) {
        groundFrame(lock.groundFrame).points.forEach(function (points) {
          if (state['points ' + points] !== 'N') {
            lacks('the ' + token + ' is held until points ' + points + ' lie normal');
          }
        });
      }
    }, 'empty');
  }

  box.sections.forEach(function (section) {
    section.counted = sectionSignals(section).length !== 0;
  });
  box.levers.filter(function (l) { return moves(l.work); }).forEach(function (l) {
    ofLever(l.id, l.work, l.detection || []);
  });
  box.layout.groundFrames.forEach(function (frame) {
    var section = box.sections.filter(function (s) { return s.name === frame.releaseSection; })[0];
    frame.points.forEach(function (points) {
      freely('points ' + points, function (state) {
        if (section ? state[lockOf(section, frame.id)] === 'empty' : false) { return false; }
        return frame.releaseLever ? state['lever ' + frame.releaseLever] === 'R' : true;
      }, 'the points of ground frame ' + frame.id + ' move only with ' +
        (section ? 'a ' + section.token + ' in its lock' : '') +
        (section ? (frame.releaseLever ? ' and ' : '') : '') +
        (frame.releaseLever ? 'lever ' + frame.releaseLever + ' reversed' : ''));
    });
  });
  byHand.forEach(function (points) {
    freely('points ' + points.id, function (state) {
      return points.boltLever ? boltWanting(points.id, state) : true;
    }, 'points ' + points.id + ' are held by their bolt');
  });
  gated.forEach(function (crossing) {
    var end = out(workOf(crossing.gateLever));
    freely('gates ' + crossing.id, function (state) { return state['lever ' + crossing.gateLever] === end; },
      'the gates of ' + crossing.id + ' move only with their lock out');
  });
  // 2.8: the current moves points while their lever is checked; rods that may break.
  answering.forEach(function (points) {
    freely('points ' + points.id, function (state) { return state['lever ' + points.lever] === 'M'; },
      'points ' + points.id + ' move only with lever ' + points.lever + ' part-way');
  });
  mayBreak.forEach(function (points) {
    var rod = 'rod of ' + points.id;
    var made = Object.keys(STROKES).map(function (at) {
      return movement(rod + ' breaks at ' + at, function (state, lacks) {
        if (state[rod] !== 'whole') {
          lacks('the ' + rod + ' is broken');
        }
        if (state['lever ' + points.lever] !== at) {
          lacks('lever ' + points.lever + ' stands elsewhere');
        }
      }, function (state, change) { change[rod] = 'broken at ' + at; });
    });
    moved.push(function () { return made; });
  });
  box.sections.forEach(function (section) {
    ofSection(section);
    section.groundFrames.forEach(function (lock) { ofLock(section, lock); });
  });

  controls.conditions.forEach(function (condition) {
    var own = 'condition ' + condition.name;
    [['becomes met', 'met', 'unmet'], ['ceases to be met', 'unmet', 'met']].forEach(function (way) {
      var made = [movement(own + ': ' + way[0], function (state, lacks) {
        if (state[own] !== way[2]) {
          lacks(condition.name + ' is ' + (way[2] === 'unmet' ? '' : 'not ') + 'met already');
        }
      }, function (state, change) { change[own] = way[1]; })];
      moved.push(function () { return made; });
    });
  });

  // The movements that can be tried in the state, free or not.
  function movements(state) {
    var all = [];
    moved.forEach(function (of) {
      of(state).forEach(function (found) { all.push(found); });
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
    answering.forEach(function (points) { state['points ' + points.id] = 'N'; });
    byHand.forEach(function (points) { state['points ' + points.id] = 'N'; });
    mayBreak.forEach(function (points) { state['rod of ' + points.id] = 'whole'; });
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
      section.groundFrames.forEach(function (lock) { state[lockOf(section, lock.groundFrame)] = 'empty'; });
    });
    controls.conditions.forEach(function (condition) { state['condition ' + condition.name] = 'unmet'; });
    return state;
  }

  return { movements: movements, beginning: beginning };
};
