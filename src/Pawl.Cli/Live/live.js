(() => {
  'use strict';
  const now = document.getElementById('now');
  const box = document.querySelector('main');
  let frame = document.querySelector('iframe.report');
  let versions = null;
  let shown = null;

  const pathOf = (f) => {
    try { return decodeURIComponent(f.contentWindow.location.pathname).replace(/^\/report\//, ''); } catch { return ''; }
  };

  const addressOf = (path) => '/report/' + path.split('/').map(encodeURIComponent).join('/');

  // Where the reader is: the first element with a name on the screen, what is unfolded, what is typed into the filter.
  const placeOf = (view) => {
    const doc = view.document;
    let anchor = null;
    for (const element of doc.querySelectorAll('[id]')) {
      const top = element.getBoundingClientRect().top;
      if (element.getClientRects().length === 0 || top < -4) continue;
      if (top > view.innerHeight) break;
      anchor = { id: element.id, top };
      break;
    }
    const folds = [...doc.querySelectorAll('details')];
    const named = new Map(folds.filter((d) => d.id).map((d) => [d.id, d.open]));
    const fields = [...doc.querySelectorAll('input[id], select[id]')]
      .map((f) => ({ id: f.id, value: f.value, checked: f.checked }));
    return { x: view.scrollX, y: view.scrollY, anchor, named, folds: folds.map((d) => d.open), fields };
  };

  const restore = (view, place) => {
    const doc = view.document;
    for (const field of place.fields) {
      const element = doc.getElementById(field.id);
      if (!element || (element.value === field.value && element.checked === field.checked)) continue;
      element.value = field.value;
      element.checked = field.checked;
      element.dispatchEvent(new view.Event('input', { bubbles: true }));
      element.dispatchEvent(new view.Event('change', { bubbles: true }));
    }
    const folds = [...doc.querySelectorAll('details')];
    folds.forEach((fold, i) => {
      if (fold.id ? place.named.has(fold.id) : folds.length === place.folds.length)
        fold.open = fold.id ? place.named.get(fold.id) : place.folds[i];
    });
    view.scrollTo(place.x, place.y);
    const anchor = place.anchor && doc.getElementById(place.anchor.id);
    if (anchor) view.scrollBy(0, anchor.getBoundingClientRect().top - place.anchor.top);
  };

  const followed = (f) => {
    f.addEventListener('load', () => {
      if (f !== frame) return;
      const path = pathOf(f);
      shown = versions ? versions[path] : shown;
      const note = () => history.replaceState(null, '', '#' + path + f.contentWindow.location.hash);
      note();
      f.contentWindow.addEventListener('hashchange', note);
    });
  };

  // The new report is laid out behind the old one and takes its place when it is whole: nothing flickers.
  const renew = () => {
    const old = frame;
    const path = pathOf(old);
    const place = placeOf(old.contentWindow);
    const next = document.createElement('iframe');
    next.className = 'report coming';
    next.title = 'Report';
    next.addEventListener('load', () => {
      if (frame !== old) { next.remove(); return; }
      restore(next.contentWindow, place);
      next.classList.remove('coming');
      old.remove();
      next.name = 'report';
      next.contentWindow.name = 'report';
      frame = next;
      followed(next);
    }, { once: true });
    shown = versions[path];
    next.src = addressOf(path);
    box.append(next);
  };

  const update = async () => {
    const answer = await fetch('/state', { cache: 'no-store' });
    if (!answer.ok) return;
    const state = await answer.json();
    versions = state.pages;
    document.title = state.title;
    const open = new Set([...now.querySelectorAll('details[open]')].map((d) => d.id));
    now.innerHTML = state.panel;
    now.dataset.version = state.version;
    for (const fold of now.querySelectorAll('details')) fold.open = open.has(fold.id);
    const version = versions[pathOf(frame)];
    if (shown === null) shown = version;
    else if (version !== undefined && version !== shown) renew();
  };

  followed(frame);
  if (location.hash.length > 1) {
    const [path, id] = location.hash.slice(1).split('#');
    frame.src = addressOf(decodeURIComponent(path)) + (id ? '#' + id : '');
  }
  const events = new EventSource('/events');
  events.onmessage = update;
  events.onerror = () => {
    if (now.querySelector('.gone')) return;
    const text = document.createElement('p');
    text.className = 'gone';
    text.textContent = 'No word from pawl live: what stands here is of its last word.';
    now.prepend(text);
  };
  events.onopen = () => now.querySelector('.gone')?.remove();
})();
