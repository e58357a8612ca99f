import type { FeatureEntity } from './feature.entity.js';
import type { FeatureBody, FeatureView } from './features.dto.js';

export function toFeatureView({ id, siteId, kind, name, builtYear, createdAt }: FeatureEntity): FeatureView {
  return { id, siteId, kind, name, builtYear, createdAt: createdAt.toISOString() };
}

/** The feature as the request that would make it: what a patch is merged into. */
export function toFeatureBody({ siteId, kind, name, builtYear }: FeatureEntity): FeatureBody {
  return { siteId, kind, name, builtYear };
}

export function toFeatureRow(body: FeatureBody): Pick<FeatureEntity, 'siteId' | 'kind' | 'name' | 'builtYear'> {
  return { siteId: body.siteId, kind: body.kind, name: body.name, builtYear: body.builtYear ?? null };
}
