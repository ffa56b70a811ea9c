/**
 * Takes white space out of the markup and styles in Lit's templates, for the
 * build. Of white space between words or elements one always stays, so that
 * nothing runs together, whatever styles make of it.
 */
import { transformSync } from 'esbuild';
import { minifyHTMLLiterals } from 'minify-literals';

/** By esbuild, which knows all of CSS that is written here. A style that is part of another, or has one in it, stays as it is. */
function leanCss(css) {
  if (css.includes('@TEMPLATE_EXPRESSION')) return css;
  const { code, warnings } = transformSync(css, { loader: 'css', minify: true, target: 'es2022', charset: 'utf8', logLevel: 'silent' });
  // It stands in a template again: a new backslash would be read as the beginning of a character there.
  return warnings.length > 0 || code.includes('\\') ? css : code.trim();
}

export function leanTemplates() {
  return {
    name: 'lean-templates',
    transform: {
      filter: { id: /\/src\/.*\.ts$/, code: /\b(html|svg|css)`/ },
      async handler(source, fileName) {
        const lean = await minifyHTMLLiterals(source, {
          fileName,
          minifyOptions: { conservativeCollapse: true, collapseBooleanAttributes: false, removeEmptyAttributes: false, minifyJS: false, minifyCSS: leanCss },
        });
        return lean && { code: lean.code, map: lean.map };
      },
    },
  };
}
