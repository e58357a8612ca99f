export type { Section } from './section.js';
export { sectionVolume, type SectionVolume } from './section-volume.js';
