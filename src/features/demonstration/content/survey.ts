import type { SurveyBody } from '../../surveys/index.js';

type Measured = 'outline' | 'probes' | 'accessFactor' | 'findings' | 'depthProfile' | 'pipeRun' | 'equipmentCondition' | 'reclaimedMaterials';
type WaterTest = NonNullable<SurveyBody['waterTests']>[number];

export interface DemoSurvey extends Pick<SurveyBody, Measured> {
  readonly feature: string;
  /** Working days before the day the demonstration is made on. */
  readonly daysAgo: number;
  /** Taken on the morning of the survey. */
  readonly waterTests?: readonly Omit<WaterTest, 'takenAt'>[];
}
