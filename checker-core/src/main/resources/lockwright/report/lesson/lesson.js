(function () {
  'use strict';
  var steps = Array.from(document.querySelectorAll('.step'));
  var controls = document.getElementById('controls');
  var back = document.getElementById('back');
  var next = document.getElementById('next');
  var play = document.getElementById('play');
  var status = document.getElementById('status');
  var last = steps.length - 1;
  var now = 0;
  var timer = null;

  function frames(step) {
    return Array.from(step.querySelectorAll('.picture-frame'));
  }

  // Where the page is narrower than a picture: what has moved comes into view.
  function bring(from, to) {
    var things = '[data-lever], [data-signal], [data-points]';
    frames(to).forEach(function (frame, i) {
      var before = Array.from(frames(from)[i].querySelectorAll(things));
      var moved = Array.from(frame.querySelectorAll(things)).find(function (thing, j) {
        return thing.getAttribute('class') !== before[j].getAttribute('class');
      });
      if (!moved) {
        return;
      }
      var view = frame.getBoundingClientRect();
      var at = moved.getBoundingClientRect();
      if (Math.sign(Math.min(at.left - view.left, view.right - at.right)) === -1) {
        frame.scrollLeft += (at.left + at.right - view.left - view.right) / 2;
      }
    });
  }

  function show(number) {
    var from = steps[now];
    var inside = from.contains(document.activeElement);
    var scrolled = frames(from).map(function (f) { return f.scrollLeft; });
    now = Math.max(0, Math.min(last, number));
    steps.forEach(function (step, i) { step.classList.toggle('now', i === now); });
    frames(steps[now]).forEach(function (f, i) { f.scrollLeft = scrolled[i]; });
    bring(steps[Math.max(0, now - 1)], steps[now]);
    status.textContent = steps[now].querySelector('h2').textContent;
    back.disabled = now === 0;
    next.disabled = now === last;
    if (inside) {
      steps[now].focus({ preventScroll: true });
    }
  }

  function go(number) {
    show(number);
    controls.scrollIntoView();
  }

  function pause() {
    clearInterval(timer);
    timer = null;
    play.textContent = 'Play';
  }

  function playOn() {
    if (now === last) {
      go(0);
    }
    play.textContent = 'Pause';
    timer = setInterval(function () {
      show(now + 1);
      if (now === last) {
        pause();
      }
    }, 4000);
  }

  function fromAddress() {
    var named = steps.findIndex(function (s) { return '#' + s.id === location.hash; });
    if (named !== -1) {
      go(named);
    }
  }

  function answered(question) {
    var ticks = Array.from(question.querySelectorAll('input'));
    var free = ticks.filter(function (t) { return t.dataset.free === 'yes'; });
    var ticked = ticks.filter(function (t) { return t.checked; });
    var right = free.filter(function (t) { return t.checked; });
    var held = ticked.length - right.length;
    question.querySelector('.told').textContent = ticked.length === 0 ? '' :
      'You ticked ' + right.length + ' of the ' + free.length + ' that are free, and ' +
      held + ' that ' + (held === 1 ? 'is' : 'are') + ' held.';
  }

  back.addEventListener('click', function () { pause(); go(now - 1); });
  next.addEventListener('click', function () { pause(); go(now + 1); });
  play.addEventListener('click', function () {
    if (timer === null) {
      playOn();
    } else {
      pause();
    }
  });
  document.addEventListener('keydown', function (e) {
    var by = { ArrowLeft: -1, ArrowRight: 1 }[e.key];
    var other = e.altKey || e.ctrlKey || e.metaKey || e.shiftKey;
    if (!by || other || e.target.closest('.picture-frame')) {
      return;
    }
    e.preventDefault();
    pause();
    go(now + by);
  });
  window.addEventListener('hashchange', fromAddress);
  Array.from(document.querySelectorAll('.question')).forEach(function (q) {
    q.querySelector('details').addEventListener('toggle', function () { answered(q); });
    q.addEventListener('change', function () {
      if (q.querySelector('details').open) {
        answered(q);
      }
    });
  });

  document.documentElement.classList.add('stepped');
  controls.hidden = false;
  show(0);
  fromAddress();
})();
