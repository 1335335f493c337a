/** At work: one step of the work, large, to be ticked with one hand. The plan gives the order. */
function workPart(keep, blanket) {
  const { plan, pieces } = keep;
  const { joining = null, edging = null } = plan;
  const orders = plan.steps;
  const KIND = { work: 0, join: 1, edge: 2 };
  const where = keep.look('steps', {});
  let order = orders[keep.look('order', 'ball')] ? keep.look('order', 'ball') : 'ball';
  let at = 0;

  const metres = millimetres => (millimetres / 1000).toFixed(1) + ' m';
  const need = (piece, round) => {
    const needs = plan.needs[piece.kind][round];
    return Array.isArray(needs) ? needs[piece.yarns[round]] : needs;
  };
  /** The rounds of a step as pairs of piece and round. */
  const rest = piece => piece.yarns.map((yarn, round) => [piece, round]).slice(piece.worked);
  const tasks = step => step[1] !== KIND.work ? [] : Array.isArray(step[2])
    ? step[2].flatMap(([round, ...of]) => of.map(i => [pieces[i], round])) : rest(pieces[step[2]]);
  const done = step => step[1] === KIND.work ? tasks(step).every(([piece, round]) => keep.worked(piece.i) > round)
    : step[1] === KIND.join ? step[4].every(i => keep.joined(i)) : keep.edged();
  const steps = () => orders[order].left;

  const yarn = i => {
    const [code, name] = plan.yarns[i];
    return make('span', { className: 'yarn' }, make('i', { className: 'swatch y' + i }), make('b', {}, name),
      ...(name === code ? [] : [make('span', {}, code)]));
  };
  const roundName = (piece, round) => round === piece.yarns.length - 1 ? 'border' : round ? 'round ' + (round + 1) : 'centre';

  /** What is worked alike, in the words of the make list. */
  const groupName = (piece, round, n) => {
    const name = roundName(piece, round);
    const noun = plan.kinds[piece.kind];
    return name.startsWith('round') ? name + ' of ' + plural(n, noun) : plural(n, noun + ' ' + name);
  };

  /** What is ticked when a step is, as changes. */
  function all(step, value) {
    if (step[1] === KIND.work) {
      // The rounds within are worked too; taken back, those further out are not.
      const to = new Map();
      for (const [piece, round] of tasks(step)) {
        const worked = to.get(piece.i) ?? keep.worked(piece.i);
        to.set(piece.i, value ? Math.max(worked, round + 1) : Math.min(worked, round));
      }
      return [...to].flatMap(([i, rounds]) => keep.workedTo(i, rounds));
    }
    return step[1] === KIND.join ? step[4].flatMap(i => keep.joinedTo(i, value)) : keep.edgedTo(value);
  }

  function box(checked, words, changes, hint = '') {
    const tick = make('input', { type: 'checkbox', checked, onchange: () => keep.change(changes(tick.checked)) });
    const label = make('label', {}, tick, ...words);
    hint && label.append(make('small', {}, hint));
    return make('li', {}, label);
  }

  const oneRound = (piece, round) => checked => keep.workedTo(piece.i, checked
    ? Math.max(keep.worked(piece.i), round + 1) : Math.min(keep.worked(piece.i), round));

  /** Heading, boxes and pieces of a step. */
  function told(step) {
    if (step[1] === KIND.edge) {
      return { head: ['Edge the outline'], note: edging === null && !step[2] ? '' : metres(step[2]), yarn: edging, of: [],
        boxes: [[null, [box(keep.edged(), ['All around'], keep.edgedTo)]]] };
    }
    if (step[1] === KIND.join) {
      const [, , strip, millimetres, of] = step;
      return { head: ['Join strip ' + strip], yarn: joining,
        note: (strip > 1 ? 'its pieces from left to right, then to strip ' + (strip - 1) : 'its pieces from left to right')
          + (joining === null && !millimetres ? '' : ', ' + metres(millimetres)),
        of: of.map(i => [pieces[i], null]),
        boxes: [[null, of.map(i => box(keep.joined(i), [make('b', {}, pieces[i].name)], value => keep.joinedTo(i, value)))]] };
    }
    const of = tasks(step);
    const sum = metres(of.reduce((total, [piece, round]) => total + need(piece, round), 0));
    if (order === 'strip') {
      const [piece] = of[0];
      return { head: [piece.name], note: 'strip ' + piece.strip + ', ' + plan.kinds[piece.kind] + ', ' + sum, yarn: null, of,
        boxes: [[null, of.map(([, round]) => box(keep.worked(piece.i) > round,
          [yarn(piece.yarns[round])], oneRound(piece, round), roundName(piece, round) + ', ' + metres(need(piece, round))))]] };
    }
    const groups = new Map();
    for (const [piece, round] of of) {
      const name = piece.kind + '/' + round;
      groups.set(name, [...(groups.get(name) ?? []), [piece, round]]);
    }
    return { head: [yarn(of[0][0].yarns[of[0][1]])], note: sum, yarn: null, of,
      boxes: [...groups.values()].map(group => [
        groupName(...group[0], group.length),
        group.map(([piece, round]) => box(keep.worked(piece.i) > round, [make('b', {}, piece.name)], oneRound(piece, round)))]) };
  }

  const map = byId('work-map');
  let ground = null;

  /** Where the step's pieces lie: what is to do in its yarn, what is done hollow. */
  function drawMap(of) {
    ground ??= blanket.svg('path', { class: 'ground', d: pieces.map(piece => blanket.outline(piece.i)).join('') });
    const shapes = [ground];
    for (const [piece, round] of of) {
      const open = round === null ? !keep.joined(piece.i) : keep.worked(piece.i) <= round;
      const fill = round === null ? piece.yarns.at(-1) : piece.yarns[round];
      const rounds = blanket.shape(piece.i);
      const d = order === 'strip' && round !== null ? rounds[round] : rounds.at(-1);
      shapes.push(blanket.svg('path', { d, class: (open ? 'open y' + fill : 'done') }));
    }
    const one = order === 'strip' && of.length && of[0][1] !== null ? of[0][0] : null;
    if (one) {
      // The outermost round first, so that those within lie on it.
      shapes.splice(1, shapes.length - 1, ...shapes.slice(1).reverse());
      shapes.push(blanket.svg('path', { d: blanket.outline(one.i), class: 'frame' }));
    }
    map.replaceChildren(...shapes);
    map.classList.toggle('near', Boolean(one));
    map.setAttribute('viewBox', one ? around(one) : [0, 0, blanket.box.width, blanket.box.height].join(' '));
  }

  /** One piece of many would be a dot: it is seen with those around it. */
  function around(piece) {
    const { x, y, width, height } = blanket.bounds(piece.i);
    const size = Math.min(2.4 * Math.max(width, height), Math.max(blanket.box.width, blanket.box.height));
    return [x + width / 2 - size / 2, y + height / 2 - size / 2, size, size].join(' ');
  }

  function show() {
    const step = steps()[at];
    byId('work-empty').hidden = Boolean(step);
    byId('work-step').hidden = !step;
    document.querySelectorAll('#work-order input').forEach(input => (input.checked = input.value === order));
    if (!step) {
      return;
    }
    const { head, note, yarn: used, of, boxes } = told(step);
    const finished = done(step);
    const left = steps().filter(each => !done(each)).length;
    byId('work-count').textContent = 'Step ' + step[0] + ' of ' + orders[order].count + (finished ? ', done' : '') + '; ' + left + ' to do';
    byId('work-head').replaceChildren(...head);
    byId('work-note').replaceChildren(...(used === null || used === undefined ? [] : [yarn(used), ' ']), note);
    byId('work-list').replaceChildren(...boxes.flatMap(([words, items]) =>
      [...(words ? [make('h4', {}, words)] : []), make('ul', { className: order === 'strip' && step[1] === KIND.work ? 'rounds' : hasLongName(items) ? 'boxes long' : 'boxes' }, ...items)]));
    byId('work-done').textContent = finished ? 'Next' : 'Done, next';
    byId('work-back').disabled = at === 0;
    byId('work-skip').disabled = at === steps().length - 1;
    const then = steps().slice(at + 1).find(each => !done(each));
    byId('work-then').textContent = then ? 'Then: ' + short(then) : left > (finished ? 0 : 1) ? 'Then: what was left out before' : 'Then all is done.';
    requestAnimationFrame(() => drawMap(of));
  }

  /** Whether a name, which breaks at its hyphens alone, asks for a wider box than r12c9 does. */
  function hasLongName(items) {
    return items.some(item => item.textContent.split(/(?<=-)/).some(part => part.length > 5));
  }

  function short(step) {
    if (step[1] === KIND.edge) {
      return 'edge the outline';
    }
    if (step[1] === KIND.join) {
      return 'join strip ' + step[2];
    }
    const [[piece, round]] = tasks(step);
    return order === 'strip' ? piece.name : plan.yarns[piece.yarns[round]][1] + ', ' + plural(tasks(step).length, 'round');
  }

  function to(index) {
    at = Math.min(steps().length - 1, Math.max(0, index));
    where[order] = steps()[at]?.[0];
    keep.remember('steps', where);
    show();
  }

  /** The next step that is not done, after this one, or from the start where none is. */
  function onwards() {
    const after = steps().findIndex((step, i) => i > at && !done(step));
    const first = steps().findIndex(step => !done(step));
    to(after >= 0 ? after : first >= 0 ? first : at);
  }

  /** Where one was in an order, or the first step that is not done. */
  function find() {
    const kept = steps().findIndex(step => step[0] === where[order]);
    const first = steps().findIndex(step => !done(step));
    at = Math.max(0, kept >= 0 ? kept : first);
  }

  byId('work-done').addEventListener('click', () => {
    const step = steps()[at];
    if (!done(step)) {
      keep.change(all(step, true));
    }
    onwards();
    byId('work-head').scrollIntoView?.({ block: 'nearest' });
  });
  byId('work-back').addEventListener('click', () => to(at - 1));
  byId('work-skip').addEventListener('click', () => to(at + 1));
  byId('work-order').addEventListener('change', event => {
    order = event.target.value;
    keep.remember('order', order);
    find();
    show();
  });
  byId('work-show').addEventListener('click', () => {
    large(false);
    const rounds = new Map();
    for (const [piece, round] of told(steps()[at]).of) {
      rounds.set(piece.i, (rounds.get(piece.i) ?? new Set()).add(round ?? piece.yarns.length - 1));
    }
    blanket.lightRounds('Step ' + steps()[at][0], rounds);
    byId('plan').scrollIntoView();
  });

  // Keys are for whoever has them at hand: arrows go on and back, Enter on the button ticks.
  byId('work').addEventListener('keydown', event => {
    const by = { ArrowRight: 1, ArrowLeft: -1 }[event.key];
    if (by && !event.ctrlKey && !event.metaKey && !event.altKey && event.target.type !== 'radio') {
      event.preventDefault();
      to(at + by);
    }
  });

  // --- large ----------------------------------------------------------------------------------

  let wake = null;

  /** Keeps the screen awake while the step is large, where the browser lets it. */
  async function awake() {
    try {
      wake = await navigator.wakeLock?.request('screen') ?? null;
    } catch {
      wake = null;
    }
    byId('work-awake').hidden = !wake;
  }
  document.addEventListener('visibilitychange', () => document.visibilityState === 'visible'
    && document.body.classList.contains('at-work') && awake());

  function large(on) {
    document.body.classList.toggle('at-work', on);
    byId('work-large').setAttribute('aria-pressed', String(on));
    byId('work-large').textContent = on ? 'Close' : 'Large';
    keep.remember('large', on);
    if (on) {
      awake();
      window.scrollTo(0, 0);
    } else {
      wake?.release();
      wake = null;
      byId('work-awake').hidden = true;
    }
  }
  byId('work-large').addEventListener('click', () => {
    const on = !document.body.classList.contains('at-work');
    large(on);
    on || byId('work').scrollIntoView();
    byId('work-large').focus({ preventScroll: true });
  });
  document.addEventListener('keydown', event => {
    if (event.key === 'Escape' && document.body.classList.contains('at-work')) {
      large(false);
      byId('work').scrollIntoView();
    }
  });

  byId('work').hidden = false;
  keep.onChange(show);
  find();
  show();
  keep.look('large', false) && large(true);
  return { all, done, tasks };
}
