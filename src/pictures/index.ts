/**
 * Pictures of the trade's arithmetic: pure functions from figures to SVG, to
 * scale, with dimension lines in the units that the sheet shows. One file a
 * family; `plate.ts` lays out labels, `draw.ts` makes paths, `styles.ts` gives
 * marks their looks. Imports only quantities and sewing.
 * To add one: write its function, name it in `picture-for.ts`, and put its usual
 * and its extreme inputs on the contact sheet in `tests/browser/pictures`.
 */
export { picturesBeside } from './beside.ts';
export { biasSquare } from './bias.ts';
export type { BiasSquare } from './bias.ts';
export { blendedEdge } from './blend.ts';
export type { BlendLevel, BlendedEdge } from './blend.ts';
export { bodyEase } from './body.ts';
export type { BodyEase, EaseLevel } from './body.ts';
export { buttonStand } from './button.ts';
export type { ButtonStand } from './button.ts';
export { buttonEdge, buttonhole } from './buttonhole.ts';
export type { ButtonEdge, Buttonhole } from './buttonhole.ts';
export { circleOnCloth } from './circle-lay.ts';
export type { CircleLay } from './circle-lay.ts';
export { circlePiece } from './circle.ts';
export type { CirclePiece } from './circle.ts';
export { twoLengths } from './compare.ts';
export type { TwoLengths } from './compare.ts';
export { dart, movedDart, sharedDarts } from './dart.ts';
export type { Dart, MovedDart, SharedDarts } from './dart.ts';
export { CHECK, MOST_RADIUS, TILE, arcTiles, clearance, tilePath } from './full-size.ts';
export type { Join, Tile } from './full-size.ts';
export { gathers, tierDepths, tiers } from './gather.ts';
export type { Gathers, TierDepths, Tiers } from './gather.ts';
export { goreShape, goresOnCloth } from './gore-shape.ts';
export type { GoreLay, GoreShape } from './gore-shape.ts';
export { godet, gores } from './gore.ts';
export type { Godet, Gores } from './gore.ts';
export { hem, hemFullness } from './hem.ts';
export type { Hem, HemFullness } from './hem.ts';
export { layPages } from './lay-pages.ts';
export { RULER, layPicture, layRuler } from './lay.ts';
export type { DrawnLay, DrawnPiece, LaidPiece, LayEdge, LayMark, LayPicture, LayRuler } from './lay.ts';
export type { Look, Mark, PathMark, Picture, TextMark } from './marks.ts';
export { overTime } from './over-time.ts';
export type { OverTime } from './over-time.ts';
export { PICTURED, pictureFor } from './picture-for.ts';
export type { PictureCall } from './picture-for.ts';
export { pleatMarks } from './pleat-marks.ts';
export type { PleatMarks } from './pleat-marks.ts';
export { pleatDeepen, pleatEdges, pleatPanel } from './pleat-panel.ts';
export type { PleatDeepen, PleatEdges, PleatPanel } from './pleat-panel.ts';
export { pleatSection } from './pleat-section.ts';
export type { PleatKind, PleatSection } from './pleat-section.ts';
export { drawn } from './render.ts';
export { runPlot } from './run-plot.ts';
export type { RunPlot } from './run-plot.ts';
export { seamEdge, seamShift } from './seam.ts';
export type { SeamEdge, SeamShift } from './seam.ts';
export { blend, sizeGap } from './size-lines.ts';
export type { Blend, SizeGap } from './size-lines.ts';
export { sizeOutline } from './size-outline.ts';
export type { SizeOutline, SizedLevel } from './size-outline.ts';
export { pictureStyles } from './styles.ts';
export { TAPED, tapeOnBody } from './tape.ts';
export { textWidth } from './text.ts';
