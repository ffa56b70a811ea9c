/**
 * What the build does to our own sources before they are bundled, for a lean page:
 *
 * - White space goes out of the markup and styles in Lit's templates. Some of it
 *   always stays where there was any, so that words and buttons do not run together.
 * - An import through the door of a folder of pure functions becomes imports of the
 *   files behind it. esbuild parts chunks by file: through the door, the page's
 *   first chunk would hold all that any later chunk takes from the folder.
 */
import { readFile } from 'node:fs/promises';
import { dirname, relative, resolve } from 'node:path';
import { transformSync } from 'esbuild';
import { minifyHTMLLiterals } from 'minify-literals';

/** Folders whose files do nothing when they are loaded. */
const PURE = /\/src\/(formula|keeping|pictures|quantities|reckoning|tables|workbook)\/index\.ts$/;

const IMPORT = /^import \{([^}]*)\} from '(\.[^']*\/index\.ts)';/gm;
const EXPORT = /^export \{([^}]*)\} from '(\.\/[^']+)';/gm;

const namesIn = (list) => list.split(',').map((each) => each.trim()).filter((each) => each !== '' && !each.startsWith('type '));

const doors = new Map();

/** Which file behind a door each name comes from. */
function behind(door) {
  if (!doors.has(door)) {
    doors.set(door, readFile(door, 'utf8').then((text) => new Map([...text.matchAll(EXPORT)].flatMap(([, list, file]) => (
      namesIn(list).filter((name) => !name.includes(' as ')).map((name) => [name, resolve(dirname(door), file)]))))));
  }
  return doors.get(door);
}

async function pastDoors(source, path) {
  const folder = dirname(path);
  const parts = [];
  let at = 0;
  for (const found of source.matchAll(IMPORT)) {
    const [whole, list, address] = found;
    const door = resolve(folder, address);
    if (!PURE.test(door)) continue;
    const files = await behind(door);
    const imports = namesIn(list).map((name) => {
      const file = files.get(name.split(' as ')[0]) ?? door;
      return `import { ${name} } from '${`./${relative(folder, file)}`}';`;
    });
    // As many lines as before, so that source maps still tell the line.
    parts.push(source.slice(at, found.index), imports.join(' '), '\n'.repeat(whole.split('\n').length - 1));
    at = found.index + whole.length;
  }
  return parts.join('') + source.slice(at);
}

/** By esbuild, which knows all of CSS that is written here. A style that is part of another, or has one in it, stays as it is. */
function leanCss(css) {
  if (css.includes('@TEMPLATE_EXPRESSION')) return css;
  const { code, warnings } = transformSync(css, { loader: 'css', minify: true, target: 'es2022', logLevel: 'silent' });
  return warnings.length > 0 ? css : code.trim();
}

async function leanTemplates(source, path) {
  if (!/\b(html|svg|css)`/.test(source)) return source;
  const done = await minifyHTMLLiterals(source, {
    fileName: path,
    minifyOptions: { conservativeCollapse: true, collapseBooleanAttributes: false, removeEmptyAttributes: false, minifyJS: false, minifyCSS: leanCss },
  });
  return done ? `${done.code}\n//# sourceMappingURL=data:application/json;base64,${Buffer.from(done.map.toString()).toString('base64')}` : source;
}

export function leanSources() {
  return {
    name: 'lean-sources',
    setup({ onLoad }) {
      onLoad({ filter: /\/(src|workers)\/.*\.ts$/ }, async ({ path }) => ({
        contents: await leanTemplates(await pastDoors(await readFile(path, 'utf8'), path), path), loader: 'ts',
      }));
    },
  };
}
