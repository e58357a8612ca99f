import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { within } from '../../../domain/errors.js';
import { fromSi, toSi, type Quantity } from '../../../domain/quantity/index.js';
import { sectionVolume } from '../../../domain/trade/sections/index.js';
import { ListField, QuantityBody, QuantityField } from '../../../platform/http/fields/index.js';
import { calculation } from '../calculation.js';
import { ComputedView } from '../computed.view.js';

@ApiSchema({ name: 'SectionInput', description: 'An area at its place: a contour at its depth, or a cross section at its distance.' })
export class SectionBody {
  @QuantityField({ description: 'The depth below the water line, or the distance along the line that the sections cross; growing from one to the next.', kind: 'length', minSi: 0, maxSi: 10_000 })
  at: Quantity;

  @QuantityField({ description: 'The area there.', kind: 'area', minSi: 0, maxSi: 1e8 })
  area: Quantity;
}

@ApiSchema({ name: 'SectionVolumeInput' })
export class SectionVolumeBody {
  @ListField(() => SectionBody, { description: 'The sections in order, the first and the last where the volume begins and ends.', fewest: 2, most: 100 })
  sections: SectionBody[];
}

@ApiSchema({ name: 'VolumeByMethod', description: 'The volume by one formula, as earth and as water.' })
export class VolumeByMethodView {
  @ApiProperty({ type: 'string', enum: ['end-areas', 'frusta', 'prismoidal'], description: 'The formula.' })
  method: string;

  @ApiProperty({ type: QuantityBody, description: 'The volume in yd3.' })
  earth: Quantity;

  @ApiProperty({ type: QuantityBody, description: 'The same in gal.' })
  water: Quantity;
}

@ApiSchema({ name: 'SectionVolume' })
export class SectionVolumeView extends ComputedView {
  @ApiProperty({ type: [VolumeByMethodView], description: 'By each formula that goes with the sections.' })
  volumes: VolumeByMethodView[];
}

export const SECTION_VOLUME = calculation({
  name: 'section-volume',
  title: 'Volume from contours or cross sections',
  description: 'Between areas at growing depths, or at distances along a line: by end areas, by frusta, and by the prismoidal formula where an odd number of sections lies evenly apart. Take them as bounds when they differ. Sources: NRCS Agriculture Handbook 590, excavated ponds (prismoidal formula, from memory); NAVEDTRA 14080, ch. 4 (end areas). A depth is the mean over its contour, not the deepest point; for water, areas are taken at the water line and below.',
  input: SectionVolumeBody,
  output: SectionVolumeView,
  run: ({ sections }: SectionVolumeBody): SectionVolumeView => {
    const { endAreaM3, frustumM3, prismoidalM3, working, warnings } = within('/sections', () => sectionVolume(sections.map(({ at, area }) => ({ atM: toSi(at), areaM2: toSi(area) }))));
    const by = (method: string, m3: number): VolumeByMethodView => ({ method, earth: { value: fromSi(m3, 'yd3'), unit: 'yd3' }, water: { value: fromSi(m3, 'gal'), unit: 'gal' } });
    return { volumes: [by('end-areas', endAreaM3), by('frusta', frustumM3), ...(prismoidalM3 === null ? [] : [by('prismoidal', prismoidalM3)])], working, warnings };
  },
});
