// One switch for the language of a build. HALYARD_LANGUAGE names a folder of words: `de` is src/words/de, a path is itself; without it, English.
// Every import of a file of words/en from outside that folder is led to the file of the same name in the chosen one. A file that the language
// does not have yet stays English, and English files go on using each other, so that no sentence mixes the grammars of two languages.
import { existsSync, readdirSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

const words = fileURLToPath(new URL('../words', import.meta.url));
const english = join(words, 'en');
/** What a language cannot leave to English: its tag and its direction. */
const needed = 'language.ts';

export function wordsFolder(language = process.env.HALYARD_LANGUAGE || 'en') {
  const folder = resolve(words, language);
  if (existsSync(join(folder, needed))) return folder;
  const known = readdirSync(words).filter((name) => existsSync(join(words, name, needed)));
  throw new Error(
    `HALYARD_LANGUAGE=${language}: ${folder} has no ${needed}. There are words for: ${known.join(', ')}; or give the path of a folder.`,
  );
}

/** The file of a language, or the English one where there is none. */
export function wordsFile(/** @type {string} */ folder, /** @type {string} */ name) {
  const own = join(folder, name);
  return existsSync(own) ? own : join(english, name);
}

/** @returns {import('vite').Plugin} */
export const wordsFrom = (/** @type {string} */ folder) => ({
  name: 'words-of-one-language',
  enforce: 'pre',
  async resolveId(source, importer, options) {
    if (folder === english || !source.startsWith('.') || importer === undefined) return null;
    const from = importer.replace(/\?.*$/, '');
    const found = await this.resolve(source, importer, { ...options, skipSelf: true });
    if (found === null || dirname(found.id) !== english || dirname(from) === english) return found;
    const file = wordsFile(folder, basename(found.id));
    // A file of the language may build on the English one that it stands for.
    return file === from ? found : file;
  },
});
