/** Progress, the lists with their boxes, and the way from a list to a piece and back. */
function listsPart(keep, source, blanket, work) {
  const { plan, pieces, strips } = keep;
  const WORK = 0;
  const JOIN = 1;
  const byBall = new Map(plan.steps.ball.left.map(step => [step[1] + '/' + (step[1] === JOIN ? step[2] : step[0]), step]));

  // --- progress -------------------------------------------------------------------------------

  const hours = minutes => {
    const whole = Math.round(minutes);
    return whole >= 60 ? 'about ' + Math.round(whole / 60) + ' h' : 'about ' + whole + ' min';
  };

  function progress() {
    let made = 0;
    let rounds = 0;
    let worked = 0;
    let minutes = 0;
    for (const piece of pieces) {
      const to = keep.worked(piece.i);
      made += to === piece.yarns.length;
      rounds += piece.yarns.length;
      worked += to;
      for (let round = to; round < piece.yarns.length; round++) {
        const each = plan.minutes[piece.kind][round];
        minutes += typeof each === 'number' ? each : NaN;
      }
    }
    const open = pieces.reduce((seams, piece) => seams + piece.seams.filter(([other]) =>
      other > piece.i && !(keep.joined(piece.i) && keep.joined(other))).length, 0);
    minutes += open * (plan.seamMinutes ?? 0) + (keep.edged() ? 0 : plan.edgingMinutes ?? 0);
    const joined = strips.filter(strip => strip.every(piece => keep.joined(piece.i))).length;
    byId('progress-told').textContent = made + ' of ' + pieces.length + ' made, ' + joined + ' of ' + plural(strips.length, 'strip')
      + ' joined' + (worked === rounds && !minutes ? '' : Number.isNaN(minutes) ? ', ' + plural(rounds - worked, 'round') + ' to go' : ', ' + hours(minutes) + ' to go');
    byId('progress').value = worked;
    byId('progress').max = rounds;
  }

  // --- boxes ----------------------------------------------------------------------------------

  /** Each box of the lists with its step. */
  const boxes = [...document.querySelectorAll('input[data-step]')].map(input => [input, byBall.get(input.dataset.step)]);

  function ticks() {
    for (const [input, step] of boxes) {
      // A list may hold what was done before the page was made.
      input.checked = step ? work.done(step) : true;
      input.disabled = !step;
      if (step?.[1] === WORK) {
        const some = work.tasks(step);
        const ready = some.filter(([piece, round]) => keep.worked(piece.i) > round).length;
        input.indeterminate = ready > 0 && ready < some.length;
      }
    }
  }
  for (const [input, step] of boxes) {
    input.addEventListener('change', () => keep.change(work.all(step, input.checked)));
  }

  // --- to the file ----------------------------------------------------------------------------

  function out() {
    const n = keep.count();
    byId('picks-told').textContent = n ? plural(n, 'piece') + ' ticked here and not in the file yet.' : 'Nothing is ticked here that the file does not say.';
    byId('line').value = keep.commands().join('\n');
    byId('picks-out').hidden = n === 0;
    byId('unkept').hidden = keep.kept;
    document.querySelectorAll('.undo').forEach(button => (button.disabled = !keep.undoable()));
  }
  const tell = words => (byId('picks-told').textContent = words);

  byId('drop').addEventListener('click', () => {
    const n = keep.count();
    keep.drop();
    tell(plural(n, 'piece') + ' taken back. Undo brings all of it again.');
    byId('picks-undo').focus({ preventScroll: true });
  });
  byId('copy').addEventListener('click', async () => {
    await source.copy(byId('line').value);
    tell('Copied.');
  });
  byId('save').addEventListener('click', () => {
    source.saveAs('picks.txt', byId('line').value + '\n', 'text/plain');
    tell('Saved as picks.txt.');
  });
  byId('export').addEventListener('click', () => {
    source.saveAs('ticks.json', keep.exported(), 'application/json');
    tell('Saved as ticks.json.');
  });
  byId('import').addEventListener('change', async event => {
    const [file] = event.target.files;
    if (file) {
      const before = keep.count();
      const why = keep.imported(await file.text());
      tell(why ?? 'Taken over; ' + plural(keep.count(), 'piece') + ' ticked here, ' + before + ' before.');
      event.target.value = '';
    }
  });
  document.querySelectorAll('.undo').forEach(button => button.addEventListener('click', keep.undo));

  /** What is kept of an earlier plan of this blanket stands in no file: it is told, never dropped. */
  function others() {
    byId('others').replaceChildren(...source.others().map(({ name, count, line }) => {
      const area = make('textarea', { readOnly: true, rows: 3, value: line });
      area.setAttribute('aria-label', 'What was ticked on an earlier plan');
      return make('div', { className: 'notice' },
        make('p', {}, 'This browser keeps ' + plural(count, 'tick') + ' of an earlier plan of this blanket. If they are in no file yet, this line marks them:'),
        area,
        make('button', { type: 'button', onclick: () => source.copy(line) }, 'Copy'), ' ',
        make('button', { type: 'button', onclick: event => {
          source.forget(name);
          event.target.closest('.notice').remove();
        } }, 'Forget them'));
    }));
  }

  // --- from a list to a piece and back ---------------------------------------------------------

  const back = byId('card-back');
  let from = null;

  /** Shows a piece that a list names; where the blanket is not in sight, there is a way back. */
  function toPiece(piece, element) {
    blanket.go(piece);
    const sight = byId('view').getBoundingClientRect();
    if (sight.bottom < 80 || sight.top > innerHeight - 80) {
      from = element;
      byId('plan').scrollIntoView();
    }
    back.hidden = !from;
  }
  back.addEventListener('click', () => {
    from.scrollIntoView({ block: 'center' });
    from.querySelector('button, input')?.focus({ preventScroll: true });
    from = null;
    back.hidden = true;
  });

  /** The name under a pointer, of a text that lists many: a button for each would be thousands. */
  function nameAt(event) {
    const spot = document.caretPositionFromPoint?.(event.clientX, event.clientY);
    const range = spot ? null : document.caretRangeFromPoint?.(event.clientX, event.clientY);
    const [text, offset] = spot ? [spot.offsetNode, spot.offset] : range ? [range.startContainer, range.startOffset] : [];
    if (text?.nodeType !== Node.TEXT_NODE) {
      return null;
    }
    const before = text.data.slice(0, offset).match(/[\w-]*$/)[0];
    return blanket.byName.get(before + text.data.slice(offset).match(/^[\w-]*/)[0]);
  }
  for (const list of document.querySelectorAll('.names')) {
    list.addEventListener('click', event => {
      const piece = nameAt(event);
      piece && toPiece(piece, event.target.closest('li, tr'));
    });
  }

  document.querySelector('main').addEventListener('click', event => {
    const see = event.target.closest('button.see');
    if (!see) {
      return;
    }
    if (see.dataset.weak) {
      blanket.light('weak-' + see.dataset.weak);
    } else if (see.dataset.strip) {
      blanket.light('strip-' + see.dataset.strip);
    } else if (see.dataset.show) {
      const step = byBall.get(see.dataset.show);
      const rounds = new Map();
      for (const [piece, round] of work.tasks(step)) {
        rounds.set(piece.i, (rounds.get(piece.i) ?? new Set()).add(round));
      }
      blanket.lightRounds('Step ' + step[0], rounds);
    } else if (see.dataset.piece) {
      toPiece(pieces[Number(see.dataset.piece)], see.closest('li'));
      return;
    } else {
      return;
    }
    const sight = byId('view').getBoundingClientRect();
    if (sight.bottom < 80 || sight.top > innerHeight - 80) {
      from = see.closest('li');
      back.hidden = false;
      byId('plan').scrollIntoView();
    }
  });

  /** The lines of a piece: words and where they stand. */
  function lines(piece) {
    const found = plan.steps.ball.left
      .filter(step => step[1] === WORK && step[2].some(([, ...of]) => of.includes(piece.i)))
      .map(step => ['step ' + step[0], 'step-' + step[0]]);
    found.push(['strip ' + piece.strip, 'strip-' + piece.strip]);
    byId('change-' + piece.i) && found.push(['what changed', 'change-' + piece.i]);
    return found;
  }

  function line(id) {
    const element = byId(id);
    document.querySelectorAll('.here').forEach(each => each.classList.remove('here'));
    element.classList.add('here');
    element.scrollIntoView({ block: 'center' });
    (element.querySelector('input:not(:disabled), button') ?? element).focus({ preventScroll: true });
  }

  keep.onChange(() => {
    progress();
    ticks();
    out();
  });
  progress();
  ticks();
  out();
  others();
  return { lines, line };
}
