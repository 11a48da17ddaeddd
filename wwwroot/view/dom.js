// @ts-check
/** The few helpers that make elements. Text goes in as text: nothing here reads markup. */

const SVG = 'http://www.w3.org/2000/svg';

/** @typedef {Record<string, any>} Attributes */
/** @typedef {Node | string | number | null | undefined | false} Child */

/**
 * @param {string} tag @param {Attributes} [attributes] functions become listeners @param {...Child} children
 * @returns {any}
 */
export function h(tag, attributes = {}, ...children) {
  return fill(document.createElement(tag), attributes, children);
}

/** @param {string} tag @param {Attributes} [attributes] @param {...Child} children @returns {any} */
export function svg(tag, attributes = {}, ...children) {
  return fill(document.createElementNS(SVG, tag), attributes, children);
}

/** @param {Element} element @param {Attributes} attributes @param {Child[]} children */
function fill(element, attributes, children) {
  set(element, attributes);
  element.append(...children.filter(present).map((child) => (child instanceof Node ? child : String(child))));
  return element;
}

/** @param {Child} child @returns {child is Node | string | number} */
const present = (child) => child !== null && child !== undefined && child !== false;

/**
 * A table whose first cells name the rows. On a phone a row lies down as a list: every cell brings its column's name,
 * and roles say what it was, since a layout of another kind takes that away.
 * @param {readonly string[]} columns @param {string[][]} lines
 */
export function table(columns, lines) {
  const cell = (/** @type {string} */ text, /** @type {number} */ i) => (i === 0
    ? h('th', { scope: 'row', role: 'rowheader' }, text) : h('td', { role: 'cell', 'data-column': columns[i] || null }, text));
  return h('table', { role: 'table', class: 'lies-down' },
    h('thead', { role: 'rowgroup' }, h('tr', { role: 'row' }, ...columns.map((name) => h('th', { scope: 'col', role: 'columnheader' }, name)))),
    h('tbody', { role: 'rowgroup' }, ...lines.map((line) => h('tr', { role: 'row' }, ...line.map(cell)))));
}

/** Sets attributes; false, null and undefined take one away. @param {Element} element @param {Attributes} attributes */
export function set(element, attributes) {
  for (const [name, value] of Object.entries(attributes)) {
    if (typeof value === 'function') element.addEventListener(name.slice(2), value);
    else if (value === false || value === null || value === undefined) element.removeAttribute(name);
    else if (element.getAttribute(name) !== String(value)) element.setAttribute(name, value === true ? '' : String(value));
  }
}

/**
 * A button that takes its row off. What had the focus is gone with the row: the row in its place has it then, else what adds another.
 * @param {() => void} act @param {string} text
 */
export function takeOff(act, text) {
  const button = h('button', { type: 'button', class: 'quiet take-off', onclick: () => {
    const row = button.closest('li');
    const list = /** @type {Element} */ (row.parentElement);
    const at = [...list.children].indexOf(row);
    act();
    const next = list.children[Math.min(at, list.children.length - 1)];
    const there = [...(next?.querySelectorAll('.take-off, summary') ?? [])].reverse().find((one) => one.checkVisibility());
    /** @type {HTMLElement | null} */ (there ?? list.parentElement?.querySelector(':scope > button:last-of-type') ?? null)?.focus();
  } }, text);
  return button;
}

/** Replaces text only where it differs, so that a screen reader is not told the same twice. @param {Element} element @param {string} text */
export function say(element, text) {
  if (element.textContent !== text) element.textContent = text;
}

/**
 * What is folded away is made when it is first wanted: a ticket has some hundred blanks, and few are opened.
 * @template {{ element?: any, elements?: any[], update: (...args: any[]) => void }} P
 * @param {HTMLDetailsElement} details @param {() => P} make @param {(part: P) => void} place puts it in
 */
export function lazily(details, make, place) {
  /** @type {P | null} */
  let part = null;
  /** @type {any[] | null} */
  let told = null;
  const want = () => {
    if (part) return;
    part = make();
    place(part);
    if (told) part.update(...told);
  };
  details.addEventListener('toggle', () => { if (details.open) want(); });
  // Somebody may have been quicker than what is told of it.
  if (details.open) want();
  return {
    want,
    /** @param {any[]} now */
    update(...now) {
      told = now;
      part?.update(...now);
    },
  };
}

/** @param {Element} element @param {...Child} children */
export function refill(element, ...children) {
  element.replaceChildren(...children.filter(present).map((child) => (child instanceof Node ? child : String(child))));
}

/**
 * Keeps one mounted part for each item, found again by its key: what has the focus keeps it.
 * @template T, P
 * @param {Element} parent
 * @param {(item: T) => string} key
 * @param {(item: T) => { element: Element, update: (item: T, index: number, props: P) => void }} mount
 */
export function rows(parent, key, mount) {
  /** @type {Map<string, { element: Element, update: (item: T, index: number, props: P) => void }>} */
  const parts = new Map();
  return (/** @type {T[]} */ items, /** @type {P} */ props) => {
    const gone = new Set(parts.keys());
    items.forEach((item, index) => {
      const name = key(item);
      gone.delete(name);
      const part = parts.get(name) ?? mount(item);
      parts.set(name, part);
      if (parent.children[index] !== part.element) parent.insertBefore(part.element, parent.children[index] ?? null);
      part.update(item, index, props);
    });
    gone.forEach((name) => {
      parts.get(name)?.element.remove();
      parts.delete(name);
    });
  };
}
