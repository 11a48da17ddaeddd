// @ts-check
/** The front door: asked for only where the service is open to the network. */

import { early } from './early.js';

const ADDRESS = '/api/access';

/** @returns {Promise<{ asked: boolean, in: boolean }>} a service that cannot be reached asks for nothing */
export async function look() {
  try {
    const response = await early(ADDRESS);
    return response.ok ? await response.json() : { asked: false, in: true };
  } catch (fault) {
    if (fault instanceof TypeError) return { asked: false, in: true };
    throw fault;
  }
}

/** @param {string} code six digits, or a link's word @returns {Promise<'in' | 'wrong' | 'wait'>} */
export async function join(code) {
  const response = await fetch(`${ADDRESS}/join`, { method: 'POST', body: JSON.stringify({ code }), headers: { 'Content-Type': 'application/json' } });
  if (response.ok) return 'in';
  return response.status === 429 ? 'wait' : 'wrong';
}

/** Leaves; where the service cannot be reached the stay goes on there until it runs out. */
export async function leave() {
  try {
    await fetch(ADDRESS, { method: 'DELETE' });
  } catch (fault) {
    if (!(fault instanceof TypeError)) throw fault;
  }
}

/** Six digits for another browser, and when they end. @returns {Promise<{ code: string, ends: string }>} */
export async function newCode() {
  const response = await fetch(`${ADDRESS}/codes`, { method: 'POST' });
  if (!response.ok) throw new TypeError(`${ADDRESS}/codes: ${response.status}`);
  return response.json();
}
