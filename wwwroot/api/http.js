// @ts-check
/**
 * One request to the service, and what goes wrong with it.
 *
 * @typedef {{ title: string, status?: number, detail?: string, type?: string, errors?: Record<string, string[]>, marks?: any, lacks?: string[], missing?: any }} Problem
 */

export const JSON_TYPE = { 'Content-Type': 'application/json' };

/** What went wrong, in the shape the page shows. */
export class Refused extends Error {
  /** @param {Problem} problem */
  constructor(problem) {
    super(problem.title);
    this.problem = problem;
  }
}

/** A heartbeat carries no JSON. @param {string} text */
export function parsed(text) {
  try {
    return JSON.parse(text);
  } catch (fault) {
    if (fault instanceof SyntaxError) return null;
    throw fault;
  }
}

/**
 * What comes over the network. Only here does a TypeError mean that nobody answers; anywhere else it is a fault of the page and
 * has to be seen as one.
 * @template T @param {Promise<T>} wanted an answer, or a module @returns {Promise<T>}
 */
export async function reached(wanted) {
  try {
    return await wanted;
  } catch (fault) {
    if (fault instanceof TypeError) throw new Refused({ title: 'unreachable' });
    throw fault;
  }
}

/** @param {string} address @param {RequestInit} [request] */
export async function ask(address, request) {
  const response = await reached(fetch(address, request));
  if (response.ok) return response;
  // The stay is over: the page begins anew, at the door, where it forgets what it kept.
  if (response.status === 401) location.reload();
  const problem = parsed(await response.text()) ?? { title: response.statusText };
  throw new Refused({ status: response.status, ...problem });
}
