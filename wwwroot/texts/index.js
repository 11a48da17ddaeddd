// @ts-check
/** The texts in the language of the page. */

import en from './en.js';

/** @type {typeof en} */
export let t = en;

/** Languages there are: their code and how they call themselves. */
export const LANGUAGES = /** @type {[string, string][]} */ ([['en', 'English'], ['fr', 'Français']]);

/**
 * Takes another language; to be called before anything is mounted.
 * @param {string} code
 */
export async function speak(code) {
  if (code !== 'en' && LANGUAGES.some(([known]) => known === code)) t = (await import(`./${code}.js`)).default;
  document.documentElement.lang = t.language;
  document.title = t.page.title;
}
