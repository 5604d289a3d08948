'use strict';
// The window's own script. Forms and results work without it; dropping files and following what is typed do not.

const TYPING_MS = 500;

/** After this pause in typing, what a change comes to is asked for. */
const RESULT_MS = 150;

/** What takes longer is said, and can be cancelled. */
const SLOW_MS = 500;

/** After this time, what could not be sent is sent again. */
const AGAIN_MS = 3000;

/** A clock that does not tick for so long is none. */
const LATE_MS = 3000;

/** By how much a key moves the stretch that is used. */
const STEP_S = 0.5;

/** Whether a stretch is being moved: then nothing on the page is replaced. */
let moving = false;

/** Says what is being done as long as it takes, and gives what cancels it. */
function working(saying) {
  const line = document.getElementById('working');
  const cancel = new AbortController();
  const timer = setTimeout(() => {
    line.querySelector('span').textContent = saying;
    line.querySelector('button').onclick = () => cancel.abort();
    line.hidden = false;
  }, SLOW_MS);
  return {
    signal: cancel.signal,
    done() {
      clearTimeout(timer);
      line.hidden = true;
    },
  };
}

/** What was cancelled is no failure. */
function unlessCancelled(failure) {
  if (failure.name !== 'AbortError') {
    throw failure;
  }
}

/** What was wrong, or what was kept, is read next. */
function toAnswer() {
  const answer = document.getElementById('faults') || document.querySelector('.kept-now');
  if (answer) {
    answer.tabIndex = -1;
    answer.focus();
  }
}

/** Sends what is typed, and shows what the server makes of it. */
function follow(form, live) {
  let timer = 0;
  let asked = 0;
  let typed = false;
  let before = Promise.resolve();

  function inFields(part) {
    const fields = new URLSearchParams(new FormData(form));
    fields.append('part', part);
    return fields;
  }

  /** One after the other: what was sent first must not be taken last. */
  function refresh(action, poll) {
    const mine = ++asked;
    live.setAttribute('aria-busy', 'true');
    before = before.then(() => send(mine, action, poll));
    return before;
  }

  async function send(mine, action, poll) {
    if (mine !== asked && !action) {
      // What was asked since sends all that stands in the fields now.
      return;
    }
    // While nobody types, the page only asks what arrived.
    const fields = inFields(poll ? 'poll' : 'live');
    typed = typed && Boolean(poll);
    if (action) {
      fields.append('action', action);
    }
    const work = working(document.getElementById('working').dataset.reading);
    try {
      const reply = await fetch(form.getAttribute('action'), { method: 'POST', body: fields, signal: work.signal });
      const text = await reply.text();
      if (reply.ok && mine === asked && !moving) {
        const edge = document.activeElement?.dataset?.edge;
        const waiting = document.activeElement === document.body || live.contains(document.activeElement);
        const focused = document.activeElement?.value;
        const chooser = document.getElementById('recordings');
        const choosing = chooser === document.activeElement;
        const restore = keepStretches(form, live);
        live.innerHTML = text;
        // The one that was there stays: its window for choosing files may be open.
        document.getElementById('recordings').replaceWith(chooser);
        if (choosing) {
          chooser.focus({ preventScroll: true });
        }
        showLeg();
        showStep();
        showFaults(form);
        showStretches(live);
        const kept = document.getElementById('kept');
        if (kept && !poll) {
          kept.dataset.draft = form.dataset.saved;
        }
        if (restore()) {
          // Somebody types a time.
        } else if (edge) {
          live.querySelector(`[data-edge="${edge}"]`)?.focus({ preventScroll: true });
        } else if (waiting && !(choosing && !live.querySelector('button[value^="count-"]'))) {
          goOn(live, action, focused);
        }
      }
    } catch (failure) {
      // The machine slept, or the window was busy: what is typed is sent again, what was pressed is not.
      if (failure.name !== 'AbortError' && mine === asked) {
        clearTimeout(timer);
        timer = setTimeout(() => refresh(), AGAIN_MS);
      }
      if (mine === asked) {
        stale(live, failure.name === 'AbortError');
      }
    } finally {
      work.done();
      if (mine === asked) {
        live.removeAttribute('aria-busy');
      }
    }
  }

  form.addEventListener('input', (event) => {
    countReady(event.target.closest('.ready-to-stand'));
    if (event.target.type !== 'file') {
      typed = true;
      clearTimeout(timer);
      timer = setTimeout(() => refresh(), TYPING_MS);
    }
  });
  form.addEventListener('submit', () => { typed = false; });
  // The page is left before the last letters were sent.
  window.addEventListener('pagehide', () => {
    if (typed) {
      fetch(form.getAttribute('action'), { method: 'POST', body: inFields('live'), keepalive: true });
    }
  });
  document.addEventListener('click', (event) => {
    const button = event.target.closest?.('#live button[name=action], #step button[name=action]');
    if (button && /^(count|uncount|remove|meant)/.test(button.value)) {
      event.preventDefault();
      clearTimeout(timer);
      refresh(button.value);
    }
  });
  return refresh;
}

