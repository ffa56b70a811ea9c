/** The typefaces of a built folder, and the style sheet that names them, each called by the hash of its content. */
import { createHash } from 'node:crypto';
import { copyFile, readFile, readdir, writeFile } from 'node:fs/promises';

const hashed = (name, content) => name.replace(/(?=\.\w+$)/, `-${createHash('sha256').update(content).digest('base64url').slice(0, 8)}`);

/** @returns file names of the style sheet and of the fonts */
export async function placeFonts({ from, out }) {
  // The licence asks to go where the typeface goes.
  for (const name of (await readdir(from)).filter((each) => each.endsWith('-licence.txt'))) await copyFile(from + name, `${out}/${name}`);
  const fonts = [];
  let css = await readFile(`${from}fonts.css`, 'utf8');
  for (const name of (await readdir(from)).filter((each) => each.endsWith('.woff2'))) {
    const content = await readFile(from + name);
    const file = hashed(name, content);
    if (!css.includes(`'./${name}'`)) throw new Error(`fonts.css does not name ${name}.`);
    css = css.replace(`'./${name}'`, `'./${file}'`);
    await writeFile(`${out}/${file}`, content);
    fonts.push(file);
  }
  const style = hashed('fonts.css', css);
  await writeFile(`${out}/${style}`, css);
  return { style, fonts };
}
