export { CrewPhone, type Note, type PhoneParts } from './crew-phone.js';
export type { Mutation, Outcome, PulledItem, SessionAnswer } from './contract.js';
export type { Row, Trouble } from './phone-state.js';
export { byPassword, Session, SignedOut, type SignIn } from './session.js';
export { exchange, networkWire, NoAnswer, Refused, type Wire, type WireAnswer, type WireRequest } from './wire.js';