/** How many of what makes ready to stand are ticked: the first number of the fold's heading. */
function countReady(fold) {
  const heading = fold?.querySelector('summary');
  if (heading) {
    const ticked = fold.querySelectorAll('input:checked').length;
    heading.textContent = heading.textContent.replace(/\d+/, ticked);
  }
}

/**
 * What is typed beside the drawings, and which of them are open, stays when all around is replaced.
 * What is given back says whether somebody types there.
 */
function keepStretches(form, live) {
  const fields = [...live.querySelectorAll('.stretch input')].map((field) => [field.name, field.value]);
  const open = [...live.querySelectorAll('details[data-stand][open]')].map((stand) => stand.dataset.stand);
  const at = document.activeElement;
  const typing = at && at.closest('.stretch') && at.name;
  const marked = typing && [at.selectionStart, at.selectionEnd];
  return () => {
    open.forEach((stand) => live.querySelector(`details[data-stand="${stand}"]`)?.setAttribute('open', ''));
    fields.filter(([name]) => form.elements[name]).forEach(([name, value]) => { form.elements[name].value = value; });
    const field = typing && form.elements[typing];
    field?.focus({ preventScroll: true });
    field?.setSelectionRange(...marked);
    return Boolean(field);
  };
}

/** What was found before something was cancelled is not the result of what stands in the fields. */
function stale(live, cancelled) {
  live.querySelector('.stale')?.remove();
  if (!cancelled) {
    return;
  }
  const said = document.createElement('p');
  said.className = 'fault stale';
  said.setAttribute('role', 'alert');
  said.textContent = document.getElementById('working').dataset.stale;
  live.querySelector('.result').prepend(said);
}

/** The one clear next step comes with the answer and stands at the foot of the page. */
function showStep() {
  const now = document.getElementById('step-now');
  const step = document.getElementById('step');
  if (now && step) {
    step.innerHTML = now.innerHTML;
    now.remove();
  }
}

/** Where the keyboard goes on: to the next stand that is not counted; after the last one, to the result. */
function goOn(live, action, before) {
  const next = live.querySelector('button[value^="count-"]');
  const same = [...live.querySelectorAll('button[name=action]')].find((button) => button.value === before);
  if (next) {
    next.focus({ preventScroll: !action });
  } else if (action) {
    const result = live.querySelector('.result');
    result.tabIndex = -1;
    result.focus({ preventScroll: true });
  } else if (same) {
    same.focus({ preventScroll: true });
  }
}

/** Sends files as they are, one after the other. */
function upload(form, live, refresh) {
  async function send(files) {
    live.setAttribute('aria-busy', 'true');
    try {
      for (const file of files) {
        await sendOne(file);
      }
    } catch (failure) {
      unlessCancelled(failure);
    } finally {
      await refresh();
    }
  }

  /** One that is cancelled half-way is dropped by the server, and so are those behind it. */
  async function sendOne(file) {
    const address = form.getAttribute('action') + '/recording?name=' + encodeURIComponent(file.name);
    const work = working(document.getElementById('working').dataset.sending + ' ' + file.name);
    try {
      await fetch(address, {
        method: 'POST',
        body: file,
        headers: { 'Content-Type': 'application/octet-stream' },
        signal: work.signal,
      });
    } finally {
      work.done();
    }
  }

  live.addEventListener('change', (event) => {
    if (event.target.type === 'file') {
      send([...event.target.files]);
      event.target.value = '';
    }
  });
  document.addEventListener('dragover', (event) => {
    event.preventDefault();
    document.getElementById('drop')?.classList.add('over');
  });
  document.addEventListener('dragleave', () => document.getElementById('drop')?.classList.remove('over'));
  document.addEventListener('drop', (event) => {
    event.preventDefault();
    send([...event.dataTransfer.files]);
  });
}

