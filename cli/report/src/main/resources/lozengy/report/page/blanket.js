/** The drawn blanket: what is lit, how large it is seen, which piece is looked at. */
function blanketPart(keep, picture) {
  const SVG = 'http://www.w3.org/2000/svg';
  const MOST_ZOOM = 16;
  const STEP = 1.5;
  const { plan, pieces } = keep;
  const chart = byId('chart');
  const view = byId('view');
  const told = byId('told');
  const elements = pieces.map((piece, i) => byId('p' + i));
  const svg = (name, attributes, ...children) => {
    const element = document.createElementNS(SVG, name);
    Object.entries(attributes).forEach(([attribute, value]) => element.setAttribute(attribute, value));
    element.append(...children);
    return element;
  };

  /** By piece, what each round's outer edge encloses, the centre first; read when first asked for. */
  const shapes = [];
  const shape = i => shapes[i] ??= [...elements[i].querySelectorAll('.r')].reverse()
    .map(each => each.getAttribute('d') ?? 'M' + each.getAttribute('points') + 'z');
  const outline = i => shape(i)[shape(i).length - 1];
  const box = { width: chart.viewBox.baseVal.width, height: chart.viewBox.baseVal.height };

  // --- what is lit ----------------------------------------------------------------------------

  /** Covers all that is not lit with a veil that has a hole for each lit round. */
  function veil(on) {
    const path = [];
    const edges = [];
    let inRounds = 0;
    let inPieces = 0;
    for (const piece of pieces) {
      const rounds = shape(piece.i);
      path.push(rounds[rounds.length - 1]);
      const before = inRounds;
      for (let round = 0; round < rounds.length; round++) {
        if (on(piece, round)) {
          // A hole between two edges; where two rounds meet, their common edge is none.
          const ring = rounds[round] + (round ? rounds[round - 1] : '');
          path.push(ring);
          edges.push(ring);
          inRounds++;
        }
      }
      inPieces += inRounds > before;
    }
    byId('veil').setAttribute('d', path.join(''));
    byId('lit').setAttribute('d', edges.join(''));
    return plural(inRounds, 'round') + ' in ' + plural(inPieces, 'piece') + '.';
  }

  function choice(value) {
    const number = Number(value.slice(value.indexOf('-') + 1));
    if (value.startsWith('yarn-')) {
      return { on: (piece, round) => piece.yarns[round] === number, words: plan.yarns[number].slice(0, 2).join(' ') };
    }
    if (value.startsWith('strip-')) {
      return { on: piece => piece.strip === number, words: 'Strip ' + number };
    }
    if (value === 'left') {
      return { on: (piece, round) => round >= keep.worked(piece.i), words: 'Left to make' };
    }
    if (value.startsWith('weak')) {
      const spots = value === 'weak' ? plan.weak : [plan.weak[number]];
      const weak = new Set(spots.flatMap(([, of]) => of));
      return { on: piece => weak.has(piece.i), words: value === 'weak' ? 'Weak spots' : spots[0][0] };
    }
    return { on: (piece, round) => plan.earlier[piece.i][round] !== piece.yarns[round], words: 'Changed' };
  }

  let lit = 'all';
  function light(value) {
    lit = value;
    const option = byId('show').querySelector('[value="' + value + '"]');
    byId('show').value = option ? value : value.startsWith('weak') ? 'weak' : 'all';
    document.querySelectorAll('#legend button').forEach(button =>
      button.setAttribute('aria-pressed', String(button.value === value)));
    keep.remember('lit', option ? value : 'all');
    relight();
  }

  function relight() {
    chart.classList.toggle('dimmed', lit !== 'all');
    if (lit === 'all') {
      told.textContent = '';
      return;
    }
    const { on, words } = choice(lit);
    told.textContent = words + ': ' + veil(on);
  }

  /** Lights rounds that a list names: of each piece, from one round to another. */
  function lightRounds(words, rounds) {
    light('all');
    chart.classList.add('dimmed');
    told.textContent = words + ': ' + veil((piece, round) => rounds.get(piece.i)?.has(round));
  }

  byId('show').addEventListener('change', event => light(event.target.value));
  byId('legend').addEventListener('click', event => {
    const button = event.target.closest('button');
    if (button) {
      light(lit === button.value ? 'all' : button.value);
    }
  });

  // --- how large ------------------------------------------------------------------------------

  const eye = { k: 1, x: box.width / 2, y: box.height / 2 };
  const perUnit = () => Math.min(chart.clientWidth / box.width, chart.clientHeight / box.height) * eye.k;
  const LEGIBLE = 7;
  /** Letters stand in groups of one size. */
  const letters = [...byId('letters').children].map(group => [group, Number(group.getAttribute('font-size'))]);

  function see() {
    const half = { x: box.width / eye.k / 2, y: box.height / eye.k / 2 };
    eye.x = Math.min(box.width - half.x, Math.max(half.x, eye.x));
    eye.y = Math.min(box.height - half.y, Math.max(half.y, eye.y));
    chart.setAttribute('viewBox', [eye.x - half.x, eye.y - half.y, 2 * half.x, 2 * half.y].join(' '));
    view.classList.toggle('zoomed', eye.k > 1);
    byId('smaller').disabled = byId('reset').disabled = eye.k === 1;
    byId('larger').disabled = eye.k === MOST_ZOOM;
    showLetters();
  }

  function showLetters() {
    const wanted = byId('show-letters').checked || eye.k > 1;
    const unit = perUnit();
    const legible = letters.filter(([group, size]) => !group.classList.toggle('tiny', size * unit < LEGIBLE)).length > 0;
    chart.classList.toggle('with-letters', wanted && legible);
    byId('letters-hint').hidden = !byId('show-letters').checked || legible;
  }

  /** Makes all larger by a factor, with one point of the chart staying where it is seen. */
  function zoomBy(factor, at = middle()) {
    const before = eye.k;
    eye.k = Math.min(MOST_ZOOM, Math.max(1, eye.k * factor));
    eye.x = at.x + (eye.x - at.x) * before / eye.k;
    eye.y = at.y + (eye.y - at.y) * before / eye.k;
    see();
    rememberEye();
  }

  let later = 0;
  function rememberEye() {
    clearTimeout(later);
    later = setTimeout(() => keep.remember('eye', [eye.k, eye.x, eye.y]), 300);
  }

  /** Around the chosen piece, which comes into the middle; without one around what is in the middle. */
  function zoomAround(factor) {
    if (kept && factor > 1) {
      Object.assign(eye, centre(kept));
    }
    zoomBy(factor, kept ? centre(kept) : middle());
  }

  function middle() {
    return { x: eye.x, y: eye.y };
  }

  /** The box of a piece, or of one of its rounds. */
  function bounds(i, round = shape(i).length - 1) {
    const corners = shape(i)[round].match(/-?[\d.]+/g).map(Number);
    const xs = corners.filter((n, k) => k % 2 === 0);
    const ys = corners.filter((n, k) => k % 2 === 1);
    const [x, y] = [Math.min(...xs), Math.min(...ys)];
    return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
  }

  function centre(piece) {
    const { x, y, width, height } = bounds(piece.i);
    return { x: x + width / 2, y: y + height / 2 };
  }

  function onChart(clientX, clientY) {
    const rect = chart.getBoundingClientRect();
    const unit = perUnit();
    return { x: eye.x + (clientX - rect.left - rect.width / 2) / unit, y: eye.y + (clientY - rect.top - rect.height / 2) / unit };
  }

  function reset() {
    eye.k = 1;
    see();
    rememberEye();
  }

  /** Brings a piece into sight that zoom has put out of it. */
  function intoSight(piece) {
    const at = centre(piece);
    const half = { x: box.width / eye.k / 2, y: box.height / eye.k / 2 };
    if (eye.k > 1 && (Math.abs(at.x - eye.x) > half.x * 0.9 || Math.abs(at.y - eye.y) > half.y * 0.9)) {
      Object.assign(eye, at);
      see();
    }
  }

  byId('larger').addEventListener('click', () => zoomAround(STEP));
  byId('smaller').addEventListener('click', () => zoomAround(1 / STEP));
  byId('reset').addEventListener('click', reset);
  view.addEventListener('wheel', event => {
    // Nothing that a wheel is otherwise for is taken from it: at full size a page scrolls on.
    const larger = event.deltaY < 0;
    if (!event.ctrlKey && eye.k === 1 && (!larger || window.scrollY > 0)) {
      return;
    }
    event.preventDefault();
    zoomBy(Math.exp(-event.deltaY * (event.ctrlKey ? 0.01 : 0.002)), onChart(event.clientX, event.clientY));
  }, { passive: false });

  const fingers = new Map();
  let dragged = false;
  view.addEventListener('pointerdown', event => {
    if (fingers.size === 0) {
      dragged = false;
    }
    fingers.set(event.pointerId, { x: event.clientX, y: event.clientY, from: [event.clientX, event.clientY] });
  });
  view.addEventListener('pointermove', event => {
    const finger = fingers.get(event.pointerId);
    if (!finger) {
      return;
    }
    const others = [...fingers.entries()].filter(([id]) => id !== event.pointerId).map(([, other]) => other);
    const moved = { x: event.clientX - finger.x, y: event.clientY - finger.y };
    if (others.length === 1) {
      const [other] = others;
      const before = Math.hypot(finger.x - other.x, finger.y - other.y);
      const now = Math.hypot(event.clientX - other.x, event.clientY - other.y);
      dragged = true;
      if (before > 0) {
        zoomBy(now / before, onChart((event.clientX + other.x) / 2, (event.clientY + other.y) / 2));
      }
    } else if (!others.length && eye.k > 1
        && (dragged || Math.hypot(event.clientX - finger.from[0], event.clientY - finger.from[1]) > 5)) {
      if (!dragged) {
        dragged = true;
        view.setPointerCapture(event.pointerId);
      }
      eye.x -= moved.x / perUnit();
      eye.y -= moved.y / perUnit();
      see();
      rememberEye();
    }
    finger.x = event.clientX;
    finger.y = event.clientY;
  });
  for (const end of ['pointerup', 'pointercancel', 'lostpointercapture']) {
    view.addEventListener(end, event => fingers.delete(event.pointerId));
  }
  window.addEventListener('resize', showLetters);

  // --- one piece ------------------------------------------------------------------------------

  let shown = null;
  let kept = null;
  const calls = [];

  function show(piece) {
    if (piece === shown) {
      return;
    }
    shown = piece;
    // Light within dark shows on every yarn.
    const line = { d: outline(piece.i), 'vector-effect': 'non-scaling-stroke' };
    byId('ring').replaceChildren(svg('path', line), svg('path', line));
    calls.forEach(call => call(piece));
  }

  function go(piece) {
    elements.forEach(each => each.tabIndex === 0 && (each.tabIndex = -1));
    elements[piece.i].tabIndex = 0;
    elements[piece.i].focus({ preventScroll: true });
    kept = piece;
    intoSight(piece);
    show(piece);
    keep.remember('piece', piece.name);
  }

  const pieceOf = target => {
    const element = target.closest?.('.piece');
    return element && pieces[Number(element.id.slice(1))];
  };
  const choose = piece => {
    go(piece);
    const mode = byId('mode').value;
    mode !== 'look' && picture.pick(piece, mode);
  };

  // A pointer that rests points at nothing, though the page moves beneath it.
  let rests = null;
  document.addEventListener('click', event => (rests = [event.clientX, event.clientY]), true);
  chart.addEventListener('pointerover', event => {
    const moved = !rests || rests[0] !== event.clientX || rests[1] !== event.clientY;
    const piece = moved && event.pointerType !== 'touch' && !fingers.size && pieceOf(event.target);
    if (piece && piece !== shown) {
      show(piece);
    }
  });
  chart.addEventListener('pointerleave', () => kept && kept !== shown && show(kept));
  chart.addEventListener('click', event => {
    const piece = pieceOf(event.target);
    if (piece && !dragged) {
      choose(piece);
    }
  });
  // Not on the drawing: Chromium gives an SVG element that listens to focus a tab stop of its own.
  view.addEventListener('focusin', event => {
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
    const acts = {
      Home: () => go(pieces[0]),
      End: () => go(pieces[pieces.length - 1]),
      Enter: () => byId('mode').value === 'look' ? picture.enter() : choose(piece),
      '+': () => zoomAround(STEP),
      '-': () => zoomAround(1 / STEP),
      0: reset,
    };
    acts['='] = acts['+'];
    acts[' '] = acts.Enter;
    const to = WAYS[event.key] && next(piece, WAYS[event.key]);
    if (!WAYS[event.key] && !acts[event.key]) {
      return;
    }
    event.preventDefault();
    WAYS[event.key] ? to && go(to) : acts[event.key]();
  });

  // --- what was ticked ------------------------------------------------------------------------

  const badges = new Map();
  const LETTER = { lock: 'L', free: 'F' };

  /** The letter of what was ticked of a piece here, so that it is seen beside what its file says. */
  function letter(piece) {
    const i = piece.i;
    if (!keep.ticked(i)) {
      return '';
    }
    const worked = keep.worked(i);
    return keep.wish(i) ? LETTER[keep.wish(i)] : keep.joined(i) ? 'J'
      : worked === piece.yarns.length ? 'M' : worked === 0 ? 'P' : String(worked);
  }

  function badge(piece) {
    const words = letter(piece);
    elements[piece.i].setAttribute('aria-selected', String(Boolean(words)));
    if (!words) {
      badges.get(piece.i)?.remove();
      badges.delete(piece.i);
      return;
    }
    const round = bounds(piece.i, 0);
    const inner = centreOf(shape(piece.i)[0]);
    const size = Math.min(2.6, round.width / 2);
    const text = svg('text', { x: inner.x, y: inner.y + size * 0.5, 'font-size': size * 1.4 });
    text.textContent = words;
    const group = svg('g', {}, svg('circle', { cx: inner.x, cy: inner.y, r: size }), text);
    badges.get(piece.i)?.remove();
    badges.set(piece.i, group);
    byId('picked').append(group);
  }

  function centreOf(path) {
    const numbers = path.match(/-?[\d.]+/g).map(Number);
    const sum = numbers.reduce(([x, y], n, k) => k % 2 ? [x, y + n] : [x + n, y], [0, 0]);
    return { x: sum[0] * 2 / numbers.length, y: sum[1] * 2 / numbers.length };
  }

  keep.onChange(touched => {
    (touched ? [...touched].map(i => pieces[i]) : pieces).forEach(badge);
    lit === 'left' && relight();
  });

  // --- tools ----------------------------------------------------------------------------------

  const BOXES = { letters: see, names: () => chart.classList.toggle('with-names', byId('show-names').checked) };
  for (const what of Object.keys(BOXES)) {
    const tick = byId('show-' + what);
    tick.checked = keep.look('show-' + what, false);
    tick.addEventListener('change', () => {
      keep.remember('show-' + what, tick.checked);
      BOXES[what]();
    });
    what === 'names' && BOXES.names();
  }

  const byName = new Map(pieces.map(piece => [piece.name, piece]));
  byId('find').addEventListener('submit', event => {
    event.preventDefault();
    const words = byId('found').value.trim().toLowerCase().replace(/\s+/g, '-');
    const piece = byName.get(words) ?? byName.get(words.replaceAll('-', ''));
    if (piece) {
      told.textContent = '';
      go(piece);
    } else {
      told.textContent = 'No piece is called ' + byId('found').value.trim() + '.';
    }
  });

  function wholeScreen(on) {
    document.body.classList.toggle('only-blanket', on);
    byId('whole').setAttribute('aria-pressed', String(on));
    on ? document.documentElement.requestFullscreen?.().catch(() => {}) : document.fullscreenElement && document.exitFullscreen();
    see();
  }
  byId('whole').addEventListener('click', () => wholeScreen(!document.body.classList.contains('only-blanket')));
  document.addEventListener('fullscreenchange', () => !document.fullscreenElement
    && document.body.classList.contains('only-blanket') && wholeScreen(false));
  document.addEventListener('keydown', event => event.key === 'Escape'
    && document.body.classList.contains('only-blanket') && wholeScreen(false));

  /** The blanket alone, as a picture: no names, letters, rings or marks. */
  async function share() {
    const LARGEST = 2000;
    const factor = LARGEST / Math.max(box.width, box.height);
    const size = { width: Math.round(box.width * factor), height: Math.round(box.height * factor) };
    const copy = svg('svg', { xmlns: SVG, viewBox: '0 0 ' + box.width + ' ' + box.height, ...size });
    const style = svg('style', {});
    style.textContent = document.querySelector('style').textContent;
    copy.append(style);
    for (const part of chart.children) {
      copy.append(part.cloneNode(true));
    }
    copy.querySelectorAll('#letters, #names, #veil, #lit, #picked, #ring, .begun').forEach(each => each.remove());
    const url = 'data:image/svg+xml;charset=utf-8,' + encodeURIComponent(new XMLSerializer().serializeToString(copy));
    const image = new Image();
    await new Promise((done, failed) => Object.assign(image, { onload: done, onerror: failed, src: url }));
    const canvas = Object.assign(document.createElement('canvas'), size);
    const paint = canvas.getContext('2d');
    paint.drawImage(image, 0, 0, size.width, size.height);
    return new Promise(done => canvas.toBlob(done, 'image/png'));
  }
  byId('share').addEventListener('click', async () => {
    try {
      await picture.share(await share());
    } catch {
      told.textContent = 'This browser cannot make a picture.';
    }
  });

  const [k, x, y] = keep.look('eye', [1, eye.x, eye.y]);
  Object.assign(eye, { k: Math.min(MOST_ZOOM, Math.max(1, k || 1)), x: x || eye.x, y: y || eye.y });
  // Measuring lays the whole page out; until it is seen first there is time.
  requestAnimationFrame(see);
  pieces.filter(piece => keep.ticked(piece.i)).forEach(badge);
  lit = keep.look('lit', 'all');
  byId('show').querySelector('[value="' + lit + '"]') ? light(lit) : lit = 'all';

  return {
    light, lightRounds, go, outline, bounds, box, svg, shape,
    byName,
    onShown: call => calls.push(call),
    get shown() {
      return shown;
    },
    /** Looks at the piece again that was looked at before a reload. */
    begin() {
      const piece = byName.get(keep.look('piece', ''));
      if (piece) {
        kept = piece;
        elements.forEach(each => each.tabIndex === 0 && (each.tabIndex = -1));
        elements[piece.i].tabIndex = 0;
        show(piece);
      }
    },
  };
}
