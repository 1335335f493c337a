// The parts, put together. They know each other by what is handed to them alone.
const source = pageSource();
const keep = keeper(source);
let card;
let lists;
const blanket = blanketPart(keep, {
  pick: (piece, what) => card.pick(piece, what),
  enter: () => card.enter(),
  async share(picture) {
    const file = new File([picture], 'blanket.png', { type: picture.type });
    if (navigator.canShare?.({ files: [file] })) {
      await navigator.share({ files: [file] }).catch(() => {});
    } else {
      source.saveAs(file.name, picture, picture.type);
    }
  },
});
const work = workPart(keep, blanket);
lists = listsPart(keep, source, blanket, work);
card = cardPart(keep, { go: blanket.go, shown: () => blanket.shown, lines: lists.lines, line: lists.line });
blanket.onShown(card.show);
blanket.begin();

// Where there is room, nothing of the blanket's tools is folded away.
const wide = matchMedia('(min-width: 60rem)');
const fold = () => (byId('more').open = wide.matches);
wide.addEventListener('change', fold);
fold();

// What is folded away is opened by a link to it, and on paper.
const unfold = () => document.querySelectorAll('details').forEach(each => (each.open = true));
window.addEventListener('beforeprint', unfold);
const follow = () => {
  const target = location.hash && document.querySelector(location.hash);
  const folded = target && (target.matches('details') ? target : target.querySelector('details'));
  folded && (folded.open = true);
};
window.addEventListener('hashchange', follow);
follow();

document.documentElement.dataset.ready = 'true';
performance.mark('ready');
