/** The templates that come with the workbook, from `sheets/templates`. */
import alterations from '../../sheets/templates/alterations.json';
import biasBinding from '../../sheets/templates/bias-binding.json';
import bodiceAndSleeve from '../../sheets/templates/bodice-and-sleeve.json';
import childNotes from '../../sheets/templates/child-notes.json';
import circleSkirt from '../../sheets/templates/circle-skirt.json';
import clothToBuy from '../../sheets/templates/cloth-to-buy.json';
import contrastBand from '../../sheets/templates/contrast-band.json';
import fit from '../../sheets/templates/fit.json';
import frontFastening from '../../sheets/templates/front-fastening.json';
import gatheredAndTiered from '../../sheets/templates/gathered-and-tiered.json';
import goredSkirt from '../../sheets/templates/gored-skirt.json';
import knitTop from '../../sheets/templates/knit-top.json';
import measures from '../../sheets/templates/measures.json';
import pieces from '../../sheets/templates/pieces.json';
import pleatedSkirt from '../../sheets/templates/pleated-skirt.json';
import usualValues from '../../sheets/templates/usual-values.json';
import { readTemplate, type Template } from '../workbook/index.ts';

const FILES: Readonly<Record<string, unknown>> = {
  'measures': measures,
  'fit': fit,
  'alterations': alterations,
  'bodice-and-sleeve': bodiceAndSleeve,
  'pleated-skirt': pleatedSkirt,
  'circle-skirt': circleSkirt,
  'gathered-and-tiered': gatheredAndTiered,
  'gored-skirt': goredSkirt,
  'knit-top': knitTop,
  'front-fastening': frontFastening,
  'contrast-band': contrastBand,
  'bias-binding': biasBinding,
  'pieces': pieces,
  'cloth-to-buy': clothToBuy,
  'child-notes': childNotes,
  'usual-values': usualValues,
};

export const SHIPPED_IDS = Object.keys(FILES);

const read = new Map<string, Template>();

export function shippedTemplate(id: string): Template {
  const known = read.get(id);
  if (known) return known;
  const { template, problems } = readTemplate(FILES[id]);
  if (!template || problems.length) throw new Error(`The shipped template “${id}” cannot be read: ${problems.join(' ')}`);
  read.set(id, template);
  return template;
}
