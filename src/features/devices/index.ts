export { DevicesModule } from './devices.module.js';
export { RevokeDevice } from './revoke-device.js';
