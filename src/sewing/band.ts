/** Bands, cuffs and waistbands, and the interfacing in them. */
import { define, mm, plain } from './define.ts';

const ALLOWANCE = { name: 'allowance', kind: 'length', about: 'seam allowance at each edge', atLeast: 0, usual: 0 } as const;

export const BAND_FUNCTIONS = [
  define({
    name: 'BAND.LENGTH',
    topic: 'band',
    about: 'The length to cut for a waistband, cuff or other band.',
    asks: ['how long to cut the waistband', 'cuff length', 'band with an overlap'],
    args: [
      { name: 'girth', kind: 'length', about: 'finished girth when closed, ease with it', above: 0 },
      { name: 'overlap', kind: 'length', about: 'what lies under the fastening; 0 for a band closed in a ring', atLeast: 0, usual: 0 },
      ALLOWANCE,
    ],
    gives: 'length',
    rule: 'girth + overlap + 2 × allowance',
    source: 'exact arithmetic',
    example: '=BAND.LENGTH(78 cm, 3 cm, 1.5 cm)',
    work([girth, overlap, allowance], pad) {
      return pad.length('girth, overlap and a seam allowance at both ends', [mm(girth), ' + ', mm(overlap), ' + 2 × ', mm(allowance)], girth + overlap + 2 * allowance);
    },
  }),
  define({
    name: 'BAND.DEPTH',
    topic: 'band',
    about: 'The depth to cut for a band of a finished depth, folded over or of one layer.',
    asks: ['how wide to cut the band', 'folded waistband', 'contrast band depth'],
    args: [
      { name: 'finished', kind: 'length', about: 'depth of the band as it shows', above: 0 },
      ALLOWANCE,
      { name: 'way', kind: 'choice', about: 'folded: front and back in one piece; single: one layer, with a separate facing or none', choices: ['folded', 'single'], usual: 'folded' },
    ],
    gives: 'length',
    rule: '2 × finished + 2 × allowance; finished + 2 × allowance for one layer',
    source: 'exact arithmetic',
    example: '=BAND.DEPTH(4 cm, 1.5 cm, "folded")',
    work([finished, allowance, way], pad) {
      const layers = pad.number(`layers in a ${way} band`, [], way === 'folded' ? 2 : 1);
      return pad.length('the layers and a seam allowance at both edges', [plain(layers), ' × ', mm(finished), ' + 2 × ', mm(allowance)], layers * finished + 2 * allowance);
    },
  }),
  define({
    name: 'BAND.CLOTH',
    topic: 'band',
    about: 'The length of cloth for a band that is cut across the width, in as many strips as it takes.',
    asks: ['cloth for a contrast band', 'how many strips for the band', 'band longer than the cloth is wide'],
    args: [
      { name: 'length', kind: 'length', about: 'finished length of the band, all the way round', above: 0 },
      { name: 'depth', kind: 'length', about: 'depth of the band as cut', above: 0 },
      { name: 'width', kind: 'length', about: 'usable width of the cloth', above: 0 },
      { ...ALLOWANCE, about: 'seam allowance at each end of each strip' },
    ],
    gives: 'length',
    rule: 'strips × depth, strips = length ÷ (width − 2 × allowance), up to a whole number',
    source: 'exact geometry',
    example: '=BAND.CLOTH(260 cm, 12 cm, 140 cm, 1.5 cm)',
    work([length, depth, width, allowance], pad) {
      if (2 * allowance >= width) pad.refuse(`Two seam allowances of ${pad.say(allowance)} leave nothing of cloth ${pad.say(width)} wide.`);
      const each = pad.length('what a strip gives when joined', [mm(width), ' − 2 × ', mm(allowance)], width - 2 * allowance);
      const strips = pad.number('strips, rounded up', [mm(length), ' ÷ ', mm(each)], Math.max(1, Math.ceil(length / each - 1e-9)));
      return pad.length('strips times the depth', [plain(strips), ' × ', mm(depth)], strips * depth);
    },
  }),
  define({
    name: 'INTERFACING.CUT',
    topic: 'band',
    about: 'The length or depth of interfacing for a piece, when it stops short of the cut edges.',
    asks: ['how big to cut the interfacing', 'interfacing without seam allowance', 'trim the interfacing'],
    args: [
      { name: 'cut', kind: 'length', about: 'the piece as cut, seam allowances with it', above: 0 },
      { name: 'short', kind: 'length', about: 'how far the interfacing stops short of each edge; the seam allowance to keep it out of the seams', atLeast: 0, usual: 0 },
    ],
    gives: 'length',
    rule: 'cut − 2 × short',
    source: 'exact arithmetic',
    example: '=INTERFACING.CUT(84 cm, 1.5 cm)',
    work([cut, short], pad) {
      if (2 * short >= cut) pad.refuse(`Stopping ${pad.say(short)} short of both edges leaves no interfacing on a piece of ${pad.say(cut)}.`);
      return pad.length('less that at both edges', [mm(cut), ' − 2 × ', mm(short)], cut - 2 * short);
    },
  }),
  define({
    name: 'INTERFACING.SPARE',
    topic: 'band',
    about: 'How much longer the interfacing is than the band it goes into; below 0 when it is shorter.',
    asks: ['is the interfacing long enough', 'interfacing shorter than the band', 'interfacing that is left over'],
    args: [
      { name: 'interfacing', kind: 'length', about: 'length of interfacing that there is', above: 0 },
      { name: 'band', kind: 'length', about: 'length that it must cover', above: 0 },
    ],
    gives: 'length',
    rule: 'interfacing − band',
    source: 'exact arithmetic',
    example: '=INTERFACING.SPARE(90 cm, 81 cm)',
    work([interfacing, band], pad) {
      if (interfacing < band * (1 - 1e-9)) pad.caution('The interfacing is shorter than its band: join pieces edge to edge, or cut it at least this long.', mm(band), 'interfacing', 'atLeast');
      return pad.length('interfacing minus band', [mm(interfacing), ' − ', mm(band)], interfacing - band);
    },
  }),
  define({
    name: 'INTERFACING.PIECES',
    topic: 'band',
    about: 'How many lengths of interfacing must be joined to cover a band.',
    asks: ['interfacing narrower than the band is long', 'join interfacing', 'how many strips of interfacing'],
    args: [
      { name: 'band', kind: 'length', about: 'length that it must cover', above: 0 },
      { name: 'piece', kind: 'length', about: 'length of one piece, such as the width of the interfacing', above: 0 },
      { name: 'overlap', kind: 'length', about: 'how far two pieces lie over each other; 0 when they meet edge to edge', atLeast: 0, usual: 0 },
    ],
    gives: 'number',
    rule: '(band − overlap) ÷ (piece − overlap), up to a whole number',
    source: 'exact geometry',
    example: '=INTERFACING.PIECES(98 cm, 90 cm, 1 cm)',
    work([band, piece, overlap], pad) {
      if (overlap >= piece) pad.refuse(`Pieces of ${pad.say(piece)} cannot lie over each other by ${pad.say(overlap)}.`);
      const adds = pad.length('what each piece after the first adds', [mm(piece), ' − ', mm(overlap)], piece - overlap);
      const pieces = Math.max(1, Math.ceil((band - overlap) / adds - 1e-9));
      return pad.number('up to whole pieces', ['(', mm(band), ' − ', mm(overlap), ') ÷ ', mm(adds)], pieces);
    },
  }),
];
