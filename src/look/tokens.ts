/** Colours, type and spacing of the whole app, in one place: light is pattern tissue, dark is chalk on cloth. */
import { css } from 'lit';

const light = css`
  --paper: #fbf7ef;
  --sheet: #fffdf8;
  --tissue: #f3ead7;
  --line: #e4d8be;
  --rule: #b9a576;
  --ink: #22313b;
  --soft: #5a6468;
  --chalk: #1f6585;
  --chalk-wash: #e0eef4;
  --pin: #a92832;
  --pin-wash: #f9e4e2;
  --thread: #8a5a0c;
  --thread-wash: #faefd6;
  --tape: #f4cf5d;
  --tape-ink: #22313b;
  --leaf: #35683f;
  --shadow: 0 8px 28px rgb(34 49 59 / 22%);
  color-scheme: light;
`;

const dark = css`
  --paper: #1c2530;
  --sheet: #212c38;
  --tissue: #182029;
  --line: #364453;
  --rule: #62758a;
  --ink: #eef1ea;
  --soft: #b3bec4;
  --chalk: #8fc9e6;
  --chalk-wash: #2b4456;
  --pin: #ff9a96;
  --pin-wash: #4a2a30;
  --thread: #eac06c;
  --thread-wash: #453a24;
  --tape: #c9a440;
  --tape-ink: #17202a;
  --leaf: #9fd3a5;
  --shadow: 0 8px 28px rgb(0 0 0 / 55%);
  color-scheme: dark;
`;

export const tokens = css`
  :root {
    ${light}
    --face: Inter, system-ui, sans-serif;
    --face-title: Literata, Inter, Georgia, serif;
    --face-sum: ui-monospace, 'DejaVu Sans Mono', monospace;
    --size-small: 0.8rem;
    --size: 0.9rem;
    --size-large: 1.1rem;
    --gap-1: 4px;
    --gap-2: 8px;
    --gap-3: 12px;
    --gap-4: 16px;
    --gap-5: 24px;
    --round: 8px;
    --hand: 32px;
  }
  body { margin: 0; background: var(--paper); color: var(--ink); font: var(--size)/1.4 var(--face); }
  :root[data-theme='dark'] { ${dark} }
  @media (prefers-color-scheme: dark) {
    :root:not([data-theme='light']) { ${dark} }
  }
`;
