import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { fromSi, toSi, type Quantity } from '../../../../domain/quantity/index.js';
import { WEIR_KINDS, weirFlow, type WeirKind } from '../../../../domain/trade/weir/index.js';
import { ChoiceField, NumberField, QuantityBody, QuantityField } from '../../../../platform/http/fields/index.js';
import { calculation } from '../../calculation.js';
import { ComputedView } from '../../computed.view.js';

@ApiSchema({ name: 'WeirFlowInput' })
export class WeirFlowBody {
  @ChoiceField({ description: 'How the weir is built: a crest over the full channel (suppressed), one narrower than it (contracted), either by Kindsvater-Carter, or a notch of 90 or 60 degrees, or of any other angle (v-notch).', of: WEIR_KINDS })
  kind: WeirKind;

  @QuantityField({ description: 'The water above the crest or the point of the notch, measured upstream of where the surface bends.', kind: 'length', minSi: 1e-4, maxSi: 10 })
  head: Quantity;

  @NumberField({ description: 'The angle of the notch in degrees; needed for v-notch.', min: 25, max: 100, optional: true })
  notchDegrees?: number | null;

  @QuantityField({ description: 'The length of the crest; needed for all but the notches.', kind: 'length', minSi: 0.001, maxSi: 100, optional: true })
  crest?: Quantity | null;

  @QuantityField({ description: 'The width of the channel; needed for Kindsvater-Carter.', kind: 'length', minSi: 0.001, maxSi: 1000, optional: true })
  channel?: Quantity | null;

  @QuantityField({ description: 'The height of the crest above the floor of the channel; needed for Kindsvater-Carter.', kind: 'length', minSi: 0.001, maxSi: 100, optional: true })
  crestHeight?: Quantity | null;

  @QuantityField({ description: 'The water above the crest on the downstream side, when it drowns the weir; 0 unless told.', kind: 'length', minSi: 0, maxSi: 10, optional: true })
  downstreamHead?: Quantity | null;
}

@ApiSchema({ name: 'WeirFlow' })
export class WeirFlowView extends ComputedView {
  @ApiProperty({ type: QuantityBody, description: 'The flow, in gpm.' })
  flow: Quantity;
}

export const WEIR_FLOW = calculation({
  name: 'weir-flow',
  title: 'Flow over a weir or through a notch',
  description: 'Francis (suppressed 3.33 L h^1.5, contracted 3.33 (L − 0.2 h) h^1.5), Kindsvater-Carter (USBR Water Measurement Manual, ch. 7), Cone (90 degrees), 1.443 h^2.5 (60 degrees, ASTM D5242) and Kindsvater-Shen (25 to 100 degrees), all in ft and ft3/s; drowned by Villemonte. Meant for heads from 0.2 ft to a third of the crest (Francis) or 1.25 ft (notches).',
  input: WeirFlowBody,
  output: WeirFlowView,
  run: ({ kind, head, notchDegrees, crest, channel, crestHeight, downstreamHead }: WeirFlowBody): WeirFlowView => {
    const metres = (quantity: Quantity | null | undefined): number | null => (quantity ? toSi(quantity) : null);
    const { flowM3PerS, working, warnings } = weirFlow({ kind, headM: toSi(head), notchDegrees: notchDegrees ?? null, crestM: metres(crest), channelM: metres(channel), crestHeightM: metres(crestHeight), downstreamHeadM: metres(downstreamHead) ?? 0 });
    return { flow: { value: fromSi(flowM3PerS, 'gpm'), unit: 'gpm' }, working, warnings };
  },
});
