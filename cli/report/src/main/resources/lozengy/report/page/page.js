'use strict';
// What a person does with the page: look at a piece, show a part of the blanket, pick pieces.
(() => {
  const data = JSON.parse(document.getElementById('data').textContent);
  const byId = id => document.getElementById(id);
  const SVG = 'http://www.w3.org/2000/svg';
  const chart = byId('chart');
  const card = byId('card-body');
  const rounds = data.pieces.map((piece, i) => [...byId('p' + i).children].reverse());
  const pieces = data.pieces.map(([name, kind, state, strip, order, x, y, yarns, locked, worked], i) =>
    ({ i, name, kind, state, strip, order, x, y, yarns, locked, worked, element: byId('p' + i), seams: [], touches: [] }));
  for (let k = 0; k < data.seams.length; k += 3) {
    const [a, b, tenths] = data.seams.slice(k, k + 3);
    pieces[a].seams.push([b, tenths]);
    pieces[b].seams.push([a, tenths]);
  }
  for (let k = 0; k < data.touches.length; k += 2) {
    pieces[data.touches[k]].touches.push(data.touches[k + 1]);
    pieces[data.touches[k + 1]].touches.push(data.touches[k]);
  }

  /** Makes an element with properties and children; text is only ever text. */
  const make = (name, properties, ...children) => {
    const element = Object.assign(document.createElement(name), properties);
    element.append(...children);
    return element;
  };
  const plural = (n, noun) => n + ' ' + noun + (n === 1 ? '' : 's');
  const swatch = yarn => make('i', { className: 'swatch y' + yarn });
  const metres = (piece, round) => {
    const need = data.needs[piece.kind][round];
    const millimetres = Array.isArray(need) ? need[piece.yarns[round]] : need;
    return (millimetres / 1000).toFixed(1) + ' m';
  };

  // --- picks ----------------------------------------------------------------------------------

  const PICKS = {
    lock: { words: 'Lock', letter: 'L', states: [0] },
    free: { words: 'Free', letter: 'F', states: [0] },
    made: { words: 'Made', letter: 'M', states: [0, 2] },
    joined: { words: 'Joined', letter: 'J', states: [0, 1] },
    planned: { words: 'Planned again', letter: 'P', states: [1, 2] },
  };
  const picks = new Map();

  const begun = piece => piece.state === 0 && piece.worked > 0;
  const state = piece => begun(piece) ? 'worked to round ' + piece.worked : data.states[piece.state];
  const fits = (piece, pick) => PICKS[pick].states.includes(piece.state) || pick === 'planned' && begun(piece);
  const list = pick => pieces.filter(piece => picks.get(piece.i) === pick).map(piece => piece.name).join(',');
  const quoted = file => /^[\w./+-]+$/.test(file) ? file : "'" + file.replaceAll("'", "'\\''") + "'";

  function commands() {
    const words = names => names.map(pick => [pick, list(pick)]).filter(([, names]) => names)
      .map(([pick, names]) => ' --' + pick + ' ' + names).join('');
    const file = quoted(data.file);
    const marks = words(['made', 'joined', 'planned']);
    const wishes = words(['lock', 'free']);
    return [marks && './lozengy mark ' + file + marks, wishes && './lozengy solve ' + file + wishes]
      .filter(Boolean);
  }

  function toggle(piece, pick) {
    if (!fits(piece, pick)) {
      tellPicks(piece.name + ' is ' + state(piece) + ': ' + PICKS[pick].words.toLowerCase() + ' does not fit.');
      return;
    }
    if (picks.get(piece.i) === pick) {
      picks.delete(piece.i);
    } else {
      picks.set(piece.i, pick);
    }
    showPicks();
    show(piece);
  }

  function showPicks() {
    const marks = [];
    for (const piece of pieces) {
      const pick = picks.get(piece.i);
      piece.element.setAttribute('aria-selected', String(Boolean(pick)));
      if (pick) {
        marks.push(badge(piece, PICKS[pick].letter));
      }
    }
    byId('picked').replaceChildren(...marks);
    byId('line').value = commands().join('\n');
    byId('picks-out').hidden = picks.size === 0;
    tellPicks('');
  }

  function tellPicks(note) {
    const counts = Object.keys(PICKS).map(pick => [pick, [...picks.values()].filter(each => each === pick).length])
      .filter(([, n]) => n).map(([pick, n]) => plural(n, 'piece') + ' ' + { lock: 'locked', free: 'freed', made: 'made', joined: 'joined', planned: 'planned again' }[pick]);
    byId('picks-told').textContent = (note ? note + ' ' : '') + (counts.length ? 'Picked: ' + counts.join(', ') + '.' : 'Nothing is picked.');
  }

  function badge(piece, letter) {
    const box = piece.element.lastElementChild.getBBox();
    const size = Math.min(2.6, box.width / 2);
    const at = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
    const circle = document.createElementNS(SVG, 'circle');
    circle.setAttribute('cx', at.x);
    circle.setAttribute('cy', at.y);
    circle.setAttribute('r', size);
    const text = document.createElementNS(SVG, 'text');
    text.setAttribute('x', at.x);
    text.setAttribute('y', at.y + size * .5);
    text.setAttribute('font-size', size * 1.4);
    text.textContent = letter;
    const group = document.createElementNS(SVG, 'g');
    group.append(circle, text);
    return group;
  }

  byId('drop').addEventListener('click', () => {
    picks.clear();
    showPicks();
    byId('mode').focus();
  });
  byId('copy').addEventListener('click', async () => {
    const line = byId('line');
    try {
      await navigator.clipboard.writeText(line.value);
    } catch {
      line.select();
      document.execCommand('copy');
    }
    tellPicks('Copied.');
  });
  byId('save').addEventListener('click', () => {
    const url = URL.createObjectURL(new Blob([commands().join('\n') + '\n'], { type: 'text/plain' }));
    make('a', { href: url, download: 'picks.txt' }).click();
    setTimeout(() => URL.revokeObjectURL(url), 10000);
    tellPicks('Saved as picks.txt.');
  });

  // --- the card -------------------------------------------------------------------------------

  let shown = null;
  let kept = null;

  function show(piece) {
    shown = piece;
    ring(piece);
    const earlier = data.earlier && data.earlier[piece.i];
    const list = make('ol', {});
    piece.yarns.forEach((yarn, round) => {
      const [code, name] = data.yarns[yarn];
      const notes = [metres(piece, round)];
      if (round < piece.worked) {
        notes.push('worked');
      } else if (piece.locked.includes(round)) {
        notes.push('locked');
      }
      if (earlier && earlier[round] !== yarn) {
        notes.push('was ' + (earlier[round] < 0 ? 'open' : data.yarns[earlier[round]][0]));
      }
      const place = round === piece.yarns.length - 1 ? 'border' : 'round ' + (round + 1);
      list.append(make('li', {}, swatch(yarn), make('b', {}, code), make('span', {}, name),
        make('small', {}, place + ', ' + notes.join(', '))));
    });
    const near = make('div', { className: 'near' });
    for (const [other, tenths] of piece.seams) {
      near.append(neighbour(pieces[other], 'colour difference ' + (tenths / 10).toFixed(1)));
    }
    const acts = make('div', { className: 'acts' });
    for (const pick of Object.keys(PICKS).filter(each => fits(piece, each))) {
      const button = make('button', { type: 'button', onclick: () => act(piece, pick) }, PICKS[pick].words);
      button.dataset.pick = pick;
      button.setAttribute('aria-pressed', String(picks.get(piece.i) === pick));
      acts.append(button);
    }
    const touches = piece.touches.map(other => pieces[other].name).join(', ');
    byId('card-head').textContent = piece.name;
    card.replaceChildren(
      make('p', {}, data.kinds[piece.kind] + ', ' + state(piece) + '; strip ' + piece.strip + ', place ' + piece.order),
      list,
      make('p', { className: 'hint' }, 'Joined along a side to'),
      near,
      make('p', { className: 'hint' }, touches ? 'Touches ' + touches : ''),
      acts);
  }

  function neighbour(piece, title) {
    const border = piece.yarns[piece.yarns.length - 1];
    return make('button', { type: 'button', title, onclick: () => go(piece) },
      swatch(border), piece.name + ' ' + data.yarns[border][0]);
  }

  function act(piece, pick) {
    toggle(piece, pick);
    const button = card.querySelector('[data-pick=' + pick + ']');
    if (button) {
      button.focus();
    }
  }

  /** A ring around the piece that the card tells of: light within dark shows on every yarn. */
  function ring(piece) {
    const points = piece.element.firstElementChild.getAttribute('points');
    byId('ring').replaceChildren(...[0, 1].map(() => {
      const path = document.createElementNS(SVG, 'path');
      path.setAttribute('d', 'M' + points + 'z');
      return path;
    }));
  }

  // --- pointer and keyboard -------------------------------------------------------------------

  const pieceOf = target => {
    const element = target.closest && target.closest('.piece');
    return element && pieces[Number(element.id.slice(1))];
  };

  function go(piece) {
    pieces.forEach(each => each.element.tabIndex === 0 && each !== piece && (each.element.tabIndex = -1));
    piece.element.tabIndex = 0;
    piece.element.focus({ preventScroll: false });
    kept = piece;
    show(piece);
  }

  function choose(piece) {
    const mode = byId('mode').value;
    if (mode === 'look') {
      go(piece);
    } else {
      go(piece);
      toggle(piece, mode);
    }
  }

  chart.addEventListener('pointerover', event => {
    const piece = event.pointerType !== 'touch' && pieceOf(event.target);
    if (piece && piece !== shown) {
      show(piece);
    }
  });
  chart.addEventListener('pointerleave', () => kept && kept !== shown && show(kept));
  chart.addEventListener('click', event => {
    const piece = pieceOf(event.target);
    if (piece) {
      choose(piece);
    }
  });
  // Not on the drawing: Chromium gives an SVG element that listens to focus a tab stop of its own.
  byId('view').addEventListener('focusin', event => {
    const piece = pieceOf(event.target);
    if (piece && piece !== kept) {
      kept = piece;
      show(piece);
    }
  });

  const WAYS = { ArrowRight: [1, 0], ArrowLeft: [-1, 0], ArrowDown: [0, 1], ArrowUp: [0, -1] };

  /** The nearest piece that way, one straight ahead before one aside. */
  function next(from, [dx, dy]) {
    let best = null;
    let least = Infinity;
    for (const piece of pieces) {
      const ahead = (piece.x - from.x) * dx + (piece.y - from.y) * dy;
      const aside = Math.abs((piece.x - from.x) * dy) + Math.abs((piece.y - from.y) * dx);
      const far = ahead + 2 * aside;
      if (ahead > 0 && aside <= ahead && far < least) {
        least = far;
        best = piece;
      }
    }
    return best;
  }

  chart.addEventListener('keydown', event => {
    const piece = pieceOf(event.target);
    if (!piece || event.ctrlKey || event.metaKey || event.altKey) {
      return;
    }
    let to = null;
    if (WAYS[event.key]) {
      to = next(piece, WAYS[event.key]);
    } else if (event.key === 'Home') {
      to = pieces[0];
    } else if (event.key === 'End') {
      to = pieces[pieces.length - 1];
    } else if (event.key === 'Enter' || event.key === ' ') {
      if (byId('mode').value === 'look') {
        const button = card.querySelector('.acts button');
        button && button.focus();
      } else {
        choose(piece);
      }
    } else {
      return;
    }
    event.preventDefault();
    if (to) {
      go(to);
    }
  });
  byId('card').addEventListener('keydown', event => {
    if (event.key === 'Escape' && shown) {
      go(shown);
    }
  });

  // --- what is shown --------------------------------------------------------------------------

  const part = byId('show');

  /** Which rounds of a piece are shown, and in words what all of them are. */
  function choice(value) {
    if (value.startsWith('yarn-')) {
      const yarn = Number(value.slice(5));
      return { on: (piece, round) => piece.yarns[round] === yarn, words: data.yarns[yarn].join(' ') };
    }
    if (value.startsWith('strip-')) {
      const strip = Number(value.slice(6));
      return { on: piece => piece.strip === strip, words: 'Strip ' + strip };
    }
    if (value === 'left') {
      return { on: (piece, round) => round >= piece.worked, words: 'Left to make' };
    }
    if (value.startsWith('weak')) {
      const spots = value === 'weak' ? data.weak : [data.weak[Number(value.slice(5))]];
      const weak = new Set(spots.flatMap(([, of]) => of));
      return { on: piece => weak.has(piece.i), words: value === 'weak' ? 'Weak spots' : spots[0][0] };
    }
    return { on: (piece, round) => data.earlier[piece.i][round] !== piece.yarns[round], words: 'Changed' };
  }

  function highlight(value) {
    chart.classList.toggle('dimmed', value !== 'all');
    if (value === 'all') {
      byId('told').textContent = '';
      return;
    }
    const { on, words } = choice(value);
    let inRounds = 0;
    let inPieces = 0;
    for (const piece of pieces) {
      let any = false;
      rounds[piece.i].forEach((round, k) => {
        const lit = on(piece, k);
        round.classList.toggle('on', lit);
        inRounds += lit;
        any ||= lit;
      });
      inPieces += any;
    }
    byId('told').textContent = words + ': ' + plural(inRounds, 'round') + ' in ' + plural(inPieces, 'piece') + '.';
  }
  part.addEventListener('change', () => highlight(part.value));
  for (const button of document.querySelectorAll('.see')) {
    button.addEventListener('click', () => {
      part.value = 'weak';
      highlight('weak-' + button.value);
      byId('plan').scrollIntoView();
      part.focus({ preventScroll: true });
    });
  }

  for (const what of ['letters', 'names']) {
    const box = byId('show-' + what);
    if (!byId(what)) {
      box.parentElement.remove();
      continue;
    }
    // a page that is loaded anew may find the box as it was, but not the chart
    box.checked = false;
    box.addEventListener('change', () => chart.classList.toggle('with-' + what, box.checked));
  }

  let zoom = 1;
  function zoomBy(factor) {
    zoom = Math.min(8, Math.max(1, zoom * factor));
    chart.style.setProperty('--zoom', zoom);
  }
  byId('larger').addEventListener('click', () => zoomBy(1.5));
  byId('smaller').addEventListener('click', () => zoomBy(1 / 1.5));

  document.documentElement.dataset.ready = 'true';
  performance.mark('ready');
})();
