/** Faults put into a page one at a time, to prove that comparing looks notices them. */

export const FAULTS = [
  'a key 8 px lower',
  'a word clipped',
  'the colour of a state changed',
  'a line of text missing',
];

/** Runs in the page. Returns what it spoiled, or null if the look has nothing to spoil. */
function makeWrong(fault) {
  const modal = [...document.querySelectorAll('dialog[open]')].at(-1);
  const within = modal ?? document.body;

  /** Wholly on screen, with nothing over it. */
  const isSeen = (part, box) => {
    if (box.width < 3 || box.height < 3 || box.top < 0 || box.left < 0) return false;
    if (box.bottom > innerHeight || box.right > innerWidth) return false;
    const x = box.left + box.width / 2;
    const y = box.top + box.height / 2;
    const top = document.elementFromPoint(x, y);
    return top !== null && (part.contains(top) || top.contains(part));
  };
  const middleOf = (list) => list[Math.floor(list.length / 2)] ?? null;
  const seen = (selector) =>
    [...within.querySelectorAll(selector)].filter(
      (part) =>
        part.checkVisibility({ visibilityProperty: true }) &&
        isSeen(part, part.getBoundingClientRect()),
    );

  /** The texts on screen, each with its size and range. */
  const texts = () => {
    const found = [];
    const walker = document.createTreeWalker(within, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const parent = node.parentElement;
      if (!/\w/.test(node.data) || parent.closest('.spoken, svg, select')) continue;
      if (!parent.checkVisibility({ visibilityProperty: true })) continue;
      const range = new Range();
      range.selectNodeContents(node);
      if (!isSeen(parent, range.getBoundingClientRect())) continue;
      const { fontSize, color } = getComputedStyle(parent);
      if (color !== 'rgba(0, 0, 0, 0)') found.push({ node, px: Number.parseFloat(fontSize) });
    }
    return found;
  };

  const hide = (node, from, to) => {
    const range = new Range();
    range.setStart(node, from);
    range.setEnd(node, to);
    CSS.highlights.set('fault', new Highlight(range));
    const sheet = new CSSStyleSheet();
    sheet.replaceSync('::highlight(fault) { color: transparent }');
    document.adoptedStyleSheets.push(sheet);
    globalThis.mendFault = () => {
      CSS.highlights.clear();
      document.adoptedStyleSheets = document.adoptedStyleSheets.filter((other) => other !== sheet);
    };
    return `"${node.data.slice(from, to)}" of "${node.data.trim().slice(0, 40)}"`;
  };

  const style = (part, declarations) => {
    for (const [name, value] of Object.entries(declarations)) {
      part.style.setProperty(name, value, 'important');
    }
    // The content policy forbids setting the whole attribute.
    globalThis.mendFault = () => {
      for (const name of Object.keys(declarations)) part.style.removeProperty(name);
    };
    return `"${(part.textContent ?? '').trim().slice(0, 40)}"`;
  };

  /** A token's colour, in the notation of computed styles. */
  const tokens = getComputedStyle(document.documentElement);
  const colour = (name) => {
    const hex = tokens.getPropertyValue(name).trim();
    if (!/^#\w{6}$/.test(hex)) return hex;
    const channels = [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16));
    return `rgb(${channels.join(', ')})`;
  };

  const wrongs = {
    'a key 8 px lower': () => {
      const key = middleOf(seen('button'));
      return key && style(key, { translate: '0 8px' });
    },

    /** The last letter of the smallest word. */
    'a word clipped': () => {
      const smallest = Math.min(...texts().map(({ px }) => px));
      const text = middleOf(
        texts().filter(({ px, node }) => px === smallest && /\w{3}/.test(node.data)),
      );
      if (text === null) return null;
      const word = /\w{3,}/.exec(text.node.data);
      const end = word.index + word[0].length;
      return hide(text.node, end - 1, end);
    },

    /** Takes another state's fill, or a thin line's edge, or the ink of lesser text. */
    'the colour of a state changed': () => {
      const others = { pick: 'stop', hold: 'pick', due: 'pick', stop: 'due' };
      const parts = seen('*').filter((part) => part.textContent.trim() !== '');
      for (const [state, other] of Object.entries(others)) {
        const fill = colour(`--${state}-fill`);
        const filled = parts.find((part) => getComputedStyle(part).backgroundColor === fill);
        if (fill.startsWith('rgb(') && filled !== undefined) {
          return style(filled, { 'background-color': colour(`--${other}-fill`) });
        }
      }
      const edged = parts.find((part) => {
        const { borderTopWidth, borderTopColor } = getComputedStyle(part);
        return Number.parseFloat(borderTopWidth) > 1 && borderTopColor === colour('--pick-edge');
      });
      if (edged !== undefined) return style(edged, { 'border-color': colour('--line') });
      const text = middleOf(
        texts().filter(
          ({ node }) => getComputedStyle(node.parentElement).color === colour('--ink'),
        ),
      );
      return text && style(text.node.parentElement, { color: colour('--soft') });
    },

    /** The shortest text node. */
    'a line of text missing': () => {
      const [line] = texts().sort((a, b) => a.node.data.trim().length - b.node.data.trim().length);
      return line === undefined ? null : hide(line.node, 0, line.node.data.length);
    },
  };
  globalThis.mendFault = () => undefined;
  return wrongs[fault]() || null;
}

/** Puts a fault into the page; returns where, or null if nothing there can have it. */
export const inject = (page, fault) => page.evaluate(makeWrong, fault);

/** Undoes the fault. */
export const mend = (page) => page.evaluate(() => globalThis.mendFault());
