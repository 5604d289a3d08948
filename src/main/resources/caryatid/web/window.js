'use strict';
// The window's own script. Forms and results work without it; dropping files and following what is typed do not.

const TYPING_MS = 500;

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

  async function refresh(action) {
    const mine = ++asked;
    const fields = new URLSearchParams(new FormData(form));
    fields.append('part', 'live');
    if (action) {
      fields.append('action', action);
    }
    live.setAttribute('aria-busy', 'true');
    try {
      const reply = await fetch(form.getAttribute('action'), { method: 'POST', body: fields });
      if (reply.ok && mine === asked) {
        const waiting = document.activeElement === document.body || live.contains(document.activeElement);
        const before = document.activeElement?.value;
        const text = await reply.text();
        const chooser = document.getElementById('recordings');
        const choosing = chooser === document.activeElement;
        live.innerHTML = text;
        // The one that was there stays: its window for choosing files may be open.
        document.getElementById('recordings').replaceWith(chooser);
        if (choosing) {
          chooser.focus({ preventScroll: true });
        }
        showLeg();
        showFaults(form);
        if (waiting && !(choosing && !live.querySelector('button[value^="count-"]'))) {
          goOn(live, action, before);
        }
      }
    } finally {
      if (mine === asked) {
        live.removeAttribute('aria-busy');
      }
    }
  }

  form.addEventListener('input', (event) => {
    if (event.target.type !== 'file') {
      clearTimeout(timer);
      timer = setTimeout(() => refresh(), TYPING_MS);
    }
  });
  live.addEventListener('click', (event) => {
    const button = event.target.closest('button[name=action]');
    if (button && /^(count|uncount|remove|meant)/.test(button.value)) {
      event.preventDefault();
      clearTimeout(timer);
      refresh(button.value);
    }
  });
  return refresh;
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
    for (const file of files) {
      const address = form.getAttribute('action') + '/recording?name=' + encodeURIComponent(file.name);
      await fetch(address, { method: 'POST', body: file, headers: { 'Content-Type': 'application/octet-stream' } });
    }
    await refresh();
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
 * of a landmark that is left empty, it goes to the recordings.
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
    if (row && ![...row.querySelectorAll('.distance:not(.marking) input.number')].some((f) => f.value)) {
      document.getElementById('recordings')?.focus();
      return;
    }
    const fields = [...form.querySelectorAll('input.number, input.words')].filter(
      (f) => f === field || (f.offsetParent && !f.closest('details:not([open]), .marking')));
    fields[fields.indexOf(field) + 1]?.focus();
  });
}

/** Arrows move the stretch that is used by half a second. */
function moveStretch(form) {
  form.addEventListener('keydown', (event) => {
    const step = { ArrowUp: 0.5, ArrowDown: -0.5 }[event.key];
    const field = event.target;
    if (!step || !['from-s', 'to-s'].includes(field.name)) {
      return;
    }
    event.preventDefault();
    const comma = field.value.includes(',') || document.documentElement.lang !== 'en';
    const moved = Math.max(0, (Number(field.value.replace(',', '.')) || 0) + step).toFixed(1);
    field.value = comma ? moved.replace('.', ',') : moved;
    field.dispatchEvent(new Event('input', { bubbles: true }));
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
  let sent = false;
  form.addEventListener('submit', () => {
    sent = true;
    clearTimeout(timer);
  });
  form.addEventListener('input', () => {
    clearTimeout(timer);
    timer = setTimeout(async () => {
      const fields = new URLSearchParams(new FormData(form));
      fields.append('part', 'draft');
      const reply = await fetch(form.getAttribute('action'), { method: 'POST', body: fields });
      const kept = document.getElementById('kept');
      if (reply.ok && kept && !sent) {
        kept.dataset.draft = await reply.text();
      }
    }, TYPING_MS);
  });
}

document.querySelectorAll('form.entry').forEach((entry) => {
  if (entry.querySelector('[name=record-head]')) {
    saveDrafts(entry);
  }
});

/** Asks for what arrived while a folder is watched, and nobody types. */
function watch(form, live, refresh) {
  let typing = 0;
  form.addEventListener('input', () => { typing = Date.now(); });
  setInterval(() => {
    const watching = live.querySelector('[data-watching]');
    if (watching && !document.hidden && Date.now() - typing > 2000 && !live.hasAttribute('aria-busy')) {
      refresh();
    }
  }, 3000);
}

/** Counts the seconds of a stand; it says nothing about the recording. */
function clock(live) {
  let ticking = 0;
  live.addEventListener('click', (event) => {
    if (!event.target.dataset.clock) {
      return;
    }
    clearInterval(ticking);
    const begun = Date.now();
    const most = Number(event.target.dataset.clock);
    ticking = setInterval(() => {
      const seconds = Math.min(most, Math.floor((Date.now() - begun) / 1000));
      const shown = live.querySelector('.clock output');
      if (shown) {
        shown.textContent = '0:' + String(seconds).padStart(2, '0');
      }
      if (seconds === most) {
        clearInterval(ticking);
      }
    }, 200);
  });
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
  redrawForPlate(form, refresh);
  clock(live);
}

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
