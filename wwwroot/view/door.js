// @ts-check
/** Coming in with six digits, and letting another browser in. */

import * as door from '../api/door.js';
import { reader } from '../model/numbers.js';
import { t } from '../texts/index.js';
import { h, say } from './dom.js';

/**
 * Waits until this browser is in; a link with a word in it comes in by itself.
 * @param {Element} ticket @param {() => Promise<unknown>} forget a browser that is not in, or no longer, keeps nothing of the studio's
 */
export async function comeIn(ticket, forget) {
  const { asked, in: isIn } = await door.look();
  const word = /^#join=([\w-]+)$/.exec(location.hash)?.[1];
  if (word) history.replaceState(null, '', location.pathname);
  if (isIn) return { asked, isNew: false };
  await forget();
  if (!word || await door.join(word) !== 'in') await typed(ticket);
  return { asked, isNew: true };
}

/** @param {Element} ticket @returns {Promise<void>} once the right digits were typed */
function typed(ticket) {
  return new Promise((resolve) => {
    const input = h('input', { id: 'join-code', inputmode: 'numeric', autocomplete: 'one-time-code', maxlength: 7, size: 7, required: true, 'aria-describedby': 'join-said' });
    const said = h('p', { id: 'join-said', role: 'status' }, t.door.hint);
    const form = h('form', { class: 'door' },
      h('h1', {}, t.door.head), h('label', { for: 'join-code' }, t.door.code), input, h('button', { class: 'go' }, t.door.join), said);
    form.addEventListener('submit', async (/** @type {SubmitEvent} */ event) => {
      event.preventDefault();
      const outcome = await door.join(input.value.replace(/\s/g, ''));
      if (outcome !== 'in') {
        say(said, t.door[outcome]);
        input.select();
        return;
      }
      form.remove();
      resolve();
    });
    ticket.append(form);
    ticket.removeAttribute('aria-busy');
    input.focus();
  });
}

/** A button that shows six digits for another browser, and one that leaves. @param {() => Promise<unknown>} forget */
export function mountLetIn(forget) {
  const said = h('span', { role: 'status' });
  const button = h('button', { type: 'button', class: 'quiet', onclick: async () => {
    const { code, ends } = await door.newCode();
    say(said, t.door.readOut(location.host, `${code.slice(0, 3)} ${code.slice(3)}`, new Date(ends).toLocaleTimeString(reader(), { hour: '2-digit', minute: '2-digit' })));
  } }, t.door.letIn);
  const out = h('button', { type: 'button', class: 'quiet', onclick: async () => {
    await forget();
    await door.leave();
    location.reload();
  } }, t.door.leave);
  return h('span', { class: 'let-in' }, button, out, said);
}
