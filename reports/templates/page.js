'use strict';
(() => {
  // A link to what stands on the page of derivations leads there.
  const other = document.querySelector('[data-derivations]');
  const forward = () => {
    const id = decodeURIComponent(location.hash.slice(1));
    if (other && id && !document.getElementById(id) && /^(quantity|subject|requirement|rule|figure)\./.test(id))
      location.replace(other.dataset.derivations + '#' + id);
  };
  forward();
  addEventListener('hashchange', forward);

  // Contents: the section being read.
  const links = new Map([...document.querySelectorAll('.contents a')].map(a => [a.hash.slice(1), a]));
  if ('IntersectionObserver' in window) {
    const seen = new IntersectionObserver(entries => {
      for (const entry of entries) {
        if (!entry.isIntersecting) continue;
        links.forEach(a => a.removeAttribute('aria-current'));
        links.get(entry.target.id)?.setAttribute('aria-current', 'true');
      }
    }, { rootMargin: '0px 0px -70% 0px' });
    document.querySelectorAll('h2[id]').forEach(h => links.has(h.id) && seen.observe(h));
  }

  // Checks: what is not looked for is hidden.
  const bar = document.querySelector('.filter');
  if (!bar) return;
  const [text, outcome, severity, subject] = ['text', 'outcome', 'severity', 'subject'].map(n => document.getElementById('filter-' + n));
  const rules = [...document.querySelectorAll('.checks tbody')].map(body => {
    const [head, ...rows] = body.rows;
    return {
      body, table: body.closest('.scroll'), severity: body.dataset.severity, words: head.textContent.toLowerCase(),
      rows: rows.map(row => ({
        row, subject: row.cells[0].textContent, outcome: row.cells[2].textContent.charAt(0), words: row.textContent.toLowerCase(),
      })),
    };
  });
  const all = rules.reduce((n, rule) => n + rule.rows.length, 0);
  for (const name of [...new Set(rules.flatMap(rule => rule.rows.map(r => r.subject)))].sort())
    subject.add(new Option(name, name));
  const show = () => {
    const words = text.value.toLowerCase().split(/\s+/).filter(w => w);
    const full = new Set();
    let count = 0;
    for (const rule of rules) {
      let some = 0;
      for (const r of rule.rows) {
        const fits = (!outcome.value || r.outcome === outcome.value) && (!severity.value || rule.severity === severity.value)
          && (!subject.value || r.subject === subject.value) && words.every(w => r.words.includes(w) || rule.words.includes(w));
        r.row.hidden = !fits;
        if (fits) some++;
      }
      rule.body.hidden = !some;
      if (some) full.add(rule.table);
      count += some;
    }
    for (const table of new Set(rules.map(rule => rule.table))) {
      table.hidden = !full.has(table);
      table.previousElementSibling.hidden = table.hidden;
    }
    document.getElementById('filter-count').textContent = count === all ? `${all} checks` : `${count} of ${all} checks`;
  };
  for (const field of [text, outcome, severity, subject]) field.addEventListener('input', show);
  document.getElementById('filter-clear').addEventListener('click', () => {
    for (const field of [text, outcome, severity, subject]) field.value = '';
    show();
  });
  // A link to what the filter hides shows all.
  addEventListener('hashchange', () => {
    if (document.getElementById(decodeURIComponent(location.hash.slice(1)))?.closest('[hidden]')) document.getElementById('filter-clear').click();
  });
  bar.hidden = false;
  show();
})();