/**
 * Enter takes the earlier value over where nothing was typed, and goes to the next number. In a row
 * of a landmark that is left empty and has no earlier value, it goes to the recordings.
 */
function enterGoesOn(form) {
  form.addEventListener('keydown', (event) => {
    const field = event.target;
    if (event.key !== 'Enter' || field.tagName !== 'INPUT' || field.type !== 'text') {
      return;
    }
    event.preventDefault();
    if (!field.value && field.dataset.before) {
      field.value = field.dataset.before;
      field.dispatchEvent(new Event('input', { bubbles: true }));
    }
    const row = field.closest('.landmark');
    const numbers = row ? [...row.querySelectorAll('.distance:not(.marking) input.number')] : [];
    if (row && !numbers.some((f) => f.value || f.dataset.before)) {
      document.getElementById('recordings')?.focus();
      return;
    }
    const fields = [...form.querySelectorAll('input.number, input.words')].filter(
      (f) => f === field || (f.offsetParent && !f.closest('details:not([open]), .marking')));
    fields[fields.indexOf(field) + 1]?.focus();
  });
}

/** Seconds as the field's owner types them. */
function typeSeconds(field, seconds) {
  const comma = field.value.includes(',') || document.documentElement.lang !== 'en';
  const typed = Math.max(0, seconds).toFixed(1);
  field.value = comma ? typed.replace('.', ',') : typed;
}

/** Arrows move the stretch that is used by half a second. */
function moveStretch(form) {
  form.addEventListener('keydown', (event) => {
    const step = { ArrowUp: STEP_S, ArrowDown: -STEP_S }[event.key];
    const field = event.target;
    if (!step || !field.closest('.stretch')) {
      return;
    }
    event.preventDefault();
    typeSeconds(field, (Number(field.value.replace(',', '.')) || 0) + step);
    field.dispatchEvent(new Event('input', { bubbles: true }));
  });
}

/** Puts the rectangle of a drawing over time where its edges say, by the axis that the server states. */
function placeStretch(over) {
  const used = over.querySelector('.used');
  const { axisFrom, axisTo, seconds } = over.dataset;
  const part = (edge) => {
    const at = Number(used.querySelector(edge).getAttribute('aria-valuenow')) / seconds;
    return 100 * (Number(axisFrom) + at * (axisTo - axisFrom));
  };
  used.style.left = part('.from') + '%';
  used.style.right = 100 - part('.to') + '%';
  used.hidden = false;
}

function showStretches(live) {
  live.querySelectorAll('.over-time').forEach(placeStretch);
}

/** The rectangle over a recording follows the pointer or the arrows; on release from and to are sent. */
function dragStretch(form, live) {
  const now = (edge) => Number(edge.getAttribute('aria-valuenow'));

  function move(edge, seconds) {
    const over = edge.closest('.over-time');
    const other = over.querySelector(edge.matches('.from') ? '.to' : '.from');
    const [least, most] = edge.matches('.from') ? [0, now(other) - STEP_S] : [now(other) + STEP_S, Number(over.dataset.seconds)];
    const at = Math.min(most, Math.max(least, seconds));
    edge.setAttribute('aria-valuenow', at);
    edge.setAttribute('aria-valuetext', at.toFixed(1) + ' s');
    placeStretch(over);
  }

  function release(over) {
    over.querySelectorAll('.edge').forEach((edge) => typeSeconds(form.elements[edge.dataset.field], now(edge)));
    form.elements[over.querySelector('.to').dataset.field].dispatchEvent(new Event('input', { bubbles: true }));
  }

  live.addEventListener('keydown', (event) => {
    const edge = event.target.closest('.edge');
    const step = { ArrowRight: STEP_S, ArrowUp: STEP_S, ArrowLeft: -STEP_S, ArrowDown: -STEP_S }[event.key];
    if (edge && step) {
      event.preventDefault();
      move(edge, now(edge) + step);
      release(edge.closest('.over-time'));
    }
  });

  live.addEventListener('pointerdown', (event) => {
    const used = event.target.closest('.used');
    if (!used || event.button) {
      return;
    }
    event.preventDefault();
    const over = used.closest('.over-time');
    const perPixel = over.dataset.seconds / (over.clientWidth * (over.dataset.axisTo - over.dataset.axisFrom));
    const edge = event.target.closest('.edge');
    // Taken between its edges, all of it moves: the leading edge first, so that they do not meet.
    const edges = edge ? [edge] : [...used.querySelectorAll('.edge')];
    const begun = edges.map(now);
    edge?.focus({ preventScroll: true });
    moving = true;
    used.setPointerCapture(event.pointerId);
    used.onpointermove = (to) => {
      let by = (to.clientX - event.clientX) * perPixel;
      if (!edge) {
        by = Math.min(over.dataset.seconds - begun[1], Math.max(-begun[0], by));
      }
      const order = by > 0 ? [...edges.keys()].reverse() : [...edges.keys()];
      order.forEach((i) => move(edges[i], begun[i] + by));
    };
    used.onpointerup = used.onpointercancel = () => {
      used.onpointermove = used.onpointerup = used.onpointercancel = null;
      moving = false;
      if (edges.some((one, i) => now(one) !== begun[i])) {
        release(over);
      }
    };
  });
}

