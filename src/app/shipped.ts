/** The templates that come with the workbook, from `sheets/templates`. */
import circleSkirt from '../../sheets/templates/circle-skirt.json';
import clothToBuy from '../../sheets/templates/cloth-to-buy.json';
import fit from '../../sheets/templates/fit.json';
import frontFastening from '../../sheets/templates/front-fastening.json';
import measures from '../../sheets/templates/measures.json';
import pleatedSkirt from '../../sheets/templates/pleated-skirt.json';
import { readTemplate, type Template } from '../workbook/index.ts';

const FILES: Readonly<Record<string, unknown>> = {
  'measures': measures,
  'fit': fit,
  'pleated-skirt': pleatedSkirt,
  'circle-skirt': circleSkirt,
  'front-fastening': frontFastening,
  'cloth-to-buy': clothToBuy,
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
