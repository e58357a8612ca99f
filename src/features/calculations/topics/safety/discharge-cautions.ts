import { ApiSchema } from '@nestjs/swagger';
import { DISCHARGE_PLACES, dischargeCautions, type DischargeTo } from '../../../../domain/trade/safety/index.js';
import { BooleanField, ChoiceField } from '../../../../platform/http/fields/index.js';
import { calculation } from '../../calculation.js';
import { CautionsView, toCautionsView } from './cautions.view.js';

@ApiSchema({ name: 'DischargeInput' })
export class DischargeBody {
  @ChoiceField({ description: 'Where the water goes.', of: DISCHARGE_PLACES })
  to: DischargeTo;

  @BooleanField({ description: 'Whether it is turbid; yes unless told.', optional: true, default: true })
  turbid?: boolean | null;

  @BooleanField({ description: 'Whether it holds chlorine or chloramine; yes unless told.', optional: true, default: true })
  chlorinated?: boolean | null;

  @BooleanField({ description: 'Whether it is salted; yes unless told.', optional: true, default: true })
  salted?: boolean | null;

  @BooleanField({ description: 'Whether algaecide, herbicide or larvicide was used within the time that the label names; yes unless told.', optional: true, default: true })
  treated?: boolean | null;

  @BooleanField({ description: 'Whether plants, fish, snails or eggs may go along; yes unless told.', optional: true, default: true })
  livingThings?: boolean | null;
}

export const DISCHARGE_CAUTIONS = calculation({
  name: 'discharge-cautions',
  title: 'Reminders before pond water is pumped off',
  description: 'By what is in the water and where it goes: 75 FR 31775 for pesticide residues; the rest from memory of the Clean Water Act and common practice. It warns and never permits: ask the state and municipal water authority.',
  input: DischargeBody,
  output: CautionsView,
  run: (input: DischargeBody): CautionsView =>
    toCautionsView(
      dischargeCautions({
        to: input.to,
        turbid: input.turbid ?? true,
        chlorinated: input.chlorinated ?? true,
        salted: input.salted ?? true,
        treated: input.treated ?? true,
        livingThings: input.livingThings ?? true,
      }),
      'What is in the water and where it goes, each against its rule',
    ),
});
