/** The card of the piece that is looked at, and what can be ticked of it. */
function cardPart(keep, where) {
  const { plan, pieces } = keep;
  const card = byId('card-body');
  const PICKS = {
    made: { words: 'Made', told: 'made', states: [0, 2] },
    joined: { words: 'Joined', told: 'joined', states: [0, 1] },
    lock: { words: 'Lock', told: 'locked', states: [0] },
    free: { words: 'Free', told: 'freed', states: [0] },
    planned: { words: 'Planned again', told: 'planned again', states: [1, 2] },
  };
  const swatch = yarn => make('i', { className: 'swatch y' + yarn });
  const begun = piece => piece.state === 0 && piece.worked > 0;
  const state = piece => begun(piece) ? 'worked to round ' + piece.worked : plan.states[piece.state];
  const fits = (piece, pick) => PICKS[pick].states.includes(piece.state) || pick === 'planned' && begun(piece);

  /** What was ticked of a piece; null if nothing was, or if it is begun. */
  function picked({ i, yarns }) {
    if (!keep.ticked(i)) {
      return null;
    }
    const worked = keep.worked(i);
    return keep.wish(i) ?? (keep.joined(i) ? 'joined' : worked === yarns.length ? 'made' : worked === 0 ? 'planned' : null);
  }

  const SETS = {
    lock: piece => keep.wishTo(piece.i, 'lock'),
    free: piece => keep.wishTo(piece.i, 'free'),
    made: piece => [...keep.workedTo(piece.i, piece.yarns.length), ['joined', piece.i, false]],
    joined: piece => keep.joinedTo(piece.i, true),
    planned: piece => keep.workedTo(piece.i, 0),
  };

  function pick(piece, what) {
    if (!fits(piece, what)) {
      byId('told').textContent = piece.name + ' is ' + state(piece) + ': ' + PICKS[what].words.toLowerCase() + ' does not fit.';
      return;
    }
    const changes = keep.asPlanned(piece.i);
    if (picked(piece) !== what) {
      // What is set last of a value is what counts.
      const set = new Map(changes.map(each => [each[0], each]));
      SETS[what](piece).forEach(each => set.set(each[0], each));
      keep.change([...set.values()]);
    } else {
      keep.change(changes);
    }
    byId('told').textContent = piece.name + (picked(piece) ? ' is ticked ' + PICKS[picked(piece)].told : ' is as its file says') + '.';
  }

  /** How far a piece has come, here and in its file. */
  function now(piece) {
    const worked = keep.worked(piece.i);
    const all = piece.yarns.length;
    const words = keep.joined(piece.i) ? plan.states[2] : worked === all ? plan.states[1]
      : worked ? 'worked to round ' + worked : plan.states[0];
    return words + (words === state(piece) ? '' : ' (ticked here)');
  }

  function metres(piece, round) {
    const need = plan.needs[piece.kind][round];
    return ((Array.isArray(need) ? need[piece.yarns[round]] : need) / 1000).toFixed(1) + ' m';
  }

  function show(piece) {
    const earlier = plan.earlier?.[piece.i];
    const worked = keep.worked(piece.i);
    const list = make('ol', {});
    piece.yarns.forEach((yarn, round) => {
      const [code, name] = plan.yarns[yarn];
      const notes = [metres(piece, round)];
      if (round < worked) {
        notes.push('worked');
      } else if (piece.locked.includes(round)) {
        notes.push('locked');
      }
      if (earlier && earlier[round] !== yarn) {
        notes.push('was ' + (earlier[round] < 0 ? 'open' : plan.yarns[earlier[round]][0]));
      }
      const place = round === piece.yarns.length - 1 ? 'border' : round ? 'round ' + (round + 1) : 'centre';
      list.append(make('li', {}, swatch(yarn), make('b', {}, code), make('span', {}, name),
        make('small', {}, place + ', ' + notes.join(', '))));
    });
    const near = make('div', { className: 'near' });
    for (const [other, tenths] of piece.seams) {
      const border = pieces[other].yarns.at(-1);
      near.append(make('button', { type: 'button', title: 'colour difference ' + (tenths / 10).toFixed(1),
        onclick: () => where.go(pieces[other]) }, swatch(border), pieces[other].name + ' ' + plan.yarns[border][0]));
    }
    const lines = make('p', { className: 'lines' });
    for (const [words, id] of where.lines(piece)) {
      const link = make('button', { type: 'button', className: 'see', onclick: () => where.line(id, piece) }, words);
      lines.append(link, ' ');
    }
    const acts = make('div', { className: 'acts' });
    for (const what of Object.keys(PICKS).filter(each => fits(piece, each))) {
      const button = make('button', { type: 'button', onclick: () => act(piece, what) }, PICKS[what].words);
      button.dataset.pick = what;
      button.setAttribute('aria-pressed', String(picked(piece) === what));
      acts.append(button);
    }
    const touches = piece.touches.map(other => pieces[other].name).join(', ');
    byId('card-head').textContent = piece.name;
    card.replaceChildren(
      make('p', {}, plan.kinds[piece.kind] + ', ' + now(piece) + '; strip ' + piece.strip + ', place ' + piece.order),
      acts, list,
      make('p', { className: 'hint' }, 'Joined along a side to'), near,
      make('p', { className: 'hint' }, touches ? 'Touches ' + touches : ''),
      make('p', { className: 'hint' }, 'In the lists'), lines);
  }

  function act(piece, what) {
    pick(piece, what);
    card.querySelector('[data-pick=' + what + ']')?.focus({ preventScroll: true });
  }

  byId('card').addEventListener('keydown', event => event.key === 'Escape' && where.shown() && where.go(where.shown()));
  keep.onChange(touched => {
    const piece = where.shown();
    if (piece && (!touched || touched.has(piece.i))) {
      show(piece);
    }
  });
  return { show, pick, enter: () => card.querySelector('.acts button')?.focus({ preventScroll: true }) };
}
