/** The door's front door. */
export { type AppOptions, createApp } from './app.ts';
export type { DoorEnv, DoorPages, FailureSaid, Log, LoginAsked } from './door.ts';
export { ownNames } from './hosts.ts';
export { type Listening, listen } from './listen.ts';
export { setPassword } from './password.ts';
export { logToStderr } from './request-log.ts';
