import { expect } from '@open-wc/testing';
import { bestTable } from '../../../src/grid/clip-html.ts';
import { field, press, settled, sheet, type Model } from './fixture.ts';

const PAGE = (body: string): string => `<html><head><meta charset="utf-8"><style>td{color:red}</style></head><body><!--StartFragment-->${body}<!--EndFragment--></body></html>`;
const read = (body: string, text: string | null = null) => bestTable(text, PAGE(body));

describe('cells from the HTML of other programs', () => {
  it('are a table’s cells, with the line breaks in them', () => {
    expect(read('<table><tr><td>Front<br>facing</td><td>2</td></tr><tr><td><p>Cut on</p><p>the fold</p></td><td>1</td></tr></table>'))
      .to.deep.equal([['Front\nfacing', '2'], ['Cut on\nthe fold', '1']]);
  });

  it('keep fractions that are set with raised and lowered figures, which plain text runs together', () => {
    const html = '<table><tr><td>Hem</td><td>2<sup>1</sup>/<sub>4</sub> in</td></tr><tr><td>Seam</td><td><sup>5</sup>&frasl;<sub>8</sub> in</td></tr></table>';
    expect(read(html, 'Hem\t21/4 in\nSeam\t5⁄8 in')).to.deep.equal([['Hem', '2 1/4 in'], ['Seam', '5/8 in']]);
    expect(read('<p>38<sup>1</sup>/<sub>2</sub>&nbsp;in</p>', '381/2 in')).to.deep.equal([['38 1/2 in']]);
    expect(read('<p>12<math><mfrac><mn>3</mn><mn>8</mn></mfrac></math> in</p>', '1238 in')).to.deep.equal([['12 3/8 in']]);
  });

  it('keep powers', () => {
    expect(read('<table><tr><td>120 cm<sup>2</sup></td></tr></table>')).to.deep.equal([['120 cm²']]);
  });

  it('leave room for cells over several columns and rows', () => {
    expect(read('<table><tr><th colspan="2">Size 10</th><th>12</th></tr><tr><td rowspan="2">Bust</td><td>a</td><td>b</td></tr><tr><td>c</td><td>d</td></tr></table>'))
      .to.deep.equal([['Size 10', '', '12'], ['Bust', 'a', 'b'], ['', 'c', 'd']]);
  });

  it('come with the lines around a table, and make every row as long as the longest', () => {
    expect(read('<h2>Chart</h2><table><tr><td>a</td><td>b</td></tr><tr><td>c</td></tr></table><p>in inches</p>'))
      .to.deep.equal([['Chart'], ['a', 'b'], ['c', ''], ['in inches']]);
  });

  it('are the plain text where that says as much, to the letter', () => {
    expect(read('<table><tr><td>  007</td><td>b</td></tr></table>', '  007\tb')).to.deep.equal([['  007', 'b']]);
    expect(read('<b>bold</b>', 'bold')).to.deep.equal([['bold']]);
    expect(read('<table></table>', 'kept')).to.deep.equal([['kept']]);
    expect(bestTable(null, '')).to.be.null;
    expect(read('<table><tr><td><img src="x.png"></td></tr></table>')).to.be.null;
  });

  it('read a table within a cell as that cell’s text', () => {
    expect(read('<table><tr><td>out<table><tr><td>in 1</td><td>in 2</td></tr></table></td><td>b</td></tr></table>')).to.deep.equal([['out\nin 1 in 2', 'b']]);
  });
});

describe('HTML that means harm', () => {
  const loaded = (): number => performance.getEntriesByType('resource').length;

  it('runs nothing, loads nothing, and leaves only its words', async () => {
    (window as { harmed?: boolean }).harmed = false;
    const before = loaded();
    const hooks = '<script>parent.harmed=true<\/script><img src="/harm.png" onerror="harmed=true" onload="harmed=true"><svg onload="harmed=true"><script>harmed=true<\/script></svg>'
      + '<iframe srcdoc="<script>parent.harmed=true<\/script>"></iframe><object data="/harm.swf"></object><link rel="stylesheet" href="/harm.css"><base href="//elsewhere.example/">'
      + '<meta http-equiv="refresh" content="0;url=/harm"><style>@import "/harm.css"</style><video src="/harm.mp4" autoplay onerror="harmed=true"></video><a href="javascript:harmed=true">go</a>'
      + '<template><img src=x onerror="harmed=true"></template><form action="/harm"><input name=a value=secret autofocus onfocus="harmed=true"></form>';
    const table = read(`<table onclick="harmed=true"><tr><td>5 cm${hooks}</td><td style="background:url(/harm.png)">6 cm</td></tr></table>`);
    await new Promise((done) => setTimeout(done, 200));
    expect(table).to.deep.equal([['5 cmgo', '6 cm']]);
    expect((window as { harmed?: boolean }).harmed).to.be.false;
    expect(loaded()).to.equal(before);
    expect(document.querySelector('base[href*=elsewhere]')).to.be.null;
  });

  it('cannot make more cells than the sheet takes, nor take for ever', () => {
    const started = performance.now();
    const wide = read(`<table>${`<tr>${'<td colspan="100000" rowspan="65534">x</td>'.repeat(20)}</tr>`.repeat(200)}</table>`)!;
    expect(wide.reduce((sum, row) => sum + row.length, 0)).to.be.at.most(500_000);
    const nested = (depth: number) => `<table><tr><td>${'<div>'.repeat(depth)}deep<br>down${'</div>'.repeat(depth)}</td></tr></table>`;
    expect(read(nested(300), 'deep down')).to.deep.equal([['deep\ndown']]);
    expect(read(nested(50_000), 'deep down')).to.deep.equal([['deep down']]);
    expect(performance.now() - started).to.be.below(5000);
  });
});

describe('pasting it', () => {
  function paste(model: Model, kinds: Record<string, string>): void {
    const data = new DataTransfer();
    for (const [kind, text] of Object.entries(kinds)) data.setData(kind, text);
    field(model).dispatchEvent(new ClipboardEvent('paste', { clipboardData: data, bubbles: true, composed: true, cancelable: true }));
  }

  it('puts the fractions in, and tells the plain text that came with them', async () => {
    const model = await sheet();
    await press(model, 'ArrowDown');
    paste(model, { 'text/plain': '21/4 in', 'text/html': PAGE('<p>2<sup>1</sup>/<sub>4</sub> in</p>') });
    await settled(model);
    expect(model.raw(1, 0)).to.equal('2 1/4 in');
    expect(model.of('tt-paste')[0]!.text).to.equal('21/4 in');
  });

  it('takes HTML that comes alone', async () => {
    const model = await sheet();
    paste(model, { 'text/html': PAGE('<table><tr><td>a</td><td>b</td></tr></table>') });
    await settled(model);
    expect([model.raw(0, 0), model.raw(0, 1)]).to.deep.equal(['a', 'b']);
  });

  it('takes nothing of a picture', async () => {
    const model = await sheet({ A1: 'kept' });
    paste(model, { 'image/png': 'x' });
    await settled(model);
    expect(model.of('tt-paste')).to.have.length(0);
  });
});