/** The drawing of the leg comes with the answer and stands among the landmarks. */
function showLeg() {
  const now = document.getElementById('leg-now');
  const leg = document.getElementById('leg');
  if (now && leg) {
    leg.innerHTML = now.innerHTML;
    now.remove();
  }
}

/** What is wrong with a field comes with the answer and stands at the field. */
function showFaults(form) {
  const now = document.getElementById('faults-now');
  if (!now) {
    return;
  }
  form.querySelectorAll('.sheet .fault:not(.lacks)').forEach((old) => old.remove());
  form.querySelectorAll('.sheet [aria-invalid]').forEach((field) => {
    field.removeAttribute('aria-invalid');
    field.removeAttribute('aria-describedby');
  });
  now.querySelectorAll('[data-at]').forEach((said) => {
    const field = form.elements[said.dataset.at];
    const place = field && field.closest && field.closest('.distance, .field, fieldset');
    if (!place) {
      return;
    }
    const fault = document.createElement('div');
    fault.className = 'fault';
    fault.id = field.id + '-fault';
    fault.append(said.textContent);
    place.append(fault);
    field.setAttribute('aria-invalid', 'true');
    field.setAttribute('aria-describedby', fault.id);
    const folded = field.closest('details');
    if (folded) {
      folded.open = true;
    }
  });
  now.remove();
}

/** Another plate has other lines: the page is loaded again with them. */
function redrawForPlate(form, refresh) {
  form.elements['known-plate']?.addEventListener('change', async () => {
    await refresh();
    location.reload();
  });
}

/** What cannot be brought back is asked first. */
document.addEventListener('click', (event) => {
  const asked = event.target.closest?.('[data-ask]');
  if (asked && !confirm(asked.dataset.ask)) {
    event.preventDefault();
  }
});

/** On a narrow screen a line that is cut short is shown in full when it is touched. */
document.querySelector('.unsafe')?.addEventListener('click', (event) => {
  event.target.closest('li')?.classList.toggle('full');
});

/** Saves what is typed into the form of an entry as a draft, which never becomes an entry by itself. */
function saveDrafts(form) {
  let timer = 0;
  let typed = false;
  let sent = false;
  let before = Promise.resolve();

  /** One after the other, so that the newest is saved last. */
  function later() {
    before = before.then(save);
  }

  async function save() {
    if (!typed) {
      return;
    }
    typed = false;
    const kept = document.getElementById('kept');
    const fields = new URLSearchParams(new FormData(form));
    fields.append('part', 'draft');
    delete kept?.dataset.draft;
    try {
      const reply = await fetch(form.getAttribute('action'), { method: 'POST', body: fields, keepalive: true });
      if (reply.ok && kept && !sent) {
        kept.dataset.draft = await reply.text();
      }
    } catch {
      typed = !sent;
      clearTimeout(timer);
      timer = setTimeout(later, AGAIN_MS);
    }
  }

  form.addEventListener('submit', () => {
    sent = true;
    typed = false;
  });
  form.addEventListener('input', (event) => {
    if (event.target.type !== 'file') {
      typed = true;
      clearTimeout(timer);
      timer = setTimeout(later, TYPING_MS);
    }
  });
  // The page is left, or its other form is sent, before the last letters were saved.
  window.addEventListener('pagehide', save);
}

