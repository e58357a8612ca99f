export const FEATURE_KINDS = ['pond', 'stream', 'waterfall', 'basin'] as const;
export type FeatureKind = (typeof FEATURE_KINDS)[number];
