export { sectionVolume, type Section, type SectionVolume } from './section-volume.js';
