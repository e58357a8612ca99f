import { ApiSchema } from '@nestjs/swagger';
import type { Quantity } from '../../domain/quantity/index.js';
import { LOOK_NAMES, type Look } from '../../domain/trade/weir/index.js';
import { BooleanField, ChoiceField, DecimalField, IdField, ListField, NumberField, QuantityField, TextField } from '../../platform/http/fields/index.js';

@ApiSchema({ name: 'VesselOnSite', description: 'A skimmer, filter or other vessel that stays, and that the whole flow of the loop goes through. Its loss goes with the square of the flow.' })
export class VesselOnSiteBody {
  @TextField({ description: 'What it is.', max: 100, example: 'old filter' })
  name: string;

  @QuantityField({ description: 'The flow at which its loss is known.', kind: 'flow', minSi: 1e-6, maxSi: 10 })
  flow: Quantity;

  @QuantityField({ description: 'Its loss of head at that flow.', kind: 'length', minSi: 0, maxSi: 100 })
  head: Quantity;
}

/** What the estimator decides or knows where the survey is silent. */
export class DesignBody {
  @QuantityField({ description: 'What rock and gravel displace: it is taken off the water that is turned over, dosed and stocked. None unless told.', kind: 'volume', minSi: 0, maxSi: 1e6, optional: true })
  displacedVolume?: Quantity | null;

  @QuantityField({ description: 'How much two strips of a sheet lap over at a seam; 3 in for liner and 6 in for underlayment unless told (common practice).', kind: 'length', minSi: 0, maxSi: 1, optional: true })
  seamLap?: Quantity | null;

  @DecimalField({ description: 'What a foot of seam in the liner costs in goods and hours, in the company\'s currency: cuts with fewer seams win by it. Nothing unless told.', min: '0', max: '10000', scale: 4, optional: true, default: '0' })
  seamCostPerFoot?: string | null;

  @IdField({ description: 'The skimmer of the catalog whose loss the pumps are ranked with, instead of the suggested one.', optional: true })
  skimmerPartId?: string | null;

  @IdField({ description: 'The filter of the catalog whose loss the pumps are ranked with, instead of the suggested one; its media count for the fish.', optional: true })
  filterPartId?: string | null;

  @ListField(() => VesselOnSiteBody, { description: 'Vessels on the site that stay in the loop.', most: 20, optional: true })
  vessels?: VesselOnSiteBody[] | null;

  @QuantityField({ description: 'What the loop gives today, for a skimmer, filter or waterfall whose pump stays. With circulation in the scope they go by the suggested pump instead.', kind: 'flow', minSi: 1e-6, maxSi: 10, optional: true })
  loopFlow?: Quantity | null;

  @ChoiceField({ description: 'How the waterfall is to look; a sheet unless told. 50, 100, 150 and 200 gal an hour for each inch of lip (common practice).', of: LOOK_NAMES, optional: true, default: 'sheet' })
  waterfallLook?: Look | null;

  @NumberField({ description: 'The share of the surface that plants are to cover when grown, as a factor; 0.5 unless told (0.4 to 0.6 is common practice).', min: 0, max: 1, optional: true, default: 0.5 })
  plantCover?: number | null;

  @QuantityField({ description: 'The mass of the fish that are there already, grown. None unless told.', kind: 'mass', minSi: 0, maxSi: 1e6, optional: true })
  fishThere?: Quantity | null;

  @BooleanField({ description: 'Whether an aerator or a waterfall runs day and night, so that still water does not limit the feed. Not unless told.', optional: true, default: false })
  aerated?: boolean | null;
}