document.querySelectorAll('form.entry').forEach((entry) => {
  if (entry.querySelector('[name=record-head]')) {
    saveDrafts(entry);
  }
});

/** Shows what a change comes to, as the server says it, and the directions of the chosen item alone. */
function followChange(form, said) {
  const way = form.querySelector('select[data-of]');
  const what = form.elements[way.dataset.of];
  const all = [...way.options];
  let asked = 0;
  let timer = 0;

  function directions() {
    const of = what.value;
    const chosen = way.value;
    const fit = all.filter((one) => !one.dataset.items || !of || one.dataset.items.split(' ').includes(of));
    way.replaceChildren(...fit);
    // Options that are taken out and put back choose themselves: none is chosen but by hand.
    way.value = fit.some((one) => one.value === chosen) ? chosen : '';
  }

  async function comesTo() {
    const mine = ++asked;
    const fields = new URLSearchParams(new FormData(form));
    fields.append('part', 'comes-to');
    try {
      const reply = await fetch(form.getAttribute('action'), { method: 'POST', body: fields });
      const words = reply.ok ? await reply.text() : '';
      if (mine === asked) {
        said.innerHTML = words;
      }
    } catch {
      said.textContent = '';
    }
  }

  form.addEventListener('input', (event) => {
    if (event.target === what) {
      directions();
    }
    said.textContent = '';
    asked++;
    clearTimeout(timer);
    timer = setTimeout(comesTo, RESULT_MS);
  });
  what.addEventListener('change', directions);
  directions();
  comesTo();
}

document.querySelectorAll('[data-comes-to]').forEach((said) => followChange(said.closest('form'), said));

/** Asks for what arrived while a folder is watched, and nobody types. */
function watch(form, live, refresh) {
  let typing = 0;
  form.addEventListener('input', () => { typing = Date.now(); });
  setInterval(() => {
    const watching = live.querySelector('[data-watching]');
    if (watching && !moving && !document.hidden && Date.now() - typing > 2000 && !live.hasAttribute('aria-busy')) {
      refresh(undefined, true);
    }
  }, 3000);
}

/**
 * Counts the seconds of a stand; it says nothing about the recording. Where the machine slept or its
 * clock was set meanwhile, it counts no more and says so.
 */
function clock(live) {
  let ticking = 0;
  let said = '';

  function show() {
    const output = live.querySelector('.clock output');
    if (output && output.textContent !== said) {
      output.textContent = said;
    }
  }

  live.addEventListener('click', (event) => {
    const most = Number(event.target.dataset.clock);
    if (!most) {
      return;
    }
    const { interrupted } = event.target.closest('.clock').dataset;
    clearInterval(ticking);
    const begun = Date.now();
    let last = begun;
    ticking = setInterval(() => {
      const now = Date.now();
      const late = now < last || now - last > LATE_MS;
      const seconds = Math.min(most, Math.floor((now - begun) / 1000));
      last = now;
      said = late ? interrupted : '0:' + String(seconds).padStart(2, '0');
      if (late || seconds === most) {
        clearInterval(ticking);
      }
      show();
    }, 200);
  });
  // What it says stays when the page around it is replaced.
  new MutationObserver(show).observe(live, { childList: true });
}

const form = document.querySelector('form#stand');
toAnswer();
if (form) {
  const live = document.getElementById('live');
  const refresh = follow(form, live);
  upload(form, live, refresh);
  watch(form, live, refresh);
  enterGoesOn(form);
  moveStretch(form);
  dragStretch(form, live);
  showStretches(live);
  redrawForPlate(form, refresh);
  clock(live);
}

