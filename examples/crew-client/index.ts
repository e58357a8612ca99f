export { CrewPhone, type Note, type PhoneParts } from './crew-phone.js';
export { type AttachmentBody, came, type Mutation, type Outcome, type PulledItem, type SessionAnswer } from './contract.js';
export { Device } from './device.js';
export type { HandedOut } from './hand-over.js';
export type { Row, Trouble } from './phone-state.js';
export type { Photo } from './photos.js';
export type { StartedWork } from './running-hours.js';
export { byPassword, Session, ShutOut, SignedOut, type SignIn } from './session.js';
export { exchange, networkWire, NoAnswer, Refused, type Wire, type WireAnswer, type WireRequest } from './wire.js';
