/**
 * What stands: how far each piece has come by the plan and by what was ticked since, and wishes for
 * the next plan. It is kept with every change and can be undone, step by step.
 */
function keeper(source) {
  const MOST_UNDONE = 100;
  const plan = source.plan;
  const pieces = plan.pieces.map(([name, kind, state, strip, order, x, y, yarns, locked, worked], i) =>
    ({ i, name, kind, state, strip, order, x, y, yarns, locked, worked, seams: [], touches: [] }));
  for (let k = 0; k < plan.seams.length; k += 3) {
    const [a, b, tenths] = plan.seams.slice(k, k + 3);
    pieces[a].seams.push([b, tenths]);
    pieces[b].seams.push([a, tenths]);
  }
  for (let k = 0; k < plan.touches.length; k += 2) {
    pieces[plan.touches[k]].touches.push(plan.touches[k + 1]);
    pieces[plan.touches[k + 1]].touches.push(plan.touches[k]);
  }
  const strips = [];
  for (const piece of pieces) {
    (strips[piece.strip - 1] ||= [])[piece.order - 1] = piece;
  }

  const calls = [];
  let ticks;
  let past;
  let view;
  let kept = true;

  /** What the plan says: rounds worked of a piece, whether it is joined, whether all is edged. */
  const base = { worked: i => pieces[i].worked, joined: i => pieces[i].state === 2, edged: () => false, wish: () => null };
  const get = (what, i) => ticks[what].has(i) ? ticks[what].get(i) : base[what](i);

  function begin(state) {
    ticks = { worked: new Map(), joined: new Map(), edged: new Map(), wish: new Map() };
    past = [];
    view = {};
    for (const [what, i, value, before] of state?.ticks ?? []) {
      if (!Object.hasOwn(base, what) || !pieces[i]) {
        continue;
      }
      // What has been marked in the file since is no tick any more; what goes further still is.
      const now = base[what](i);
      if (now !== value && (now === before || what === 'worked' && value > now)) {
        ticks[what].set(i, value);
      }
    }
    if (state && same(state.ticks)) {
      past = state.past ?? [];
    }
    view = state?.view ?? {};
  }

  const listed = () => Object.entries(ticks).flatMap(([what, map]) =>
    [...map].map(([i, value]) => [what, i, value, base[what](i)]));
  const same = other => JSON.stringify(listed()) === JSON.stringify(other);

  function save() {
    kept = source.save({ title: plan.title, ticks: listed(), past, view, count: listed().length, line: commands().join('\n') });
  }

  /** Sets values without a way back; tells which pieces they are of. */
  function put(changes) {
    for (const [what, i, value] of changes) {
      value === base[what](i) ? ticks[what].delete(i) : ticks[what].set(i, value);
    }
    save();
    const touched = new Set(changes.map(([, i]) => i));
    calls.forEach(call => call(touched));
  }

  /** Makes changes, each of what, piece and value, that one undo takes back together. */
  function change(changes) {
    const real = changes.filter(([what, i, value]) => get(what, i) !== value);
    if (real.length) {
      past.push(real.map(([what, i]) => [what, i, get(what, i)]));
      past = past.slice(-MOST_UNDONE);
      put(real);
    }
  }

  const whole = i => pieces[i].yarns.length;
  const workedTo = (i, rounds) => [['worked', i, rounds], ...(rounds < whole(i) && get('joined', i) ? [['joined', i, false]] : [])];
  const joinedTo = (i, joined) => [...(joined ? [['worked', i, whole(i)]] : []), ['joined', i, joined]];

  const quoted = file => /^[\w./+-]+$/.test(file) ? file : "'" + file.replaceAll("'", "'\\''") + "'";

  /** The lines that tell the terminal. */
  function commands() {
    const groups = new Map();
    const add = (option, piece, end = '') => {
      const name = option + '|' + end;
      groups.set(name, [...(groups.get(name) ?? []), piece.name]);
    };
    for (const piece of pieces) {
      const rounds = get('worked', piece.i);
      const joined = get('joined', piece.i);
      if (rounds === piece.worked && joined === (piece.state === 2)) {
        continue;
      }
      if (joined) {
        add('joined', piece);
      } else if (rounds === whole(piece.i)) {
        add('made', piece);
      } else if (rounds === 0) {
        add('planned', piece);
      } else {
        add('rounds', piece, '=' + rounds);
      }
    }
    for (const [i, wish] of ticks.wish) {
      add(wish, pieces[i]);
    }
    const words = options => [...groups].filter(([name]) => options.includes(name.split('|')[0]))
      .map(([name, names]) => ' --' + name.split('|')[0] + ' ' + names.join(',') + name.split('|')[1]).join('');
    const file = quoted(source.file());
    const marks = words(['made', 'joined', 'planned', 'rounds']);
    const wishes = words(['lock', 'free']);
    return [marks && './lozengy mark ' + file + marks, wishes && './lozengy solve ' + file + wishes].filter(Boolean);
  }

  begin(source.load());
  source.onOther(() => {
    begin(source.load());
    calls.forEach(call => call(null));
  });
  window.addEventListener('beforeunload', event => !kept && listed().length && event.preventDefault());

  return {
    plan, pieces, strips, change, workedTo, joinedTo, commands,
    worked: i => get('worked', i),
    joined: i => get('joined', i),
    edged: () => get('edged', 0),
    edgedTo: edged => [['edged', 0, edged]],
    wish: i => get('wish', i),
    wishTo: (i, wish) => [['wish', i, wish]],
    asPlanned: i => [['worked', i, base.worked(i)], ['joined', i, base.joined(i)], ['wish', i, null]],
    ticked: i => ['worked', 'joined', 'wish'].some(what => ticks[what].has(i)),
    count: () => new Set(listed().map(([what, i]) => what === 'edged' ? 'edging' : i)).size,
    get kept() {
      return kept;
    },
    drop: () => change(listed().map(([what, i, , before]) => [what, i, before])),
    undo() {
      const last = past.pop();
      last && put(last);
    },
    undoable: () => past.length > 0,
    /** Something to be found again after a reload that is no tick: where one is, what is shown. */
    look: (name, usual) => view[name] ?? usual,
    remember(name, value) {
      view[name] = value;
      save();
    },
    /** Calls after every change with the pieces it is of, or with null where all may be. */
    onChange: call => calls.push(call),
    exported: () => JSON.stringify({
      format: 'lozengy-ticks/1', plan: plan.plan, title: plan.title,
      ticks: listed().map(([what, i, value]) => ({ what, at: what === 'edged' ? null : pieces[i].name, value })) }, null, 1) + '\n',
    /** Takes over what another page of this plan exported; a reason where it is not that. */
    imported(text) {
      let other;
      try {
        other = JSON.parse(text);
      } catch {
        return 'This is no file of ticks.';
      }
      if (other?.format !== 'lozengy-ticks/1' || !Array.isArray(other.ticks)) {
        return 'This is no file of ticks.';
      }
      if (other.plan !== plan.plan) {
        return 'These ticks are of another plan: ' + String(other.title) + '.';
      }
      const byName = new Map(pieces.map(piece => [piece.name, piece.i]));
      const fits = {
        worked: (i, value) => Number.isInteger(value) && value >= 0 && value <= whole(i),
        joined: (i, value) => typeof value === 'boolean',
        edged: (i, value) => typeof value === 'boolean',
        wish: (i, value) => ['lock', 'free'].includes(value),
      };
      change(other.ticks.map(({ what, at, value }) => [what, what === 'edged' ? 0 : byName.get(at), value])
        .filter(([what, i, value]) => i !== undefined && Object.hasOwn(fits, what) && fits[what](i, value)));
      return null;
    },
  };
}
