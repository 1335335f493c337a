/** Makes an element with properties and children; text is only ever text. */
const make = (name, properties, ...children) => {
  const element = Object.assign(document.createElement(name), properties);
  element.append(...children);
  return element;
};
const byId = id => document.getElementById(id);
const plural = (n, noun) => n + ' ' + noun + (n === 1 ? '' : 's');

/**
 * The one place that knows where the plan comes from and where what is ticked goes: here a file that
 * holds both page and plan, and the browser's own storage. Other parts see only what this returns.
 */
function pageSource() {
  const plan = JSON.parse(byId('data').textContent);
  const PREFIX = 'lozengy:';
  const key = PREFIX + plan.plan;

  const read = name => {
    try {
      return JSON.parse(localStorage.getItem(name));
    } catch {
      return null;
    }
  };

  return {
    plan,

    /** The arrangement's file: whole, where this page lies on the disk beside it. */
    file() {
      if (location.protocol !== 'file:' || !plan.beside) {
        return plan.file;
      }
      const path = decodeURIComponent(new URL(encodeURI(plan.beside), location.href).pathname);
      return path.replace(/^\/(?=[A-Za-z]:)/, '');
    },

    load: () => read(key),

    /** Keeps a state; false where the browser does not. */
    save(state) {
      try {
        localStorage.setItem(key, JSON.stringify(state));
        return true;
      } catch {
        return false;
      }
    },

    /** What is kept of other plans of this blanket and in no file yet: key, how much, and its line. */
    others() {
      try {
        return Object.keys(localStorage).filter(name => name.startsWith(PREFIX) && name !== key)
          .map(name => ({ name, ...read(name) }))
          .filter(state => state.title === plan.title && state.count > 0);
      } catch {
        return [];
      }
    },
    forget: name => localStorage.removeItem(name),

    /** Calls when another window of this browser has kept something. */
    onOther: call => window.addEventListener('storage', event => event.key === key && call()),

    async copy(text) {
      try {
        await navigator.clipboard.writeText(text);
      } catch {
        const area = make('textarea', { value: text, className: 'aside' });
        document.body.append(area);
        area.select();
        document.execCommand('copy');
        area.remove();
      }
    },

    saveAs(name, content, type) {
      const url = URL.createObjectURL(new Blob([content], { type }));
      make('a', { href: url, download: name }).click();
      setTimeout(() => URL.revokeObjectURL(url), 10000);
    },
  };
}