/** Photographs wait with the form they stand in: each is sent as it is, and what is kept of it is shown. */
function photographs(section) {
  const place = section.querySelector('[data-photographs]');
  const busy = section.querySelector('.busy');

  async function send(files) {
    const sending = new AbortController();
    busy.querySelector('button').onclick = () => sending.abort();
    const slow = setTimeout(() => { busy.hidden = false; }, SLOW_MS);
    section.open = true;
    try {
      for (const file of files) {
        const reply = await fetch(place.dataset.photographs + '?name=' + encodeURIComponent(file.name), {
          method: 'POST',
          headers: { 'Content-Type': 'application/octet-stream' },
          body: file,
          signal: sending.signal,
        });
        if (!reply.ok) {
          break;
        }
        place.innerHTML = await reply.text();
        if (place.querySelector('.fault')) {
          break;
        }
      }
    } catch (failure) {
      unlessCancelled(failure);
    } finally {
      clearTimeout(slow);
      busy.hidden = true;
      place.querySelector('input').focus();
    }
  }

  place.addEventListener('change', (event) => {
    if (event.target.type === 'file') {
      event.stopPropagation();
      send([...event.target.files]);
    }
  });
  document.addEventListener('dragover', (event) => event.preventDefault());
  document.addEventListener('drop', (event) => {
    event.preventDefault();
    send([...event.dataTransfer.files]);
  });
}

document.querySelectorAll('.photographs').forEach(photographs);

/** How wide a card is on this screen, CSS px; kept in the browser, and forgotten when its pixels change. */
function trueSize() {
  const known = document.cookie.match(/(?:^|; )card=([0-9.]+)x([0-9.]+)/);
  const holds = known && Number(known[2]) === window.devicePixelRatio;
  if (known && !holds) {
    document.cookie = 'card=; path=/; max-age=0; samesite=lax';
  }
  document.documentElement.classList.toggle('true-size', Boolean(holds));
  if (holds) {
    document.documentElement.style.setProperty('--card', known[1]);
  }
}

trueSize();
window.addEventListener('resize', trueSize);

/** A rectangle is made as wide as the card that is held to it. */
function holdCard(card) {
  const width = card.querySelector('input');
  const shape = document.getElementById('card-shape');
  const show = () => { shape.style.width = width.value + 'px'; };
  const known = document.documentElement.style.getPropertyValue('--card');
  if (known) {
    width.value = known;
  }
  show();
  width.addEventListener('input', show);
  card.addEventListener('submit', (event) => {
    event.preventDefault();
    document.cookie = 'card=' + width.value + 'x' + window.devicePixelRatio + '; path=/; max-age=31536000; samesite=lax';
    trueSize();
    document.getElementById('card-kept').hidden = false;
  });
}

document.querySelectorAll('form#card').forEach(holdCard);

// A file is sent as it is, as soon as it is dropped or chosen.
document.querySelectorAll('form[data-upload]').forEach(form => {
  const file = form.querySelector('input[type=file]');
  const busy = form.querySelector('.busy');
  const place = form.querySelector('.drop');
  let sending;

  const show = page => {
    const main = new DOMParser().parseFromString(page, 'text/html').getElementById('main');
    const fault = main ? main.querySelector('.fault') : document.createTextNode(page);
    form.querySelectorAll('.fault').forEach(old => old.remove());
    form.prepend(fault || main);
  };
  const send = async chosen => {
    const about = new URLSearchParams(new FormData(form));
    about.set('name', chosen.name);
    sending = new AbortController();
    busy.hidden = false;
    try {
      const answer = await fetch(form.getAttribute('action') + '?' + about, {
        method: 'POST',
        headers: {'Content-Type': 'application/octet-stream'},
        body: chosen,
        signal: sending.signal
      });
      if (answer.redirected) {
        location.assign(answer.url);
      } else {
        show(await answer.text());
      }
    } catch (e) {
      if (e.name !== 'AbortError') {
        show(e.message);
      }
    } finally {
      busy.hidden = true;
      file.value = '';
    }
  };
  const start = chosen => {
    if (chosen && form.reportValidity()) {
      send(chosen);
    }
  };

  file.addEventListener('change', () => start(file.files[0]));
  form.addEventListener('submit', event => {
    event.preventDefault();
    start(file.files[0]);
  });
  busy.querySelector('button').addEventListener('click', () => sending.abort());
  place.addEventListener('dragover', event => event.preventDefault());
  place.addEventListener('drop', event => {
    event.preventDefault();
    const dropped = event.dataTransfer;
    if (dropped.files.length > 0) {
      file.files = dropped.files;
      start(dropped.files[0]);
    }
  });
});
